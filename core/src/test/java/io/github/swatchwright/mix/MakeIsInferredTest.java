package io.github.swatchwright.mix;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.mix.SyntheticPigments.Pigment;
import io.github.swatchwright.optics.OpticalConstants;
import io.github.swatchwright.paint.Make;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import java.util.List;
import java.util.Locale;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;
import org.junit.jupiter.api.Test;

/** Mixes of invented single pigments whose hiding is known, and whose make is stated or not. */
class MakeIsInferredTest {
  private static final long[] SEEDS = {101, 102, 103};

  @Test
  void aMakeThatIsNotStatedCostsLittleOnceHidingIsKnown() {
    DescriptiveStatistics right = errors("right", Make.SINGLE_PIGMENT);
    DescriptiveStatistics unstated = errors("not stated", Make.UNSTATED);
    DescriptiveStatistics wrong = errors("wrong", Make.READY_MIXED);
    // A tenth is what a painter wouldn't notice.
    for (int percent : new int[] {50, 90}) {
      assertThat(unstated.getPercentile(percent))
          .isLessThanOrEqualTo(1.1 * right.getPercentile(percent));
      assertThat(wrong.getPercentile(percent))
          .isLessThanOrEqualTo(1.1 * right.getPercentile(percent));
    }
  }

  private static DescriptiveStatistics errors(String name, Make make) {
    DescriptiveStatistics errors = new DescriptiveStatistics();
    DescriptiveStatistics radii = new DescriptiveStatistics();
    int held = 0;
    for (long seed : SEEDS) {
      List<Pigment> pigments = SyntheticPigments.shelf(seed);
      List<Paint> paints =
          pigments.stream().map(pigment -> pigment.withContrastRatio().withMake(make)).toList();
      Shelf shelf = Shelf.of("invented", paints);
      MixPredictor predictor =
          MixPredictor.of(ShelfOptics.estimate(shelf), SyntheticPigments.VIEWING.weights())
              .withDropScatter(0);
      for (int i = 0; i < paints.size(); i++) {
        for (int j = i + 1; j < paints.size(); j++) {
          OpticalConstants truth =
              OpticalConstants.mix(
                  new OpticalConstants[] {pigments.get(i).truth(), pigments.get(j).truth()},
                  new double[] {1, 1});
          Prediction prediction =
              predictor.predict(
                  new Mix(List.of(new Mix.Part(paints.get(i), 1), new Mix.Part(paints.get(j), 1))));
          double error =
              Ciede2000.deltaE(SyntheticPigments.VIEWING.lab(truth.opaque()), prediction.lab());
          errors.addValue(error);
          radii.addValue(prediction.intervalDeltaE00());
          held += error <= prediction.intervalDeltaE00() ? 1 : 0;
        }
      }
    }
    System.out.printf(
        Locale.ROOT,
        "contrast ratio known, make %-10s median %.2f  p90 %.2f  80 %% interval holds %.0f %%"
            + " (median radius %.1f)%n",
        name,
        errors.getPercentile(50),
        errors.getPercentile(90),
        100.0 * held / errors.getN(),
        radii.getPercentile(50));
    return errors;
  }
}
