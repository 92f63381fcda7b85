package io.github.swatchwright.colour;

/**
 * CIELAB of 8-bit sRGB colours, relative to D65, for whole pictures: what {@link Srgb#ofPacked} and
 * {@link Srgb#toLab} give, within 1e-10, many times faster. Linear light is looked up for each
 * channel, already multiplied by the matrix; cube roots come from a table of short series.
 *
 * <p>For single colours {@link Srgb} is as good, and takes values that are no whole 8-bit steps.
 */
public final class SrgbLabTable {
  private static final int LEVELS = 256;

  /** X/Xn, Y/Yn and Z/Zn of each level of one channel. */
  private static final double[] RED = shares(1, 0, 0);

  private static final double[] GREEN = shares(0, 1, 0);
  private static final double[] BLUE = shares(0, 0, 1);

  private SrgbLabTable() {}

  /** CIELAB of the low 24 bits of {@code 0xRRGGBB}; higher bits are ignored. */
  public static Lab toLab(int rgb) {
    double fx = f(share(rgb, 0));
    double fy = f(share(rgb, 1));
    double fz = f(share(rgb, 2));
    return Lab.ofD65(116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz));
  }

  /**
   * CIELAB of many colours, without an object for each.
   *
   * @param rgb the colours as {@code 0xRRGGBB}; higher bits are ignored
   * @param l receives L* of each
   * @param a receives a* of each
   * @param b receives b* of each; all four arrays are equally long
   * @throws IllegalArgumentException when the lengths differ
   */
  public static void toLab(int[] rgb, double[] l, double[] a, double[] b) {
    requireLength("l", l, rgb.length);
    requireLength("a", a, rgb.length);
    requireLength("b", b, rgb.length);
    for (int i = 0; i < rgb.length; i++) {
      double fx = f(share(rgb[i], 0));
      double fy = f(share(rgb[i], 1));
      double fz = f(share(rgb[i], 2));
      l[i] = 116 * fy - 16;
      a[i] = 500 * (fx - fy);
      b[i] = 200 * (fy - fz);
    }
  }

  /** X/Xn, Y/Yn or Z/Zn, by number, of a packed colour. */
  private static double share(int rgb, int which) {
    return RED[3 * (rgb >> 16 & 0xFF) + which]
        + GREEN[3 * (rgb >> 8 & 0xFF) + which]
        + BLUE[3 * (rgb & 0xFF) + which];
  }

  private static double f(double t) {
    return t > CielabCurve.EPSILON ? UnitCubeRoot.of(t) : CielabCurve.encode(t);
  }

  private static double[] shares(int red, int green, int blue) {
    double[] shares = new double[3 * LEVELS];
    WhitePoint white = WhitePoint.D65;
    for (int level = 0; level < LEVELS; level++) {
      double light = SrgbCurve.decode(level / 255.0);
      Xyz xyz = RgbPrimaries.SRGB.toXyz(red * light, green * light, blue * light);
      shares[3 * level] = xyz.x() / white.xn();
      shares[3 * level + 1] = xyz.y() / white.yn();
      shares[3 * level + 2] = xyz.z() / white.zn();
    }
    return shares;
  }

  private static void requireLength(String name, double[] array, int length) {
    if (array.length != length) {
      throw new IllegalArgumentException(
          name + " has length " + array.length + ", must be as long as rgb: " + length);
    }
  }
}
