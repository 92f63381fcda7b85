package io.github.swatchwright.mix;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.mix.SyntheticPigments.Pigment;
import io.github.swatchwright.optics.OpticalConstants;
import io.github.swatchwright.paint.Make;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.ShelfOptics;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;
import org.junit.jupiter.api.Test;

/** What each piece of evidence buys: predictions of two-paint mixes against a known truth. */
class EvidenceLadderTest {
  private static final long[] SEEDS = {1, 2, 3, 4};

  /** Ratios by volume: 1:1, and 1:4 both ways. */
  private static final double[][] RATIOS = {{1, 1}, {1, 4}, {4, 1}};

  @Test
  void errorsFallWithEveryPieceOfEvidence() {
    List<DescriptiveStatistics> rungs = new ArrayList<>();
    rungs.add(errors("equal strengths", pigment -> pigment.swatch(Make.READY_MIXED)));
    rungs.add(errors("swatch and make", pigment -> pigment.swatch(Make.SINGLE_PIGMENT)));
    rungs.add(errors("+ hiding word", Pigment::withWord));
    rungs.add(errors("+ coats to hide", Pigment::withCoats));
    rungs.add(errors("+ contrast ratio", Pigment::withContrastRatio));

    for (int rung = 1; rung < rungs.size(); rung++) {
      assertThat(median(rungs.get(rung))).isLessThan(median(rungs.get(rung - 1)));
      assertThat(p90(rungs.get(rung))).isLessThan(p90(rungs.get(rung - 1)));
    }
    // The bound that the design asks for.
    assertThat(median(rungs.get(4))).isLessThanOrEqualTo(0.65 * median(rungs.get(0)));
    assertThat(p90(rungs.get(4))).isLessThanOrEqualTo(0.65 * p90(rungs.get(0)));
  }

  private static DescriptiveStatistics errors(String evidence, Function<Pigment, Paint> known) {
    DescriptiveStatistics errors = new DescriptiveStatistics();
    for (long seed : SEEDS) {
      List<Pigment> pigments = SyntheticPigments.shelf(seed);
      Shelf shelf = Shelf.of("invented", pigments.stream().map(known).toList());
      MixPredictor predictor =
          MixPredictor.of(ShelfOptics.estimate(shelf), SyntheticPigments.VIEWING.weights());
      for (int i = 0; i < pigments.size(); i++) {
        for (int j = i + 1; j < pigments.size(); j++) {
          for (double[] ratio : RATIOS) {
            errors.addValue(error(pigments.get(i), pigments.get(j), ratio, shelf, predictor));
          }
        }
      }
    }
    System.out.printf(
        Locale.ROOT,
        "evidence ladder: %-18s median %5.2f  p90 %5.2f  (%d mixes)%n",
        evidence,
        median(errors),
        p90(errors),
        errors.getN());
    return errors;
  }

  private static double error(
      Pigment first, Pigment second, double[] ratio, Shelf shelf, MixPredictor predictor) {
    OpticalConstants truth =
        OpticalConstants.mix(new OpticalConstants[] {first.truth(), second.truth()}, ratio);
    Lab painted = SyntheticPigments.VIEWING.lab(truth.opaque());
    Mix mix =
        new Mix(
            List.of(
                new Mix.Part(shelf.paint(first.name()), ratio[0]),
                new Mix.Part(shelf.paint(second.name()), ratio[1])));
    return Ciede2000.deltaE(painted, predictor.predict(mix).lab());
  }

  private static double median(DescriptiveStatistics errors) {
    return errors.getPercentile(50);
  }

  private static double p90(DescriptiveStatistics errors) {
    return errors.getPercentile(90);
  }
}
