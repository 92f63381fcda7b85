package io.github.swatchwright.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.optics.Film;
import io.github.swatchwright.optics.OpticalConstants;
import io.github.swatchwright.optics.Viewing;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.Bands;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** How a patch depends on its unknowns, a second way: by differences of what it would show. */
class PatchModelTest {
  private static final double STEP = 1e-5;

  private static final ShelfOptics OPTICS =
      ShelfOptics.estimate(
          Shelf.of(
              "two",
              List.of(
                  Paint.of("White", Medium.OIL, swatch("#EEEEE8")),
                  Paint.of("Blue", Medium.OIL, swatch("#2A4B8A")))));

  private static Swatch swatch(String srgb) {
    return new Swatch.OfSrgb(Srgb.parse(srgb));
  }

  /** White of the shelf, and a bottle of blue whose strength isn't known. */
  private static PaintedPatch patch(Swatch measured, Optional<Swatch> over) {
    return patch(measured, over, 3, 1, 1.5);
  }

  private static PaintedPatch patch(
      Swatch measured, Optional<Swatch> over, double white, double blue, double coats) {
    Map<String, PaintedPatch.Amount> amounts = new LinkedHashMap<>();
    amounts.put("White", new PaintedPatch.Amount(white, 0.05, Optional.empty()));
    amounts.put("Blue", new PaintedPatch.Amount(blue, 0.03, Optional.of("second bottle")));
    return new PaintedPatch(amounts, measured, 0.5, over, OptionalDouble.of(coats))
        .withModelError(0);
  }

  private static List<PaintedPatch> patches() {
    double[] seen = new double[Bands.COUNT];
    Arrays.fill(seen, 0.4);
    Swatch grey = swatch("#8090A8");
    Swatch measured = new Swatch.OfReflectance(380, 10, seen);
    Optional<Swatch> base = Optional.of(swatch("#603020"));
    return List.of(
        patch(grey, Optional.empty()),
        patch(measured, Optional.empty()),
        patch(grey, base),
        patch(measured, base));
  }

  private static Map<String, double[]> states() {
    Map<String, double[]> states = new LinkedHashMap<>();
    for (String name : List.of("White", "Blue")) {
      states.put(name, OPTICS.of(name).belief().mean());
    }
    states.put(new PaintBatch("Blue", "second bottle").key(), new double[] {0.2});
    return states;
  }

  @ParameterizedTest
  @MethodSource("patches")
  void slopesAreThoseOfDifferences(PaintedPatch patch) {
    assertSlopes(new PatchModel(patch, OPTICS.surface()));
    assertSlopes(new PatchModel(patch, OPTICS.surface(), PaintingDays.NONE, 5));
  }

  private static void assertSlopes(PatchModel model) {
    List<double[][]> jacobians = model.linearise(states()).jacobians();
    List<String> unknowns = model.unknowns();
    assertThat(unknowns).hasSize(3).hasSameSizeAs(jacobians);
    for (int i = 0; i < unknowns.size(); i++) {
      double[][] jacobian = jacobians.get(i);
      for (int column = 0; column < jacobian[0].length; column++) {
        double[] above = model.residual(moved(unknowns.get(i), column, STEP));
        double[] below = model.residual(moved(unknowns.get(i), column, -STEP));
        for (int row = 0; row < jacobian.length; row++) {
          // Measured minus expected falls as what is expected rises; differences of this step have
          // an error of some 1e-9, and a film's slopes, which are differences, another 1e-7.
          assertThat(jacobian[row][column])
              .as("%s %d", unknowns.get(i), column)
              .isCloseTo((below[row] - above[row]) / (2 * STEP), within(1e-5));
        }
      }
    }
  }

  private static Map<String, double[]> moved(String unknown, int index, double by) {
    Map<String, double[]> states = states();
    states.computeIfPresent(unknown, (name, state) -> state.clone());
    Objects.requireNonNull(states.get(unknown))[index] += by;
    return states;
  }

  /** Measuring, both amounts and the thickness of a film err independently of each other. */
  @ParameterizedTest
  @MethodSource("patches")
  void errorsAreThoseOfDifferences(PaintedPatch patch) {
    PatchModel model = new PatchModel(patch, OPTICS.surface());
    List<double[]> shifts = new ArrayList<>();
    shifts.add(shift(patch, 1 + STEP, 1, 1, 0.05));
    shifts.add(shift(patch, 1, 1 + STEP, 1, 0.03));
    if (patch.over().isPresent()) {
      // A film's thickness is known to a tenth.
      shifts.add(shift(patch, 1, 1, 1 + STEP, 0.1));
    }
    double[][] noise = model.linearise(states()).noise();
    double[] variances = model.variances();
    assertThat(noise).hasNumberOfRows(variances.length);
    for (int i = 0; i < noise.length; i++) {
      assertThat(noise[i]).hasSize(i + 1);
      for (int j = 0; j <= i; j++) {
        double expected = i == j ? variances[i] : 0;
        for (double[] shift : shifts) {
          expected += shift[i] * shift[j];
        }
        // One-sided differences of a step of 1e-5 are off by some 1e-5 of themselves.
        assertThat(noise[i][j]).isCloseTo(expected, within(1e-4 * Math.abs(expected) + 1e-7));
      }
    }
  }

  /** What a little more of something changes, per its relative amount, times its error. */
  private static double[] shift(
      PaintedPatch patch, double white, double blue, double coats, double error) {
    double[] before = new PatchModel(patch, OPTICS.surface()).residual(states());
    PaintedPatch more = patch(patch.measured(), patch.over(), 3 * white, blue, 1.5 * coats);
    double[] after = new PatchModel(more, OPTICS.surface()).residual(states());
    double[] shift = new double[before.length];
    for (int i = 0; i < shift.length; i++) {
      shift[i] = (after[i] - before[i]) / STEP * error;
    }
    return shift;
  }

  @Test
  void aMeasuredColourErrsAsStated() {
    PatchModel model = new PatchModel(patch(swatch("#8090A8"), Optional.empty()), OPTICS.surface());
    assertThat(model.variances()).containsExactly(0.25, 0.25, 0.25);
  }

  /** 36 bands by fives are seven means of five, and one band. */
  @Test
  void neighbouringBandsMayBeTakenTogether() {
    PaintedPatch patch = patches().get(1);
    PatchModel single = new PatchModel(patch, OPTICS.surface());
    PatchModel merged = new PatchModel(patch, OPTICS.surface(), PaintingDays.NONE, 5);
    double[] means = new double[8];
    double[] variances = new double[8];
    for (int band = 0; band < Bands.COUNT; band++) {
      int members = band < 35 ? 5 : 1;
      means[band / 5] += single.residual(states())[band] / members;
      variances[band / 5] += single.variances()[band] / (members * members);
    }
    assertThat(merged.residual(states())).containsExactly(means, within(1e-12));
    assertThat(merged.variances()).containsExactly(variances, within(1e-12));
  }

  @Test
  void itsPaintsAndBottlesAreNamed() {
    PatchModel model = new PatchModel(patches().get(0), OPTICS.surface());
    assertThat(model.paints()).containsExactly("White", "Blue");
    assertThat(model.batches()).containsExactly(new PaintBatch("Blue", "second bottle"));
  }

  @Test
  void aStrongerBottleCountsAsMoreOfThePaint() {
    Lab measured = Lab.ofD65(60, -5, -20);
    PatchModel model =
        new PatchModel(patch(new Swatch.OfLab(measured), Optional.empty()), OPTICS.surface());
    OpticalConstants mixed =
        OpticalConstants.mix(
            new OpticalConstants[] {OPTICS.of("White").constants(), OPTICS.of("Blue").constants()},
            new double[] {3, Math.exp(0.2)});
    Lab expected = new Viewing(TristimulusWeights.D65, OPTICS.surface()).lab(mixed.opaque());
    assertThat(Ciede2000.deltaE(expected, model.lab(states()))).isLessThan(1e-9);
    assertThat(model.deltaE00(states()))
        .isCloseTo(Ciede2000.deltaE(measured, expected), within(1e-9));
  }

  /** A coat is 3 units thick; the base is seen through the surface, too. */
  @Test
  void aFilmLiesOverItsBase() {
    Swatch base = swatch("#603020");
    PatchModel model =
        new PatchModel(patch(swatch("#8090A8"), Optional.of(base)), OPTICS.surface());
    double strength = Math.exp(0.2);
    OpticalConstants white = OPTICS.of("White").constants();
    OpticalConstants blue = OPTICS.of("Blue").constants();
    double[] internal = new double[Bands.COUNT];
    for (int band = 0; band < Bands.COUNT; band++) {
      double k = (3 * white.k(band) + strength * blue.k(band)) / 4;
      double s = (3 * white.s(band) + strength * blue.s(band)) / 4;
      double below =
          OPTICS.surface().internal(Math.max(base.reflectance().at(band), OPTICS.surface().k1()));
      internal[band] = new Film(k, s, 1.5 * 3).reflectanceOver(below);
    }
    Lab expected = new Viewing(TristimulusWeights.D65, OPTICS.surface()).lab(internal);
    assertThat(Ciede2000.deltaE(expected, model.lab(states()))).isLessThan(1e-9);
  }
}
