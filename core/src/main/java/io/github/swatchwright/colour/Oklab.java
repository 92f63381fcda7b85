package io.github.swatchwright.colour;

import io.github.swatchwright.argument.Require;

/**
 * A colour in Oklab: even steps for sliders and gradients on a screen. For differences between
 * paints use {@link Lab} with CIEDE2000, which is what their figures are made for. As CSS Color
 * Module Level 4 defines it (after Ottosson 2020, matrices recalculated for one white, D65).
 *
 * @param l lightness, 0 black to 1 the perfect diffuser
 * @param a towards red when positive, green when negative
 * @param b towards yellow when positive, blue when negative
 */
public record Oklab(double l, double a, double b) {
  private static final Matrix3 TO_ROOTS =
      new Matrix3(
          1,
          0.3963377773761749,
          0.2158037573099136,
          1,
          -0.1055613458156586,
          -0.0638541728258133,
          1,
          -0.0894841775298119,
          -1.2914855480194092);

  private static final Matrix3 FROM_ROOTS = TO_ROOTS.inverse();

  private static final Matrix3 CONES_TO_XYZ =
      new Matrix3(
          1.2268798758459243,
          -0.5578149944602171,
          0.2813910456659647,
          -0.0405757452148008,
          1.1122868032803170,
          -0.0717110580655164,
          -0.0763729366746601,
          -0.4214933324022432,
          1.5869240198367816);

  private static final Matrix3 XYZ_TO_CONES = CONES_TO_XYZ.inverse();

  /** Refuses values that are not finite. */
  public Oklab {
    Require.finite("l", l);
    Require.finite("a", a);
    Require.finite("b", b);
  }

  /** A colour, adapted to D65 by the linear Bradford transform. */
  public static Oklab of(Xyz colour) {
    Xyz xyz = colour.adaptTo(WhitePoint.D65);
    double[] cones = XYZ_TO_CONES.times(xyz.x() / 100, xyz.y() / 100, xyz.z() / 100);
    double[] lab =
        FROM_ROOTS.times(
            StrictMath.cbrt(cones[0]), StrictMath.cbrt(cones[1]), StrictMath.cbrt(cones[2]));
    return new Oklab(lab[0], lab[1], lab[2]);
  }

  /** The same colour by lightness, chroma and hue. */
  public Oklch toOklch() {
    return Oklch.of(this);
  }

  /** Tristimulus values relative to D65. */
  public Xyz toXyz() {
    double[] roots = TO_ROOTS.times(l, a, b);
    double[] xyz = CONES_TO_XYZ.times(cube(roots[0]), cube(roots[1]), cube(roots[2]));
    return new Xyz(100 * xyz[0], 100 * xyz[1], 100 * xyz[2], WhitePoint.D65);
  }

  private static double cube(double root) {
    return root * root * root;
  }
}
