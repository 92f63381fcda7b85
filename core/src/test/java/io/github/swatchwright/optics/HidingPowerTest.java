package io.github.swatchwright.optics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.spectrum.Bands;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.Arrays;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HidingPowerTest {
  private static final HidingPower WITHOUT_SURFACE =
      new HidingPower(new Viewing(TristimulusWeights.D65, Saunderson.NONE));

  private static OpticalConstants flat(double q) {
    double[] k = new double[Bands.COUNT];
    double[] s = new double[Bands.COUNT];
    Arrays.fill(k, q);
    Arrays.fill(s, 1);
    return OpticalConstants.of(k, s);
  }

  @ParameterizedTest(
      name = "SX for contrast ratio 0.98 over Rg 0.8, worked from Kubelka 1948: q = {0}")
  @CsvSource({"0.002, 10.44", "0.05, 5.26", "0.25, 2.87", "1, 1.47", "4, 0.62"})
  void blackOverNothingNeedsTheWorkedThickness(double q, double sx) {
    // The worked figures are for a base that reflects nothing, R0/R; two decimals are given.
    double below = ratio(new Film(q, 1, sx - 0.005));
    double above = ratio(new Film(q, 1, sx + 0.005));
    assertThat(below).isLessThan(HidingPower.HIDES);
    assertThat(above).isGreaterThan(HidingPower.HIDES);
  }

  private static double ratio(Film film) {
    return film.reflectanceOverBlack() / film.reflectanceOver(0.8);
  }

  @Property
  void moreCoatsNeverHideLess(
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 20) double q,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 10) double x,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 10) double more) {
    OpticalConstants paint = flat(q);
    // 1e-12 for rounding: the ratio saturates at 1.
    assertThat(WITHOUT_SURFACE.contrastRatio(paint, x + more))
        .isGreaterThanOrEqualTo(WITHOUT_SURFACE.contrastRatio(paint, x) - 1e-12);
  }

  @Property
  void coatsToHideReachTheRatioAndLessDoNot(
      @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 20) double q) {
    OpticalConstants paint = flat(q);
    double coats = WITHOUT_SURFACE.coatsToHide(paint);
    double ratio = WITHOUT_SURFACE.contrastRatio(paint, coats * Film.COAT);
    assertThat(ratio).isCloseTo(HidingPower.HIDES, within(1e-8));
  }
}
