package io.github.swatchwright.cli;

import io.github.swatchwright.calibrate.NextCard;
import io.github.swatchwright.calibrate.NextCards;
import io.github.swatchwright.coat.Caution;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.plan.Look;
import io.github.swatchwright.plan.Needs;
import io.github.swatchwright.plan.Plan;
import io.github.swatchwright.plan.PlanCalendar;
import io.github.swatchwright.plan.PlanStep;
import io.github.swatchwright.plan.ProjectArea;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A plan, for someone with wet hands.
 *
 * @param output where it goes
 * @param plan what was planned
 * @param lastTime what the notebook remembers
 */
record PlanText(Output output, Plan plan, LastTime lastTime) {
  /** A gain that shows in the figures as they are printed, ΔE00. */
  private static final double WORTH_SAYING = 0.1;

  void print() {
    output.line(plan.project().name());
    printWhen();
    printBefore();
    printDone();
    for (PlanStep step : plan.toDo()) {
      output.line("");
      new PlanStepText(output, step, lastTime).print();
    }
    printAreas();
    printNeeds();
    printEnd();
  }

  private void printWhen() {
    if (plan.calendar().isEmpty()) {
      output.line("Everything is done.");
      return;
    }
    output.line("");
    output.line("When");
    for (PlanCalendar.Line sitting : PlanCalendar.of(plan)) {
      output.line("  %s", sitting.when());
      sitting.what().forEach(work -> output.line("    %s", work));
    }
    output.line(
        "  Waits are the usual ones at room temperature. The label wins, and a finger on the");
    output.line("  sprue: what feels cool or soft isn't dry.");
  }

  private void printBefore() {
    List<Needs.OfPaint> missing = plan.needs().missing();
    boolean cards = plan.cards().isPresent();
    boolean bare = !plan.withoutPrimer().isEmpty();
    if (missing.isEmpty() && !cards && !bare && plan.trials().isEmpty()) {
      return;
    }
    output.line("");
    output.line("Before you start");
    missing.forEach(paint -> output.line("  %s", inWords(paint)));
    if (bare) {
      output.line(
          "  No primer is planned for: %s. Wash the plastic with soap and let it dry; on bare"
              + " plastic acrylic rubs off.",
          String.join(", ", plan.withoutPrimer()));
    }
    plan.cards().ifPresent(this::print);
    for (PlanStep step : plan.trials()) {
      output.line(
          "  Try step %d on a strip of scrap first, painted like the %s: one coat, two, three. The"
              + " colour is only known to within ΔE00 %.1f; a look at the strip tells you more.",
          step.number(), step.area(), step.look().prediction().intervalDeltaE00());
    }
  }

  private static String inWords(Needs.OfPaint paint) {
    return paint.owned()
        ? String.format(
            Locale.ROOT,
            "%s runs short: %.1f ml needed, %.1f ml left",
            paint.name(),
            paint.millilitres(),
            paint.left().orElse(0))
        : String.format(Locale.ROOT, "Buy %s, %.1f ml", paint.name(), paint.millilitres());
  }

  private void print(NextCards cards) {
    double before = cards.expectedDeltaE00();
    for (NextCard card : cards.cards()) {
      if (before - card.expectedDeltaE00() < WORTH_SAYING) {
        return;
      }
      output.line(
          "  Paint a test card of %s, let it dry and measure it: then expect the base coats about"
              + " ΔE00 %.1f from what you want, instead of %.1f.",
          inWords(card.recipe()), card.expectedDeltaE00(), before);
      before = card.expectedDeltaE00();
    }
  }

  private static String inWords(Recipe recipe) {
    return recipe.total() == recipe.drops().get(0).count()
        ? recipe.drops().get(0).paint().name() + " as it comes"
        : recipe.toMix().toText();
  }

  private void printDone() {
    List<PlanStep> done = plan.steps().stream().filter(PlanStep::done).toList();
    if (!done.isEmpty()) {
      output.line("");
      output.line("Done");
    }
    for (PlanStep step : done) {
      Look look = step.look();
      String measured =
          look.measured()
              .map(
                  lab ->
                      String.format(
                          Locale.ROOT,
                          "; measured %s%s, ΔE00 %.1f from what was %s",
                          output.block(lab),
                          Output.notation(lab),
                          Ciede2000.deltaE(look.wanted().orElse(look.prediction().lab()), lab),
                          look.wanted().isPresent() ? "wanted" : "expected"))
              .orElse("");
      output.line("  %2d  %s%s", step.number(), PlanStepText.heading(step), measured);
    }
  }

  private void printAreas() {
    output.line("");
    output.line("In the end");
    for (ProjectArea area : plan.project().areas()) {
      Look look = plan.lookOf(area.name());
      Optional<String> measured =
          look.measured().map(lab -> output.block(lab) + Output.notation(lab) + ", measured");
      output.line(
          "  %s: %s", area.name(), measured.orElse(PlanStepText.seen(output, look.prediction())));
    }
  }

  private void printNeeds() {
    if (plan.needs().paints().isEmpty()) {
      return;
    }
    output.line("");
    output.line("You will need");
    for (Needs.OfPaint paint : plan.needs().paints()) {
      output.line(
          "  %5.1f ml  %s (%s)%s",
          paint.millilitres(),
          paint.name(),
          Words.count(paint.drops(), "drop"),
          paint.owned() ? "" : ": not on your shelf");
    }
    plan.needs()
        .thinners()
        .forEach((name, millilitres) -> output.line("  %5.1f ml  %s", millilitres, name));
    output.line("  These are rough, and leave out cleaning: film, solids and transfer are guesses");
    output.line("  until you measure yours.");
  }

  private void printEnd() {
    output.line("");
    for (Caution caution : plan.cautions()) {
      output.line("Caution: %s", caution.text());
    }
    if (!plan.toDo().isEmpty()) {
      output.line("");
      output.line(
          "Measure an area when it is dry, then run: plan … --done N --measured COLOUR. The rest of"
              + " the plan then starts from the colour that is really there.");
    }
  }
}
