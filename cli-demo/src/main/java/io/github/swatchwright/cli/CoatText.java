package io.github.swatchwright.cli;

import io.github.swatchwright.coat.Caution;
import io.github.swatchwright.coat.Coat;
import io.github.swatchwright.coat.CoatAdvice;
import io.github.swatchwright.coat.CoatAmounts;
import io.github.swatchwright.coat.CoatOption;
import io.github.swatchwright.coat.CoatPlan;
import io.github.swatchwright.coat.CoatStep;
import io.github.swatchwright.coat.OrderNote;
import io.github.swatchwright.coat.ScaleLightening;
import io.github.swatchwright.coat.SolventVerdict;
import io.github.swatchwright.coat.Wait;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.mix.PaintAmount;
import io.github.swatchwright.optics.HidingPower;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.spectrum.Illuminant;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;

/**
 * Coats over a base, for someone with a brush in hand.
 *
 * @param output where it goes
 * @param light the light that it was computed for
 */
record CoatText(Output output, Illuminant light) {
  private static final int SHOWN_OPTIONS = 5;

  void print(CoatPlan plan, String base) {
    output.line(
        "Base  %s  %s  light %s",
        base, PredictionText.colour(output, plan.basePrediction()), light);
    if (plan.scaleLightening() > 0) {
      output.line(
          "  lightened by %.0f %%. %s", 100 * plan.scaleLightening(), ScaleLightening.DISPUTED);
    }
    for (int i = 0; i < plan.steps().size(); i++) {
      output.line("");
      print(i + 1, plan.steps().get(i));
    }
    plan.advice().ifPresent(this::print);
    plan.amounts().ifPresent(amounts -> print(amounts, plan.steps()));
    printOrder(plan);
  }

  private void print(int number, CoatStep step) {
    output.line("%2d.  %s", number, inWords(step.coat()));
    output.line("    %s", PredictionText.colour(output, step.prediction()));
    output.line("    %s", PredictionText.interval(step.prediction()));
    output.line(
        "    Contrast ratio so far %.2f; this paint alone hides (%.2f) after %s.",
        step.contrastRatio(), HidingPower.HIDES, hidingCoats(step.coatsToHide()));
    output.line(
        "    Pre-highlight: darkest %s%s, lightest %s%s",
        output.block(step.overDarkest()),
        Output.notation(step.overDarkest()),
        output.block(step.overLightest()),
        Output.notation(step.overLightest()));
  }

  private static String hidingCoats(double coats) {
    return coats > 1000
        ? "more than 1000 such coats"
        : String.format(Locale.ROOT, "%.1f such coats", coats);
  }

  private static String inWords(Coat coat) {
    String name =
        coat.mix().parts().size() == 1
            ? coat.mix().parts().get(0).paint().name()
            : coat.mix().toText();
    String thinned =
        coat.thinner() == 0 ? "not thinned" : "paint 1 : thinner " + plain(coat.thinner());
    String share = coat.coverage() == 1 ? "" : " over " + plain(100 * coat.coverage()) + " %";
    return String.format(
        Locale.ROOT,
        "%s, %s %s, %s%s",
        name,
        plain(coat.coats()),
        coat.coats() == 1 ? "coat" : "coats",
        thinned,
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
      output.line("No coat of one of these paints brings it nearer.");
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
          "  %2d.  %.1f ml paint (about %.0f drops) and %.1f ml thinner",
          i + 1,
          amount.paintMillilitres(),
          Math.ceil(amount.drops(steps.get(i).coat().mix())),
          amount.thinnerMillilitres());
    }
    output.line("  Rough: film, solids and transfer are guesses until you measure yours.");
  }

  private void printOrder(CoatPlan plan) {
    output.line("");
    if (!plan.steps().isEmpty()) {
      output.line("Order, as common practice has it; the label wins:");
      if (plan.base().medium().isEmpty()) {
        output.line("  What the base is bound with isn't known: try the first coat on scrap.");
      }
      plan.order().forEach(note -> output.line("  %s", inWords(note)));
    }
    for (Medium medium : plan.media()) {
      output.line("  Wait after %s: %s.", medium.word(), Wait.after(medium).words());
    }
    for (Caution caution : plan.cautions()) {
      output.line("Caution: %s", caution.text());
    }
  }

  private static String inWords(OrderNote note) {
    return String.format(
        Locale.ROOT,
        "%s over %s (%s over %s): %s, since %s.%s",
        note.upperPaint(),
        note.lowerPaint(),
        note.rule().upper().word(),
        note.rule().lower().word(),
        note.verdict().word(),
        note.rule().reason(),
        note.rule().remedy().isEmpty() ? "" : " " + note.rule().remedy());
  }
}
