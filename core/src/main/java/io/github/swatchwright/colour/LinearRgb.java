package io.github.swatchwright.colour;

import io.github.swatchwright.argument.Require;

/**
 * Linear light with the primaries of sRGB: what may be averaged, added and scaled.
 *
 * @param red linear red, 0 to 1 on an sRGB display, any finite number beyond it
 * @param green linear green
 * @param blue linear blue
 */
public record LinearRgb(double red, double green, double blue) {

  /** Refuses values that are not finite. */
  public LinearRgb {
    Require.finite("red", red);
    Require.finite("green", green);
    Require.finite("blue", blue);
  }

  /** Linear sRGB of a colour, adapted to D65. */
  public static LinearRgb ofXyz(Xyz colour) {
    double[] rgb = RgbPrimaries.SRGB.fromXyz(colour);
    return new LinearRgb(rgb[0], rgb[1], rgb[2]);
  }

  /** Tristimulus values relative to D65. */
  public Xyz toXyz() {
    return RgbPrimaries.SRGB.toXyz(red, green, blue);
  }

  /** The same colour with the sRGB curve applied. */
  public Srgb encode() {
    return new Srgb(SrgbCurve.encode(red), SrgbCurve.encode(green), SrgbCurve.encode(blue));
  }
}
