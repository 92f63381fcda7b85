package io.github.swatchwright.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class XyyTest {
  private static final double ROUNDING = 1e-12;

  @ParameterizedTest
  @CsvSource({
    "1, 0, 0, 0.64, 0.33, 21.26",
    "0, 1, 0, 0.30, 0.60, 71.52",
    "0, 0, 1, 0.15, 0.06, 7.22",
    "1, 1, 1, 0.3127, 0.3290, 100"
  })
  @DisplayName("IEC 61966-2-1: chromaticities and luminances of the primaries and the white, D65")
  void primariesOfSrgb(double r, double g, double b, double x, double y, double luminance) {
    Xyy colour = new LinearRgb(r, g, b).toXyz().toXyy();
    assertThat(colour.x()).isCloseTo(x, within(ROUNDING));
    assertThat(colour.y()).isCloseTo(y, within(ROUNDING));
    // Printed to four decimals of 1.
    assertThat(colour.luminance()).isCloseTo(luminance, within(0.01));
  }

  @Test
  @DisplayName("CIE 15:2018, table 3: D65 is x = 0.31272, y = 0.32903 for its 5 nm spectrum")
  void d65() {
    Xyy white = WhitePoint.D65.toXyz().toXyy();
    // The nominal chromaticity has four decimals.
    assertThat(white.x()).isCloseTo(0.31272, within(5e-5));
    assertThat(white.y()).isCloseTo(0.32903, within(5e-5));
  }

  @Test
  void thereAndBackIsTheSameColour() {
    Xyz rust = Srgb.parse("#8A4B2A").toLab().toXyz();
    Xyz back = rust.toXyy().toXyz();
    assertThat(back.x()).isCloseTo(rust.x(), within(ROUNDING));
    assertThat(back.y()).isCloseTo(rust.y(), within(ROUNDING));
    assertThat(back.z()).isCloseTo(rust.z(), within(ROUNDING));
  }

  @Test
  void blackHasTheChromaticityOfItsWhite() {
    Xyy black = new Xyz(0, 0, 0, WhitePoint.D50).toXyy();
    assertThat(black.x()).isCloseTo(0.3457, within(ROUNDING));
    assertThat(black.luminance()).isZero();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Xyy(0.3, 0, 10, WhitePoint.D65))
        .withMessage("y is 0, must not be 0");
  }
}
