package io.github.swatchwright.plan;

import io.github.swatchwright.coat.CoatPredictor;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.ProjectJson;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.match.Matcher;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.spectrum.TristimulusWeights;
import io.github.swatchwright.testdata.DemoProject;
import io.github.swatchwright.testdata.DemoShelf;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.LongToDoubleFunction;
import java.util.stream.LongStream;

/** What measuring on the way is worth, when pots and coats go wrong as they do. */
final class PlanStatistics {
  private static final Shelf SHELF = ShelfJson.parse(DemoShelf.text(), DemoShelf.SOURCE);
  private static final ShelfOptics OPTICS = ShelfOptics.estimate(SHELF);
  private static final TristimulusWeights D65 = TristimulusWeights.D65;

  static final Project PROJECT =
      ProjectJson.parse(
          DemoProject.text(),
          DemoProject.SOURCE,
          SHELF,
          photo -> {
            throw new IllegalArgumentException(photo);
          });

  private static Progress first() {
    Tools tools =
        new Tools(
            OPTICS,
            D65,
            CoatPredictor.of(OPTICS, D65),
            Matcher.of(OPTICS, D65),
            PROJECT.application());
    return Progress.first(tools, PROJECT);
  }

  private static Map<String, Lab> promised(Progress plan) {
    Map<String, Lab> promised = new LinkedHashMap<>();
    for (PlanStep step : plan.steps()) {
      promised.put(step.area(), step.look().wanted().orElse(step.look().prediction().lab()));
    }
    return promised;
  }

  private static double off(SimulatedPainter painter, Map<String, Lab> promised, String area) {
    return Ciede2000.deltaE(Objects.requireNonNull(promised.get(area)), painter.colour(area));
  }

  private static SimulatedPainter byThePlan(Progress plan, long seed) {
    SimulatedPainter painter = new SimulatedPainter(OPTICS, PROJECT, seed);
    plan.steps().forEach(painter::paint);
    return painter;
  }

  /** Measures after each step that changed a colour, and goes on from what is there. */
  private static SimulatedPainter measuring(Progress plan, long seed) {
    SimulatedPainter painter = new SimulatedPainter(OPTICS, PROJECT, seed);
    Progress now = plan;
    for (int number = 1; number <= now.steps().size(); number++) {
      PlanStep step = now.steps().get(number - 1);
      painter.paint(step);
      boolean coloured = !step.kind().isClear() && step.kind() != StepKind.PRE_HIGHLIGHT;
      now =
          now.after(new Done(number, coloured ? painter.measured(step.area()) : Optional.empty()));
    }
    return painter;
  }

  /** How far the hull's base is from the wanted one before anything is painted over it, ΔE00. */
  private static double baseOff(Progress plan, long seed, boolean measuring) {
    SimulatedPainter painter = new SimulatedPainter(OPTICS, PROJECT, seed);
    Progress now = plan;
    double off = Double.NaN;
    for (int number = 1; number <= now.steps().size(); number++) {
      PlanStep step = now.steps().get(number - 1);
      painter.paint(step);
      boolean base = step.kind() == StepKind.BASE || step.kind() == StepKind.CORRECTION;
      if (base && step.area().equals("Hull")) {
        Lab wanted = step.look().wanted().orElse(step.look().prediction().lab());
        off = Ciede2000.deltaE(wanted, painter.colour("Hull"));
      }
      boolean seen = measuring && base;
      now = now.after(new Done(number, seen ? painter.measured(step.area()) : Optional.empty()));
    }
    return off;
  }

  private static double mean(int runs, LongToDoubleFunction ofSeed) {
    return LongStream.range(0, runs).mapToDouble(ofSeed).average().orElseThrow();
  }

  /**
   * Prints means over some painters, in ΔE00 from what was promised: of the hull's base before it
   * is painted over, and of the hull in the end; each without measuring on the way and with it.
   *
   * @param args how many painters
   */
  public static void main(String[] args) {
    int runs = Integer.parseInt(args[0]);
    Progress plan = first();
    Map<String, Lab> promised = promised(plan);
    System.out.printf(
        "base %.2f, %.2f; in the end %.2f, %.2f%n",
        mean(runs, seed -> baseOff(plan, seed, false)),
        mean(runs, seed -> baseOff(plan, seed, true)),
        mean(runs, seed -> off(byThePlan(plan, seed), promised, "Hull")),
        mean(runs, seed -> off(measuring(plan, seed), promised, "Hull")));
  }
}
