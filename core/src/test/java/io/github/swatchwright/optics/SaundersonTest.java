package io.github.swatchwright.optics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.WhitePoint;
import io.github.swatchwright.colour.Xyz;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SaundersonTest {
  private static final Saunderson TEXTBOOK = new Saunderson(0.04, 0.6);

  @ParameterizedTest(name = "Saunderson 1942, worked by hand with (0.04, 0.6): Ri = {0}")
  @CsvSource({"0.05, 0.059794", "0.2, 0.127273", "0.5, 0.314286", "0.8, 0.630769"})
  void seenReflectanceIsTheWorkedFigure(double internal, double seen) {
    // Six digits are given, so half of the last one is allowed.
    assertThat(TEXTBOOK.seen(internal)).isCloseTo(seen, within(5e-7));
    assertThat(TEXTBOOK.internal(TEXTBOOK.seen(internal))).isCloseTo(internal, within(1e-14));
  }

  @Test
  void aDarkPaintLooksDarkerWithoutItsGloss() {
    assertThat(TEXTBOOK.seenWithoutGloss(0.05)).isCloseTo(0.019794, within(5e-7));
    // L* 15 and 29, worked by hand to whole units.
    assertThat(lightness(TEXTBOOK.seenWithoutGloss(0.05))).isCloseTo(15, within(0.5));
    assertThat(lightness(TEXTBOOK.seen(0.05))).isCloseTo(29, within(0.5));
  }

  private static double lightness(double reflectance) {
    WhitePoint white = WhitePoint.D65;
    return new Xyz(
            reflectance * white.xn(), reflectance * white.yn(), reflectance * white.zn(), white)
        .toLab()
        .l();
  }

  @Property
  void bothWaysAreInverses(
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.1) double k1,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.7) double k2,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 1) double internal) {
    Saunderson surface = new Saunderson(k1, k2);
    assertThat(surface.internal(Math.min(1, surface.seen(internal))))
        .isCloseTo(internal, within(1e-13));
  }

  @Property
  void slopeAndCurvatureAreThoseOfTheCurve(
      @ForAll @Scale(9) @DoubleRange(min = 0.001, max = 0.999) double internal) {
    double h = 1e-6;
    double secant = (TEXTBOOK.seen(internal + h) - TEXTBOOK.seen(internal - h)) / (2 * h);
    // A central difference is off by h²·f''' / 6, and by rounding over h: 1e-8 covers both,
    // and ten times as much for the slope's own, steeper, slope.
    assertThat(TEXTBOOK.slope(internal)).isCloseTo(secant, within(1e-8));
    double bend = (TEXTBOOK.slope(internal + h) - TEXTBOOK.slope(internal - h)) / (2 * h);
    assertThat(TEXTBOOK.curvature(internal)).isCloseTo(bend, within(1e-7));
  }

  @Test
  void noneChangesNothing() {
    assertThat(Saunderson.NONE.seen(0.3)).isEqualTo(0.3);
  }

  @Test
  void nothingIsDarkerThanTheSurface() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> TEXTBOOK.internal(0.03))
        .withMessage("seen is 0.03, must be within [0.04, 1.0]");
  }
}
