package io.github.swatchwright.colour;

import io.github.swatchwright.argument.Require;

/**
 * CIE 1931 chromaticity with luminance, "xyY": where a colour lies in the chromaticity diagram (CIE
 * 15:2018, 7.3).
 *
 * @param x chromaticity x
 * @param y chromaticity y, not 0
 * @param luminance Y on the CIE's scale, where a perfect diffuser has 100
 * @param white the light's white
 */
public record Xyy(double x, double y, double luminance, WhitePoint white) {

  /** Refuses values that are not finite, and a y of 0. */
  public Xyy {
    Require.finite("x", x);
    Require.finite("y", y);
    Require.finite("luminance", luminance);
    if (y == 0) {
      throw new IllegalArgumentException("y is 0, must not be 0");
    }
  }

  /** The chromaticity of a colour; black, which has none, is given that of its white. */
  static Xyy of(Xyz colour) {
    double sum = colour.x() + colour.y() + colour.z();
    if (sum == 0) {
      Xyy white = of(colour.white().toXyz());
      return new Xyy(white.x, white.y, 0, colour.white());
    }
    return new Xyy(colour.x() / sum, colour.y() / sum, colour.y(), colour.white());
  }

  /** Tristimulus values. */
  public Xyz toXyz() {
    double sum = luminance / y;
    return new Xyz(x * sum, luminance, (1 - x - y) * sum, white);
  }
}
