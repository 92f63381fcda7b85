package io.github.swatchwright.coat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.optics.HidingPower;
import io.github.swatchwright.optics.OpticalConstants;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.spectrum.Bands;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.Arrays;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

/** Films over bases, all of any spectrum, smooth or not. */
class PaintedAreaTest {
  private static final Saunderson SURFACE = new Saunderson(0.04, 0.4);

  @Provide
  Arbitrary<OpticalConstants> paints() {
    Arbitrary<double[]> absorption = spectra(-8, 3);
    Arbitrary<double[]> scattering = spectra(-7, 2);
    return Combinators.combine(absorption, scattering).as(OpticalConstants::of);
  }

  /** Spectra whose logarithm lies within those bounds in every band. */
  private static Arbitrary<double[]> spectra(double lowest, double highest) {
    return Arbitraries.doubles()
        .between(lowest, highest)
        .ofScale(6)
        .withoutEdgeCases()
        .array(double[].class)
        .ofSize(Bands.COUNT)
        .map(logs -> Arrays.stream(logs).map(Math::exp).toArray());
  }

  @Provide
  Arbitrary<double[]> bases() {
    return Arbitraries.doubles()
        .between(0, 1)
        .ofScale(6)
        .withoutEdgeCases()
        .array(double[].class)
        .ofSize(Bands.COUNT);
  }

  @Property(tries = 300)
  void noStackReflectsMoreThanItGets(
      @ForAll("paints") OpticalConstants lower,
      @ForAll("paints") OpticalConstants upper,
      @ForAll("bases") double[] base,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 100) double thickness,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double coverage) {
    PaintedArea stack =
        PaintedArea.of(base).under(lower, thickness, coverage).under(upper, thickness, coverage);

    for (double seen : stack.seen(SURFACE::seen)) {
      assertThat(seen).isBetween(SURFACE.k1() - 1e-12, 1.0);
    }
    double[] brighter = PaintedArea.of(white()).under(lower, thickness, coverage).seen(r -> r);
    double[] darker = PaintedArea.of(base).under(lower, thickness, coverage).seen(r -> r);
    for (int band = 0; band < Bands.COUNT; band++) {
      assertThat(darker[band]).isLessThanOrEqualTo(brighter[band] + 1e-12);
    }
  }

  private static double[] white() {
    double[] white = new double[Bands.COUNT];
    Arrays.fill(white, 1);
    return white;
  }

  @Property(tries = 300)
  void manyThinCoatsEqualOneThick(
      @ForAll("paints") OpticalConstants paint,
      @ForAll("bases") double[] base,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 10) double thickness,
      @ForAll @IntRange(min = 2, max = 40) int coats) {
    PaintedArea thin = PaintedArea.of(base);
    for (int i = 0; i < coats; i++) {
      thin = thin.under(paint, thickness / coats, 1);
    }
    double[] thick = PaintedArea.of(base).under(paint, thickness, 1).seen(SURFACE::seen);

    assertThat(thin.seen(SURFACE::seen)).containsExactly(thick, within(1e-9));
  }

  @Property(tries = 300)
  void moreCoatsNeverLowerTheContrastRatio(
      @ForAll("paints") OpticalConstants paint,
      @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 10) double thickness,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double coverage) {
    PaintedArea black = grey(HidingPower.BLACK);
    PaintedArea white = grey(HidingPower.WHITE);
    double before = ratio(black, white);
    for (int coat = 0; coat < 6; coat++) {
      black = black.under(paint, thickness, coverage);
      white = white.under(paint, thickness, coverage);
      double ratio = ratio(black, white);
      // 1e-12 for rounding: the ratio saturates at 1.
      assertThat(ratio).isBetween(before - 1e-12, 1 + 1e-12);
      before = ratio;
    }
  }

  private static PaintedArea grey(double seen) {
    double[] internal = new double[Bands.COUNT];
    Arrays.fill(internal, SURFACE.internal(seen));
    return PaintedArea.of(internal);
  }

  private static double ratio(PaintedArea black, PaintedArea white) {
    TristimulusWeights light = TristimulusWeights.D65;
    return light.xyz(black.seen(SURFACE::seen)).y() / light.xyz(white.seen(SURFACE::seen)).y();
  }

  @Test
  void aPassThatCoversNothingOrAllLeavesOnePatch() {
    PaintedArea white = PaintedArea.of(flat(1));
    OpticalConstants grey = OpticalConstants.of(flat(0.1), flat(1));
    for (double coverage : new double[] {0, 1}) {
      assertThat(white.under(grey, 3, coverage).patches(r -> r, TristimulusWeights.D65)).hasSize(1);
    }
    assertThat(white.under(grey, 3, 0.3).patches(r -> r, TristimulusWeights.D65))
        .extracting(SeenPatch::share)
        .containsExactly(0.7, 0.3);
  }

  /** A tenth and nine tenths of a tenth and so on add up to a little more than one in doubles. */
  @Test
  void whiteInPatchesReflectsAllAndNotMore() {
    OpticalConstants clear = OpticalConstants.of(flat(0), flat(1));
    for (int percent = 1; percent < 100; percent++) {
      PaintedArea area = PaintedArea.of(flat(1));
      for (int pass = 0; pass < 3; pass++) {
        area = area.under(clear, 3, percent / 100.0);
      }
      // White paint that absorbs nothing over white, to the rounding of the film's formula.
      assertThat(area.seen(r -> 1)).containsOnly(new double[] {1}, within(1e-12));
      assertThat(Arrays.stream(area.seen(r -> 1)).max().orElseThrow()).isLessThanOrEqualTo(1);
    }
  }

  private static double[] flat(double value) {
    double[] values = new double[Bands.COUNT];
    Arrays.fill(values, value);
    return values;
  }
}
