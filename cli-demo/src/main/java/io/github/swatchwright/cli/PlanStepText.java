package io.github.swatchwright.cli;

import io.github.swatchwright.coat.Coat;
import io.github.swatchwright.colour.GamutPolicy;
import io.github.swatchwright.ladder.Ladder;
import io.github.swatchwright.ladder.Rung;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.Prediction;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.plan.Look;
import io.github.swatchwright.plan.PlanStep;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * One step of a plan: what to mix, how to paint it, and what it looks like then.
 *
 * @param output where it goes
 * @param step the step
 * @param lastTime what the notebook remembers
 */
record PlanStepText(Output output, PlanStep step, LastTime lastTime) {
  void print() {
    output.line("%2d.  %s", step.number(), heading(step));
    step.work().ladder().ifPresent(this::print);
    if (step.work().ladder().isEmpty() && !step.work().coats().isEmpty()) {
      print(step.work().coats().get(0));
    }
    step.advice().forEach(sentence -> output.line("      %s", sentence));
    step.work().coats().stream()
        .flatMap(coat -> lastTime.of(coat.mix(), List.of(step.kind().word())).stream())
        .findFirst()
        .ifPresent(line -> output.line("      %s", line));
    printLook();
  }

  private void print(Coat coat) {
    Mix pot = step.work().pot().orElse(coat.mix());
    output.line("      Mix  %s", inWords(pot));
    double thinner = step.work().amount().thinnerMillilitres();
    String thinned =
        thinner == 0
            ? coat.thinning()
            : String.format(Locale.ROOT, "%s, %.1f ml of it", coat.thinning(), thinner);
    String coats = Numbers.plain(coat.coats()) + (coat.coats() == 1 ? " coat" : " coats");
    output.line("      %s, %s%s", coats, thinned, share(coat));
  }

  private String share(Coat coat) {
    double painted = coat.coverage() / (1 - step.work().worn());
    return painted > 0.999
        ? ""
        : String.format(Locale.ROOT, ", over %.0f %% of the area", 100 * painted);
  }

  private static String inWords(Mix pot) {
    if (pot.parts().size() == 1) {
      return inWords(pot.parts().get(0));
    }
    return String.format(
        Locale.ROOT,
        "%s; %.1f ml in all",
        pot.parts().stream().map(PlanStepText::inWords).collect(Collectors.joining(" + ")),
        pot.millilitres());
  }

  private static String inWords(Mix.Part part) {
    return String.format(
        Locale.ROOT,
        "%s %.1f ml (%d %s)",
        part.paint().name(),
        part.millilitres(),
        Math.round(part.drops()),
        part.drops() == 1 ? "drop" : "drops");
  }

  private void print(Ladder ladder) {
    ladder
        .letDown()
        .ifPresent(
            some ->
                output.line("      First let down, in a pot of its own: %s", drops(some.drops())));
    int number = 1;
    for (Rung rung : ladder.rungs()) {
      List<String> parts = new ArrayList<>();
      if (rung.keep() > 0) {
        parts.add(
            "keep " + rung.keep() + (rung.keep() == 1 ? " drop" : " drops") + " of the pot before");
      }
      if (!rung.add().isEmpty()) {
        parts.add((rung.keep() > 0 ? "add " : "") + drops(rung.add()));
      }
      if (rung.letDown() > 0) {
        parts.add(rung.letDown() + " of the let-down");
      }
      output.line(
          "      Pass %d, over %.0f %%: %s; %s%s",
          number++,
          100 * rung.coverage(),
          String.join(", ", parts),
          output.block(rung.prediction().lab()),
          rung.prediction().srgb().fit(GamutPolicy.REDUCE_CHROMA).toHex());
    }
  }

  private static String drops(List<Recipe.Drops> drops) {
    return drops.stream()
        .map(
            some ->
                String.format(
                    Locale.ROOT,
                    "%s %d (%.2f ml)",
                    some.paint().name(),
                    some.count(),
                    some.count() * some.paint().dropMillilitres()))
        .collect(Collectors.joining(", "));
  }

  private void printLook() {
    if (step.kind().isClear()) {
      return;
    }
    Look look = step.look();
    output.line("      Then %s", seen(output, look.prediction()));
    look.wanted()
        .filter(wanted -> look.offBy().orElse(0) >= 1)
        .ifPresent(
            wanted ->
                output.line(
                    "      Wanted %s%s, ΔE00 %.1f away",
                    output.block(wanted), Output.notation(wanted), look.offBy().orElse(0)));
  }

  /** Where it is done, and what. */
  static String heading(PlanStep step) {
    return step.area() + ": " + step.kind().heading().toLowerCase(Locale.ROOT);
  }

  /** A predicted colour and how sure it is. */
  static String seen(Output output, Prediction prediction) {
    return String.format(
        Locale.ROOT,
        "%s%s, within ΔE00 %.1f in 8 of 10 tries",
        output.block(prediction.lab()),
        Output.notation(prediction.lab()),
        prediction.intervalDeltaE00());
  }
}
