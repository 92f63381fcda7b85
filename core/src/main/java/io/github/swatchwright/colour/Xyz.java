package io.github.swatchwright.colour;

import io.github.swatchwright.argument.Require;

/**
 * CIE 1931 tristimulus values on the CIE's scale: a perfect diffuser has Y = 100.
 *
 * @param x X, finite; negative only for colours that no surface has
 * @param y Y, finite
 * @param z Z, finite
 * @param white the light's white, on the same scale
 */
public record Xyz(double x, double y, double z, WhitePoint white) {

  /** Refuses values that are not finite. */
  public Xyz {
    Require.finite("x", x);
    Require.finite("y", y);
    Require.finite("z", z);
  }

  /** CIELAB of this colour, relative to its own white (CIE 15:2018, 8.2.1). */
  public Lab toLab() {
    double fx = CielabCurve.encode(x / white.xn());
    double fy = CielabCurve.encode(y / white.yn());
    double fz = CielabCurve.encode(z / white.zn());
    return new Lab(116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz), white);
  }

  /** The chromaticity of this colour with its luminance; black has that of its white. */
  public Xyy toXyy() {
    return Xyy.of(this);
  }

  /** Oklab of this colour, adapted to D65. */
  public Oklab toOklab() {
    return Oklab.of(this);
  }

  /** The corresponding colour under another white, by the linear Bradford transform. */
  public Xyz adaptTo(WhitePoint target) {
    return white.equals(target) ? this : Bradford.adapt(this, target);
  }
}
