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
  @DisplayName("in small cases, no ladder of all that there are is cheaper")
  void plansAsCheaplyAsTryingEverything() {
    RandomLadders ladders = new RandomLadders(7);
    ShelfOptics optics = ladders.shelf(12);
    MixPredictor predictor = MixPredictor.of(optics, TristimulusWeights.D65);
    Random random = new Random(8);
    int planned = 0;
    while (planned < CASES) {
      List<Mix> ends = List.of(ladders.mix(optics, 2), ladders.mix(optics, 2));
      PotPaints paints = PotPaints.of(ends, optics, predictor.viewing());
      if (paints.count() < 2 || paints.count() > 3) {
        continue;
      }
      LadderPath path = LadderPath.through(paints, ends.stream().map(paints::contents).toList());
      if (Math.abs(path.lab(1).l() - path.lab(0).l()) < 12) {
        continue;
      }
      int rungs = 2 + random.nextInt(2);
      int mostDrops = paints.count() == 2 ? 8 : 6;
      boolean separate = random.nextInt(4) == 0;
      PotRule rule = new PotRule(separate, 0.9, 3, mostDrops, PotRule.USUAL_MILLILITRES);
      double[] needs = new double[rungs];
      Arrays.setAll(needs, rung -> 2.5 / (1 + rung));
      PotAims aims = new PotAims(path, rule, needs, path.lab(0), path.lab(1), false, -1);
      Optional<PotTrial> found =
          new PotPlanner(paints, aims, PotPlanner.THOROUGH).plan().map(PotMending::byPairs);
      double cost = found.map(PotTrial::cost).orElse(Double.POSITIVE_INFINITY);
      double least = ExhaustivePots.leastCost(paints, aims, cost);
      if (cost < Double.POSITIVE_INFINITY) {
        assertThat(cost)
            .as("case %d: %d paints, %d rungs", planned, paints.count(), rungs)
            // 1e-6 is for sums in another order.
            .isLessThanOrEqualTo(least + 1e-6);
        planned++;
      } else {
        assertThat(least).isInfinite();
      }
    }
  }
}
