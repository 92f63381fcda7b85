package io.github.swatchwright.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.estimate.PaintOptics;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.mix.SyntheticPigments.Pigment;
import io.github.swatchwright.optics.OpticalConstants;
import io.github.swatchwright.paint.FittedOptics;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.spectrum.Bands;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The spread that comes from the paints, a second way: the colour's derivatives by z = logit R and
 * u = ln S of each paint, taken as differences of mixes whose paints are a little other ones.
 */
class MixGradientTest {
  private static final Shelf SHELF =
      new Shelf(
          "invented",
          SyntheticPigments.shelf(9).stream().map(Pigment::withContrastRatio).toList(),
          Optional.of(SyntheticPigments.VIEWING.surface()));
  private static final ShelfOptics OPTICS = ShelfOptics.estimate(SHELF);
  private static final double STEP = 1e-5;

  /** The paint with one unknown changed: z of a band below 36, u of a band from there on. */
  private static OpticalConstants changed(PaintOptics paint, int unknown, double by) {
    double[] k = new double[Bands.COUNT];
    double[] s = new double[Bands.COUNT];
    for (int band = 0; band < Bands.COUNT; band++) {
      double r = paint.masstone()[band];
      double z = Math.log(r / (1 - r)) + (unknown == band ? by : 0);
      double other = 1 / (1 + Math.exp(-z));
      double q = (1 - other) * (1 - other) / (2 * other);
      s[band] = paint.constants().s(band) * Math.exp(unknown == Bands.COUNT + band ? by : 0);
      k[band] = q * s[band];
    }
    return OpticalConstants.of(k, s);
  }

  private static Lab colour(
      ShelfOptics optics, MixPredictor predictor, Mix mix, int part, int unknown, double by) {
    OpticalConstants[] paints =
        mix.parts().stream()
            .map(p -> optics.of(p.paint().name()).constants())
            .toArray(OpticalConstants[]::new);
    paints[part] = changed(optics.of(mix.parts().get(part).paint().name()), unknown, by);
    double[] volumes = mix.parts().stream().mapToDouble(Mix.Part::millilitres).toArray();
    return predictor.viewing().lab(OpticalConstants.mix(paints, volumes).opaque());
  }

  private static Map<String, double[][]> differences(
      ShelfOptics optics, MixPredictor predictor, Mix mix) {
    Map<String, double[][]> jacobians = new LinkedHashMap<>();
    for (int part = 0; part < mix.parts().size(); part++) {
      double[][] jacobian = new double[3][2 * Bands.COUNT];
      for (int unknown = 0; unknown < 2 * Bands.COUNT; unknown++) {
        Lab above = colour(optics, predictor, mix, part, unknown, STEP);
        Lab below = colour(optics, predictor, mix, part, unknown, -STEP);
        jacobian[0][unknown] = (above.l() - below.l()) / (2 * STEP);
        jacobian[1][unknown] = (above.a() - below.a()) / (2 * STEP);
        jacobian[2][unknown] = (above.b() - below.b()) / (2 * STEP);
      }
      jacobians.put(mix.parts().get(part).paint().name(), jacobian);
    }
    return jacobians;
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"white:3, black:1", "white:2, oxide 1:3, organic 0:1", "band 0:1, earth 1:4"})
  void theSpreadFromThePaintsIsThatOfDifferences(String text) {
    agrees(OPTICS, text);
  }

  /** A card knows a masstone and a strength together: what one gains the other loses. */
  @ParameterizedTest
  @ValueSource(strings = {"white:3, oxide 1:1", "white:1, oxide 1:4", "oxide 1:1"})
  void soItIsWhenEvidenceTiesReflectanceAndStrength(String text) {
    float[] slopes = new float[2 * Bands.COUNT];
    Arrays.fill(slopes, 0, Bands.COUNT, 0.5f);
    Arrays.fill(slopes, Bands.COUNT, slopes.length, 1f);
    Shelf taught = SHELF;
    for (String name : List.of("white", "oxide 1")) {
      taught = taught.with(taught.paint(name).withOptics(fitted(name, slopes)));
    }
    ShelfOptics optics = ShelfOptics.estimate(taught);
    Mix mix = Mix.parse(text, taught);
    assertThat(predictor(optics).predict(mix).intervalDeltaE00())
        .isLessThan(predictor(OPTICS).predict(mix).intervalDeltaE00());
    agrees(optics, text);
  }

  private static FittedOptics fitted(String name, float... slopes) {
    PaintOptics paint = OPTICS.of(name);
    double[] z = Arrays.stream(paint.masstone()).map(r -> Math.log(r / (1 - r))).toArray();
    double[] u =
        IntStream.range(0, Bands.COUNT)
            .mapToDouble(band -> Math.log(paint.constants().s(band)))
            .toArray();
    return new FittedOptics(z, u, 1, 0.5, List.of(new FittedOptics.Row(0, slopes)));
  }

  private static void agrees(ShelfOptics optics, String text) {
    MixPredictor predictor = predictor(optics);
    Mix mix = Mix.parse(text, optics.shelf());
    double[][] expected = optics.covarianceOf(differences(optics, predictor, mix));
    double[] sds = predictor.predict(mix).spread().standardDeviations();
    double[][] covariance = predictor.dependence(mix).covariance();
    for (int i = 0; i < 3; i++) {
      // Central differences of a step of 1e-5 carry nine digits.
      assertThat(sds[i] / Math.sqrt(expected[i][i])).isCloseTo(1, within(1e-6));
      for (int j = 0; j < 3; j++) {
        double scale = Math.sqrt(expected[i][i] * expected[j][j]);
        assertThat((covariance[i][j] - expected[i][j]) / scale).isCloseTo(0, within(1e-6));
      }
    }
  }

  @Test
  void aSurfaceThatNobodyStatedMakesMixesOfDarksLessSure() {
    Shelf unstated = Shelf.of("invented", SHELF.paints());
    ShelfOptics guessed = ShelfOptics.estimate(unstated);
    Shelf stated = new Shelf("invented", SHELF.paints(), Optional.of(guessed.surface()));
    MixPredictor unsure = predictor(guessed);
    MixPredictor sure = predictor(ShelfOptics.estimate(stated));
    Mix dark = Mix.parse("band 0:1, white:1", unstated);
    Mix alone = Mix.parse("band 0:1", unstated);
    assertThat(unsure.predict(dark).lab()).isEqualTo(sure.predict(dark).lab());
    // A quarter of k1 is a third of what the darkest bands of this blue seem to reflect inside.
    assertThat(unsure.predict(dark).intervalDeltaE00())
        .isGreaterThan(1.02 * sure.predict(dark).intervalDeltaE00());
    // What one paint looks like is stated: the surface doesn't change it.
    assertThat(unsure.predict(alone).intervalDeltaE00())
        .isCloseTo(sure.predict(alone).intervalDeltaE00(), within(1e-3));
  }

  private static MixPredictor predictor(ShelfOptics optics) {
    return MixPredictor.of(optics, TristimulusWeights.D65).withDropScatter(0);
  }

  @Test
  void dropsScatterUnlessToldOtherwise() {
    MixPredictor usual = MixPredictor.of(OPTICS, TristimulusWeights.D65);
    Mix mix = Mix.parse("white:3, black:1", SHELF);
    assertThat(usual.predict(mix).intervalDeltaE00())
        .isEqualTo(usual.withDropScatter(0.08).predict(mix).intervalDeltaE00())
        .isGreaterThan(usual.withDropScatter(0).predict(mix).intervalDeltaE00());
    assertThat(usual.predict(mix).srgb()).isEqualTo(usual.predict(mix).lab().toSrgb());
  }
}
