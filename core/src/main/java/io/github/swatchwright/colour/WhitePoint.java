package io.github.swatchwright.colour;

import io.github.swatchwright.argument.Require;

/**
 * The tristimulus values of the perfect diffuser under some light: what a {@link Lab} is relative
 * to.
 *
 * @param xn X of the white, above 0; about 95 for daylight
 * @param yn Y of the white, 100 on the CIE's scale
 * @param zn Z of the white, above 0
 */
public record WhitePoint(double xn, double yn, double zn) {

  /** CIE D65 by its nominal chromaticity (0.3127, 0.3290), as IEC 61966-2-1 and CSS Color 4. */
  public static final WhitePoint D65 = ofChromaticity(0.3127, 0.3290);

  /** CIE D50 by its nominal chromaticity (0.3457, 0.3585), as CSS Color 4. */
  public static final WhitePoint D50 = ofChromaticity(0.3457, 0.3585);

  /** Refuses values that are not finite or not above 0. */
  public WhitePoint {
    Require.positive("xn", xn);
    Require.positive("yn", yn);
    Require.positive("zn", zn);
  }

  /**
   * The white of CIE 1931 chromaticity (x, y), scaled to Y = 100.
   *
   * @param x chromaticity x, 0 to 1
   * @param y chromaticity y, above 0 to 1
   */
  public static WhitePoint ofChromaticity(double x, double y) {
    Require.within("x", x, 0, 1);
    Require.within("y", y, 0, 1);
    return new WhitePoint(100 * x / y, 100, 100 * (1 - x - y) / y);
  }

  /** This white as a colour relative to itself. */
  public Xyz toXyz() {
    return new Xyz(xn, yn, zn, this);
  }

  /** Written out, since every difference of two colours asks for it. */
  @Override
  public boolean equals(Object other) {
    return this == other
        || (other instanceof WhitePoint that
            && Double.compare(xn, that.xn) == 0
            && Double.compare(yn, that.yn) == 0
            && Double.compare(zn, that.zn) == 0);
  }

  @Override
  public int hashCode() {
    return 31 * (31 * Double.hashCode(xn) + Double.hashCode(yn)) + Double.hashCode(zn);
  }

  @Override
  public String toString() {
    if (equals(D65)) {
      return "D65";
    }
    return equals(D50) ? "D50" : "white(" + xn + ", " + yn + ", " + zn + ")";
  }
}
