package io.github.swatchwright.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.Bands;
import java.util.Arrays;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SwatchEvidenceTest {
  private static final Saunderson SURFACE = new Saunderson(0.02, 0.4);

  /** A grey's reflectance whose L* is that: CIE 15, L* = 116·Y^(1/3) − 16. */
  private static double reflectance(double lightness) {
    return Math.pow((lightness + 16) / 116, 3);
  }

  private static SwatchEvidence.Spectrum measured(double lightness) {
    double[] grey = new double[Bands.COUNT];
    Arrays.fill(grey, reflectance(lightness));
    return SwatchEvidence.spectrum(new Swatch.OfReflectance(380, 10, grey), 0.5, SURFACE);
  }

  /** The error of a band's logit, as the difference that a little more L* makes. */
  @ParameterizedTest
  @ValueSource(doubles = {30, 50, 70, 95})
  void aMeasuredReflectanceErrsAsAGreyOfThatLightness(double lightness) {
    double step = 1e-4;
    double above = measured(lightness + step).observed()[0];
    double below = measured(lightness - step).observed()[0];
    double sd = (above - below) / (2 * step) * 0.5;
    // Central differences of this step carry eight digits.
    assertThat(measured(lightness).variances()[0] / (sd * sd)).isCloseTo(1, within(1e-6));
  }
}
