package io.github.swatchwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

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
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What measuring on the way is worth, when pots and coats go wrong as they do. */
class CarriedOutPlanTest {
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

  private record Outcome(List<Double> without, List<Double> with) {
    double mean(List<Double> values) {
      return values.stream().mapToDouble(off -> off).average().orElseThrow();
    }
  }

  private static Outcome outcome(int runs, String area) {
    Progress plan = first();
    Map<String, Lab> promised = promised(plan);
    List<Double> without = new ArrayList<>();
    List<Double> with = new ArrayList<>();
    for (int seed = 0; seed < runs; seed++) {
      without.add(off(byThePlan(plan, seed), promised, area));
      with.add(off(measuring(plan, seed), promised, area));
    }
    return new Outcome(without, with);
  }

  // 6 runs take seconds; -Druns=200 makes more, -Dshow=true prints each. Part of what goes wrong
  // can't be measured away (the last steps' own scatter), so no more than "nearer" is asked for.
  @Test
  void measuringOnTheWayEndsNearerWhereAPotWentWrong() {
    Outcome hull = outcome(Integer.getInteger("runs", 6), "Hull");
    if (Boolean.getBoolean("show")) {
      System.out.println(hull.without + "\n" + hull.with);
    }

    assertThat(hull.mean(hull.with)).isLessThan(hull.mean(hull.without));
  }
}
