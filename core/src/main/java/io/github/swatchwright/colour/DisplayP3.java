package io.github.swatchwright.colour;

import io.github.swatchwright.argument.Require;

/**
 * A colour in encoded Display P3: P3 primaries, D65 and the sRGB curve, as phones tag their photos.
 *
 * @param red encoded red, 0 to 1 when a P3 display can show it
 * @param green encoded green
 * @param blue encoded blue
 */
public record DisplayP3(double red, double green, double blue) {

  /** Refuses values that are not finite. */
  public DisplayP3 {
    Require.finite("red", red);
    Require.finite("green", green);
    Require.finite("blue", blue);
  }

  /** Display P3 of a colour, adapted to D65. */
  public static DisplayP3 ofXyz(Xyz colour) {
    double[] rgb = RgbPrimaries.DISPLAY_P3.fromXyz(colour);
    return new DisplayP3(
        SrgbCurve.encode(rgb[0]), SrgbCurve.encode(rgb[1]), SrgbCurve.encode(rgb[2]));
  }

  /** Tristimulus values relative to D65. */
  public Xyz toXyz() {
    return RgbPrimaries.DISPLAY_P3.toXyz(
        SrgbCurve.decode(red), SrgbCurve.decode(green), SrgbCurve.decode(blue));
  }

  /** The same colour in sRGB; channels outside 0 to 1 are kept as they come out. */
  public Srgb toSrgb() {
    return Srgb.ofXyz(toXyz());
  }
}
