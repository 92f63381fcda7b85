package io.github.swatchwright.cli;

import io.github.swatchwright.coat.Base;
import io.github.swatchwright.coat.Coat;
import io.github.swatchwright.coat.CoatAdvice;
import io.github.swatchwright.coat.CoatAmounts;
import io.github.swatchwright.coat.CoatOption;
import io.github.swatchwright.coat.CoatPlan;
import io.github.swatchwright.coat.CoatStep;
import io.github.swatchwright.coat.HidingCoats;
import io.github.swatchwright.coat.OrderNote;
import io.github.swatchwright.coat.ScaleLightening;
import io.github.swatchwright.coat.SolventVerdict;
import io.github.swatchwright.coat.Thinner;
import io.github.swatchwright.coat.Wait;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.PaintAmount;
import io.github.swatchwright.optics.HidingPower;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.spectrum.Illuminant;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Coats over a base, for someone with a brush in hand.
 *
 * @param output where it goes
 * @param light the light that it was computed for
 */
record CoatText(Output output, Illuminant light) {
  private static final int SHOWN_OPTIONS = 5;
  private static final int MOST_COUNTED_DROPS = 60;

  void print(CoatPlan plan) {
    plan.below().ifPresent(below -> new BasePlanText(output, light).print(below));
    output.line(
        "Base  %s%s  light %s",
        plan.base() instanceof Base.OfMix painted ? name(painted.mix()) + "  " : "",
        PredictionText.colour(output, plan.basePrediction()),
        light);
    if (plan.scaleLightening() > 0) {
      output.line(
          "  lightened by %.0f %%. %s", 100 * plan.scaleLightening(), ScaleLightening.DISPUTED);
    }
    for (int i = 0; i < plan.steps().size(); i++) {
      output.line("");
      print(i + 1, plan);
    }
    printShares(plan);
    plan.advice().ifPresent(this::print);
    plan.amounts().ifPresent(amounts -> print(amounts, plan.steps()));
    printEnd(plan);
  }

  private void print(int number, CoatPlan plan) {
    CoatStep step = plan.steps().get(number - 1);
    output.line("%2d.  %s", number, inWords(step.coat()));
    before(number, plan);
    output.line("    %s", PredictionText.colour(output, step.prediction()));
    output.line("    %s", PredictionText.interval(step.prediction()));
    output.line("    %s", hiding(step));
    output.line(
        "    Over a pre-highlight: where that is darkest %s%s, where lightest %s%s",
        output.block(step.overDarkest()),
        Output.notation(step.overDarkest()),
        output.block(step.overLightest()),
        Output.notation(step.overLightest()));
    printChipping(number, plan);
    plan.cautionsOfSteps()
        .get(number - 1)
        .forEach(caution -> output.line("    Caution: %s", caution.text()));
  }

  private void printChipping(int number, CoatPlan plan) {
    List<String> steps = plan.chippingOf(number);
    if (!steps.isEmpty()) {
      double worn = plan.chipping().orElseThrow().worn();
      double left = plan.steps().get(number - 1).coat().coverage();
      output.line(
          "    Chips: %.0f %% of this coat is worn off again, so that it stays on %.0f %% of the"
              + " area.",
          100 * worn, 100 * left);
      output.line("    As common practice has it; the label of the chipping medium wins:");
    }
    for (int i = 0; i < steps.size(); i++) {
      output.line("      %d. %s", i + 1, steps.get(i));
    }
  }

  /** What to mind before a step: the worst clash first, then the wait, then a doubtful ratio. */
  private void before(int number, CoatPlan plan) {
    plan.orderOf(number).forEach(note -> output.line("    %s", inWords(note)));
    Optional<Medium> below =
        number == 1
            ? plan.base().medium()
            : Optional.of(plan.steps().get(number - 2).coat().medium());
    below.ifPresent(
        medium ->
            output.line(
                "    First let the %s below dry: %s.", medium.word(), Wait.after(medium).words()));
    if (below.isEmpty()) {
      output.line("    What the base is bound with isn't known: try this coat on scrap first.");
    }
    plan.steps()
        .get(number - 1)
        .coat()
        .doubt()
        .ifPresent(question -> output.line("    Sure? %s", question));
  }

  private static String hiding(CoatStep step) {
    if (step.coat().isVarnish()) {
      return "A varnish is clear: it changes how the surface shines, and hides nothing.";
    }
    OptionalInt alone = HidingCoats.whole(step.coatsToHide());
    return String.format(
        Locale.ROOT,
        "Contrast ratio so far %.2f (hides from %.2f on). %s",
        step.contrastRatio(),
        HidingPower.HIDES,
        alone.isEmpty()
            ? "What lies below shows through this coat, however many you paint."
            : alone.getAsInt() == 1
                ? "One such coat alone hides what lies below."
                : alone.getAsInt() + " such coats alone hide what lies below.");
  }

  private static String inWords(Coat coat) {
    String share = coat.coverage() == 1 ? "" : " over " + plain(100 * coat.coverage()) + " %";
    return String.format(
        Locale.ROOT,
        "%s, %s %s, %s%s",
        name(coat),
        plain(coat.coats()),
        coat.coats() == 1 ? "coat" : "coats",
        coat.thinning(),
        share);
  }

  private static String plain(double number) {
    return BigDecimal.valueOf(number)
        .setScale(2, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }

  private void print(CoatAdvice advice) {
    output.line("");
    output.line(
        "Wanted  %s%s, ΔE00 %.1f from where it is",
        output.block(advice.target()), Output.notation(advice.target()), advice.nowDeltaE00());
    if (advice.options().isEmpty()) {
      output.line("No coat of these paints brings it nearer by ΔE00 0.5 or more.");
    }
    int number = 1;
    for (CoatOption option : advice.options()) {
      if (number > SHOWN_OPTIONS) {
        break;
      }
      print(number++, option, advice);
    }
  }

  private void print(int number, CoatOption option, CoatAdvice advice) {
    output.line(
        "%2d.  ΔE00 %.1f if all goes well; expect %.1f%s",
        number,
        option.deltaE00(),
        option.expectedDeltaE00(),
        option.expectedDeltaE00() < advice.nowDeltaE00() ? "" : ", no better than leaving it");
    output.line("      %s (%s)", inWords(option.coat()), option.use().word());
    Lab lab = option.prediction().lab();
    output.line(
        "      %s  moved by L* %+.1f, a* %+.1f, b* %+.1f",
        PredictionText.colour(output, option.prediction()),
        lab.l() - advice.now().l(),
        lab.a() - advice.now().a(),
        lab.b() - advice.now().b());
    option
        .worst()
        .filter(note -> note.verdict() != SolventVerdict.SAFE)
        .ifPresent(note -> output.line("      %s", inWords(note)));
  }

  private void print(CoatAmounts amounts, List<CoatStep> steps) {
    output.line("");
    output.line(
        "Amounts for %.0f cm², %s µm dry a coat, %s %% solids, %s %% transfer:",
        amounts.squareCentimetres(),
        plain(amounts.application().dryMicrometres()),
        plain(100 * amounts.application().volumeSolids()),
        plain(100 * amounts.application().transfer()));
    for (int i = 0; i < steps.size(); i++) {
      PaintAmount amount = amounts.each().get(i);
      output.line(
          "  %2d.  %.1f ml paint%s%s",
          i + 1,
          amount.paintMillilitres(),
          drops(Math.ceil(amount.drops(steps.get(i).coat().mix()))),
          amount.thinnerMillilitres() == 0
              ? ""
              : String.format(
                  Locale.ROOT,
                  " and %.1f ml %s",
                  amount.thinnerMillilitres(),
                  Thinner.of(steps.get(i).coat().mix())));
    }
    output.line("  Rough: film, solids and transfer are guesses until you measure yours.");
  }

  /** Drops, where anybody would count them. */
  private static String drops(double count) {
    return count > MOST_COUNTED_DROPS
        ? ""
        : String.format(Locale.ROOT, " (about %.0f drops)", count);
  }

  /** The share of the area on which each paint lies open to the eye. */
  private void printShares(CoatPlan plan) {
    if (plan.steps().stream().allMatch(step -> step.coat().coverage() == 1)) {
      return;
    }
    double[] shares = plan.sharesOnTop();
    output.line("");
    output.line("Share of the area on which each lies on top:");
    for (int i = plan.steps().size(); i > 0; i--) {
      if (!plan.steps().get(i - 1).coat().isVarnish()) {
        output.line("  %5.1f %%  %s", 100 * shares[i], name(plan.steps().get(i - 1).coat()));
      }
    }
    output.line("  %5.1f %%  base", 100 * shares[0]);
  }

  private static String name(Coat coat) {
    return name(coat.mix());
  }

  private static String name(Mix mix) {
    return mix.parts().size() == 1 ? mix.parts().get(0).paint().name() : mix.toText();
  }

  private void printEnd(CoatPlan plan) {
    output.line("");
    if (!plan.steps().isEmpty()) {
      Medium last = plan.steps().get(plan.steps().size() - 1).coat().medium();
      output.line("Before anything else goes on: %s.", Wait.after(last).words());
      output.line("Order, waits and thinners are common practice; the label wins.");
    }
    plan.closingCautions().forEach(caution -> output.line("Caution: %s", caution.text()));
  }

  private static String inWords(OrderNote note) {
    return String.format(
        Locale.ROOT,
        "%s: %s over %s (%s over %s), since %s.%s",
        note.verdict().word().toUpperCase(Locale.ROOT),
        note.upperPaint(),
        note.lowerPaint(),
        note.rule().upper().word(),
        note.rule().lower().word(),
        note.rule().reason(),
        note.rule().remedy().isEmpty() ? "" : " " + note.rule().remedy());
  }
}
