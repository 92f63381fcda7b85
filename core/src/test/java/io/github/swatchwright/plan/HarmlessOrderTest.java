package io.github.swatchwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.coat.Coat;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** No plan puts a solvent on what it lifts, whatever was asked for. */
class HarmlessOrderTest {
  private static final Planner PLANNER =
      Planner.of(ShelfOptics.estimate(RandomProjects.SHELF), TristimulusWeights.D65);

  /**
   * What lifts what, written down once more as the trade says it (cp): white spirit in a wash lifts
   * enamel and oil; lacquer thinner lifts enamel and oil always, acrylic when it is wet; water in a
   * wash lifts water colour.
   */
  private static boolean lifts(Coat upper, Coat lower) {
    boolean oily = lower.medium() == Medium.ENAMEL || lower.medium() == Medium.OIL;
    return switch (upper.medium()) {
      case ENAMEL, OIL -> upper.isWash() && oily;
      case LACQUER -> oily || (upper.isWash() && lower.medium() == Medium.ACRYLIC);
      case ACRYLIC, WATER -> upper.isWash() && lower.medium() == Medium.WATER;
    };
  }

  /** Everything that a coat lifts: through washes and coats with gaps, down to a closed one. */
  private static List<String> harm(List<Coat> coats) {
    List<String> harm = new ArrayList<>();
    for (int upper = 1; upper < coats.size(); upper++) {
      for (int lower = upper - 1; lower >= 0; lower--) {
        if (lifts(coats.get(upper), coats.get(lower))) {
          harm.add(name(coats.get(upper)) + " lifts " + name(coats.get(lower)));
        }
        if (coats.get(lower).coverage() == 1 && !coats.get(lower).isWash()) {
          break;
        }
      }
    }
    return harm;
  }

  private static String name(Coat coat) {
    return coat.mix().toText();
  }

  private static List<Coat> coats(List<PlanStep> steps) {
    return steps.stream().flatMap(step -> step.work().coats().stream()).toList();
  }

  private static String words(List<PlanStep> steps) {
    return steps.stream()
        .map(step -> step.kind().word() + step.work().coats().stream().map(c -> name(c)).toList())
        .toList()
        .toString();
  }

  private static boolean openChips(List<PlanStep> steps) {
    for (int i = 1; i < steps.size(); i++) {
      boolean chips =
          steps.get(i).work().worn() > 0 && steps.get(i - 1).kind() == StepKind.CHIPPING_MEDIUM;
      boolean sealed =
          i + 1 < steps.size()
              && (steps.get(i + 1).kind() == StepKind.SEAL
                  || steps.get(i + 1).kind() == StepKind.VARNISH);
      if (chips && !sealed) {
        return true;
      }
    }
    return false;
  }

  @Test
  void noneOf500RandomPlansPutsASolventOnWhatItLiftsAndNoSealIsForNothing() {
    RandomProjects projects = new RandomProjects(20);
    int planned = 0;
    int seals = 0;
    int moved = 0;
    while (planned < 500) {
      Project project = projects.next();
      Plan plan;
      try {
        plan = PLANNER.plan(project);
      } catch (IllegalArgumentException e) {
        assertThat(e).hasMessageStartingWith("Area, step ");
        continue;
      }
      planned++;
      List<PlanStep> steps = plan.steps();
      assertThat(harm(coats(steps))).as(words(steps)).isEmpty();
      assertThat(openChips(steps)).as(words(steps)).isFalse();
      for (PlanStep seal : steps) {
        if (seal.kind() == StepKind.SEAL) {
          List<PlanStep> without = new ArrayList<>(steps);
          without.remove(seal);
          seals++;
          assertThat(!harm(coats(without)).isEmpty() || openChips(without))
              .as("seal %d of %s", seal.number(), words(steps))
              .isTrue();
        }
      }
      moved += (int) steps.stream().filter(s -> s.advice().toString().contains("Moved")).count();
    }

    // So that the above was put to the test at all.
    assertThat(seals).isGreaterThan(100);
    assertThat(moved).isPositive();
  }
}
