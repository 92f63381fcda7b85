package io.github.swatchwright.mix;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.mix.SyntheticPigments.Pigment;
import io.github.swatchwright.optics.OpticalConstants;
import io.github.swatchwright.paint.Make;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What each piece of evidence buys: predictions of two-paint mixes against a known truth. */
@Tag("statistics")
class EvidenceLadderTest {
  private static final long[] SEEDS = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12};

  /** Ratios by volume: 1:1, and 1:4 both ways. */
  private static final double[][] RATIOS = {{1, 1}, {1, 4}, {4, 1}};

  @Test
  void errorsFallWithEveryPieceOfEvidence() {
    List<Rung> rungs = new ArrayList<>();
    rungs.add(climb("equal strengths", pigment -> pigment.swatch(Make.READY_MIXED)));
    rungs.add(climb("swatch and make", pigment -> pigment.swatch(Make.SINGLE_PIGMENT)));
    rungs.add(climb("+ hiding word", Pigment::withWord));
    rungs.add(climb("+ coats to hide", Pigment::withCoats));
    rungs.add(climb("+ contrast ratio", Pigment::withContrastRatio));

    for (int rung = 1; rung < rungs.size(); rung++) {
      assertThat(rungs.get(rung).median()).isLessThan(rungs.get(rung - 1).median());
      assertThat(rungs.get(rung).p90()).isLessThan(rungs.get(rung - 1).p90());
      // Four fifths are meant; the first rung's statement is false, and may hold less often.
      assertThat(rungs.get(rung).held()).isBetween(0.74, 0.86);
    }
    // The bound that is aimed at.
    assertThat(rungs.get(4).median()).isLessThanOrEqualTo(0.65 * rungs.get(0).median());
    assertThat(rungs.get(4).p90()).isLessThanOrEqualTo(0.65 * rungs.get(0).p90());
  }

  /**
   * How wrong predictions were, and how often their intervals said so.
   *
   * @param errors ΔE00 of prediction and truth
   * @param radii of the intervals
   * @param held share of mixes whose truth lay within the interval
   */
  private record Rung(DescriptiveStatistics errors, DescriptiveStatistics radii, double held) {
    double median() {
      return errors.getPercentile(50);
    }

    double p90() {
      return errors.getPercentile(90);
    }
  }

  private static Rung climb(String evidence, Function<Pigment, Paint> known) {
    DescriptiveStatistics errors = new DescriptiveStatistics();
    DescriptiveStatistics radii = new DescriptiveStatistics();
    int held = 0;
    for (long seed : SEEDS) {
      List<Pigment> pigments = SyntheticPigments.shelf(seed);
      Shelf shelf = Shelf.of("invented", pigments.stream().map(known).toList());
      MixPredictor predictor =
          MixPredictor.of(ShelfOptics.estimate(shelf), SyntheticPigments.VIEWING.weights())
              .withDropScatter(0);
      for (int i = 0; i < pigments.size(); i++) {
        for (int j = i + 1; j < pigments.size(); j++) {
          for (double[] ratio : RATIOS) {
            Prediction prediction =
                predictor.predict(mix(shelf, pigments.get(i), pigments.get(j), ratio));
            double error =
                Ciede2000.deltaE(truth(pigments.get(i), pigments.get(j), ratio), prediction.lab());
            errors.addValue(error);
            radii.addValue(prediction.intervalDeltaE00());
            held += error <= prediction.intervalDeltaE00() ? 1 : 0;
          }
        }
      }
    }
    Rung rung = new Rung(errors, radii, (double) held / errors.getN());
    System.out.printf(
        Locale.ROOT,
        "evidence ladder: %-18s median %5.2f  p90 %5.2f  80 %% interval holds %2.0f %%"
            + " (median radius %.1f)  (%d mixes)%n",
        evidence,
        rung.median(),
        rung.p90(),
        100 * rung.held(),
        radii.getPercentile(50),
        errors.getN());
    return rung;
  }

  private static Lab truth(Pigment first, Pigment second, double[] ratio) {
    OpticalConstants mixed =
        OpticalConstants.mix(new OpticalConstants[] {first.truth(), second.truth()}, ratio);
    return SyntheticPigments.VIEWING.lab(mixed.opaque());
  }

  private static Mix mix(Shelf shelf, Pigment first, Pigment second, double[] ratio) {
    return new Mix(
        List.of(
            new Mix.Part(shelf.paint(first.name()), ratio[0]),
            new Mix.Part(shelf.paint(second.name()), ratio[1])));
  }
}
