package io.github.swatchwright.colour;

/**
 * The linear step between a D65 display's RGB and XYZ, worked out from its primaries'
 * chromaticities (SMPTE RP 177), so that (1, 1, 1) is the white exactly.
 */
final class RgbPrimaries {
  /** Primaries of IEC 61966-2-1 (sRGB), shared with ITU-R BT.709. */
  static final RgbPrimaries SRGB = new RgbPrimaries(0.64, 0.33, 0.30, 0.60, 0.15, 0.06);

  /** Primaries of Display P3 (SMPTE EG 432-1, with D65). */
  static final RgbPrimaries DISPLAY_P3 = new RgbPrimaries(0.680, 0.320, 0.265, 0.690, 0.150, 0.060);

  /** Primaries of Adobe RGB (1998), version 2005-05. */
  static final RgbPrimaries ADOBE_RGB = new RgbPrimaries(0.64, 0.33, 0.21, 0.71, 0.15, 0.06);

  /** Primaries of ITU-R BT.2020. */
  static final RgbPrimaries BT_2020 = new RgbPrimaries(0.708, 0.292, 0.170, 0.797, 0.131, 0.046);

  private final Matrix3 toXyz;
  private final Matrix3 fromXyz;

  private RgbPrimaries(double xr, double yr, double xg, double yg, double xb, double yb) {
    Matrix3 primaries = new Matrix3(xr, xg, xb, yr, yg, yb, 1 - xr - yr, 1 - xg - yg, 1 - xb - yb);
    WhitePoint white = WhitePoint.D65;
    double[] scale = primaries.inverse().times(white.xn(), white.yn(), white.zn());
    toXyz = primaries.scaleColumns(scale[0], scale[1], scale[2]);
    fromXyz = toXyz.inverse();
  }

  Xyz toXyz(double red, double green, double blue) {
    double[] xyz = toXyz.times(red, green, blue);
    return new Xyz(xyz[0], xyz[1], xyz[2], WhitePoint.D65);
  }

  /** Linear channels of a colour, which is adapted to D65 first. */
  double[] fromXyz(Xyz colour) {
    Xyz d65 = colour.adaptTo(WhitePoint.D65);
    return fromXyz.times(d65.x(), d65.y(), d65.z());
  }
}
