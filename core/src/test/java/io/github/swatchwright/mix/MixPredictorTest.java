package io.github.swatchwright.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.mix.SyntheticPigments.Pigment;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class MixPredictorTest {
  private static final Shelf SHELF =
      Shelf.of(
          "invented", SyntheticPigments.shelf(5).stream().map(Pigment::withContrastRatio).toList());
  private static final MixPredictor PREDICTOR =
      MixPredictor.of(ShelfOptics.estimate(SHELF), TristimulusWeights.D65);

  @Test
  void twiceTheDropsLookTheSameAndScatterLess() {
    Prediction few = PREDICTOR.predict(Mix.parse("white:3, black:1", SHELF));
    Prediction many = PREDICTOR.predict(Mix.parse("white:30, black:10", SHELF));
    assertThat(many.lab().l()).isCloseTo(few.lab().l(), within(1e-12));
    assertThat(many.intervalDeltaE00()).isLessThan(few.intervalDeltaE00());
  }

  @Test
  void oneDropOfBlackAmongThirtyOfWhiteIsTheUnsureOne() {
    MixPredictor drops = PREDICTOR.withDropScatter(0.08);
    MixPredictor exact = PREDICTOR.withDropScatter(0);
    assertThat(byDrops("white:30, black:1", drops, exact))
        .isGreaterThan(byDrops("white:15, oxide 1:15", drops, exact));
  }

  private static double byDrops(String mix, MixPredictor drops, MixPredictor exact) {
    Mix parsed = Mix.parse(mix, SHELF);
    double with = drops.predict(parsed).spread().standardDeviations()[0];
    double without = exact.predict(parsed).spread().standardDeviations()[0];
    return Math.sqrt(with * with - without * without);
  }

  @Test
  void firstOrderSpreadOfDropsAgreesWithDrawnDrops() {
    Mix mix = Mix.parse("white:6, oxide 1:4, black:2", SHELF);
    double[] linear =
        variancesByDrops(PREDICTOR.withDropScatter(0.02), PREDICTOR.withDropScatter(0), mix);
    Random random = new Random(11);
    int draws = 4000;
    double sum = 0;
    double square = 0;
    for (int i = 0; i < draws; i++) {
      List<Mix.Part> drawn =
          mix.parts().stream()
              .map(
                  part ->
                      new Mix.Part(
                          part.paint(),
                          part.drops()
                              * (1 + 0.02 / Math.sqrt(part.drops()) * random.nextGaussian())))
              .toList();
      double l = PREDICTOR.viewing().lab(PREDICTOR.constants(new Mix(drawn)).opaque()).l();
      sum += l;
      square += l * l;
    }
    double variance = square / draws - sum / draws * (sum / draws);
    // The variance of 4,000 draws has a standard error of √(2/4000) = 2.2 %: four of them.
    assertThat(linear[0] / variance).isCloseTo(1, within(0.09));
  }

  private static double[] variancesByDrops(MixPredictor drops, MixPredictor exact, Mix mix) {
    double[] with = drops.predict(mix).spread().standardDeviations();
    double[] without = exact.predict(mix).spread().standardDeviations();
    double[] variances = new double[3];
    for (int i = 0; i < 3; i++) {
      variances[i] = with[i] * with[i] - without[i] * without[i];
    }
    return variances;
  }
}
