package io.github.swatchwright.ciede2000;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The short polynomials against the formulas that they stand in for, at 200,000 places each. */
class TableAccuracyTest {
  private static final int PLACES = 200_000;

  @Test
  void hueRotationIsThatOfTheFormulaAllAround() {
    for (int i = 0; i < PLACES; i++) {
      double degrees = 360.0 * (i + 0.5) / PLACES;
      double hue = Math.toRadians(degrees);
      double x = (degrees - 275) / 25;
      double expected = Math.sin(Math.toRadians(60 * Math.exp(-x * x)));
      double actual = HueRotation.sine(Math.cos(hue), Math.sin(hue), 1, Math.sin(2 * hue));
      // 4e-15 from cutting off after the 7th power, the rest from rounding degrees and cosines.
      assertThat(actual).as("at %s°", degrees).isCloseTo(expected, within(1e-14));
    }
  }

  @Test
  void hueRotationOfTheCosineIsThatOfTheAngle() {
    for (double degrees = 0; degrees <= 180; degrees += 0.5) {
      double w = 1 - Math.cos(Math.toRadians(degrees));
      double x = degrees / 25;
      double expected = Math.sin(Math.toRadians(60 * Math.exp(-x * x)));
      // Near 0° the cosine keeps half of the angle's digits, and the formula is flat.
      assertThat(HueRotation.formula(w)).as("at %s°", degrees).isCloseTo(expected, within(1e-14));
    }
  }

  @Test
  void hueRotationJumpsAtZeroDegreesAsTheFormulaDoes() {
    // exp(−(85/25)²) · 60° just below 360°; 0 from 0° on, where the distance is 275°.
    double below = Math.toRadians(60 * Math.exp(-3.4 * 3.4));
    assertThat(HueRotation.sine(1, -0.0, 1, -Double.MIN_VALUE)).isCloseTo(below, within(1e-14));
    assertThat(HueRotation.sine(1, 0, 1, 0)).isZero();
  }

  @Test
  void chromaSaturationIsThatOfTheFormula() {
    for (int i = 0; i <= PLACES; i++) {
      double chroma = 130.0 * i / PLACES;
      double c7 = Math.pow(chroma, 7);
      double expected = Math.sqrt(c7 / (c7 + Math.pow(25, 7)));
      // 8e-15 next to the table's start, a few units in the last place elsewhere.
      assertThat(ChromaSaturation.of(chroma))
          .as("at %s", chroma)
          .isCloseTo(expected, within(1e-14));
    }
  }
}
