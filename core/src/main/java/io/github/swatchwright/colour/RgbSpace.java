package io.github.swatchwright.colour;

/**
 * An RGB colour space in which pictures come: primaries, the white D65, and a transfer curve.
 * Encoded channels run from 0 to 1.
 */
public final class RgbSpace {
  /** IEC 61966-2-1: what an untagged picture is in. */
  public static final RgbSpace SRGB = new RgbSpace("sRGB", RgbPrimaries.SRGB, 0);

  /** P3 primaries with the sRGB curve: what phones tag their photos as. */
  public static final RgbSpace DISPLAY_P3 = new RgbSpace("Display P3", RgbPrimaries.DISPLAY_P3, 0);

  /** Adobe RGB (1998), with its exponent 563/256: a choice of many cameras. */
  public static final RgbSpace ADOBE_RGB =
      new RgbSpace("Adobe RGB", RgbPrimaries.ADOBE_RGB, 563.0 / 256);

  /**
   * The primaries of ITU-R BT.2020 with the sRGB curve. No file comes in it; it is wide enough to
   * convert pictures of any other space into, with 16 bits a channel.
   */
  public static final RgbSpace WIDE = new RgbSpace("wide", RgbPrimaries.BT_2020, 0);

  private final String name;
  private final RgbPrimaries primaries;
  private final double exponent;

  private RgbSpace(String name, RgbPrimaries primaries, double exponent) {
    this.name = name;
    this.primaries = primaries;
    this.exponent = exponent;
  }

  /** Linear light of an encoded channel. */
  public double decode(double encoded) {
    return exponent == 0
        ? SrgbCurve.decode(encoded)
        : Math.copySign(Math.pow(Math.abs(encoded), exponent), encoded);
  }

  /** Encoded channel of linear light. */
  public double encode(double linear) {
    return exponent == 0
        ? SrgbCurve.encode(linear)
        : Math.copySign(Math.pow(Math.abs(linear), 1 / exponent), linear);
  }

  /** The colour of linear channels, relative to D65. */
  public Xyz toXyz(double red, double green, double blue) {
    return primaries.toXyz(red, green, blue);
  }

  /** The three linear channels of a colour, adapted to D65; outside 0 to 1 where it doesn't fit. */
  public double[] linearOf(Xyz colour) {
    return primaries.fromXyz(colour);
  }

  /** Linear channels of this space as linear sRGB; channels outside 0 to 1 are kept. */
  public LinearRgb toLinearSrgb(double red, double green, double blue) {
    return primaries == RgbPrimaries.SRGB
        ? new LinearRgb(red, green, blue)
        : LinearRgb.ofXyz(primaries.toXyz(red, green, blue));
  }

  @Override
  public String toString() {
    return name;
  }
}
