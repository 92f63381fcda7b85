package io.github.swatchwright.ladder;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class PotPlannerTest {
  private static final int CASES = 30;

  @Test
  @DisplayName(
      "the objective of beam and mending is at most 10 % above the exhaustive planner's, small cases")
  void beamIsNearlyAsGoodAsTryingEverything() {
    RandomLadders ladders = new RandomLadders(7);
    Random random = new Random(8);
    int planned = 0;
    double worst = 0;
    while (planned < CASES) {
      ShelfOptics optics = ladders.shelf(4);
      MixPredictor predictor = MixPredictor.of(optics, TristimulusWeights.D65);
      List<Mix> ends = List.of(ladders.mix(optics, 2), ladders.mix(optics, 2));
      PotPaints paints = PotPaints.of(ends, optics, predictor.viewing());
      if (paints.count() < 2 || paints.count() > 3) {
        continue;
      }
      LadderPath path = LadderPath.through(paints, ends.stream().map(paints::contents).toList());
      if (Math.abs(path.lab(1).l() - path.lab(0).l()) < 12) {
        continue;
      }
      int rungs = 3 + random.nextInt(2);
      int mostDrops = paints.count() == 2 ? 16 : 10;
      double use = random.nextInt(4) == 0 ? 1 : 0.3 + 0.1 * random.nextInt(4);
      PotRule rule = PotRule.onePot().withMostDrops(mostDrops).withUse(use);
      double[] needs = new double[rungs];
      Arrays.setAll(needs, rung -> 3.0 * use / (1 + rung));
      PotAims aims = PotAims.of(path, rule, needs);
      Optional<PotTrial> found =
          new PotPlanner(paints, aims).plan().map(trial -> PotMending.byPairs(paints, aims, trial));
      double objective = found.map(PotTrial::objective).orElse(Double.POSITIVE_INFINITY);
      double least = ExhaustivePots.leastObjective(paints, aims, objective);
      assertThat(objective)
          .as("case %d: %d paints, %d rungs, use %.1f", planned, paints.count(), rungs, use)
          .isLessThanOrEqualTo(1.1 * least);
      if (least < Double.POSITIVE_INFINITY) {
        worst = Math.max(worst, objective / least);
        planned++;
      }
    }
    System.out.printf("Worst objective over the least of all: %.3f%n", worst);
  }
}
