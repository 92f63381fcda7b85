package io.github.swatchwright.colour;

import io.github.swatchwright.argument.Require;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * A colour in CIELAB (CIE 1976 L*a*b*, CIE 15:2018), relative to a stated white.
 *
 * @param l lightness L*: 0 black, 100 the perfect diffuser
 * @param a a*: red when positive, green when negative
 * @param b b*: yellow when positive, blue when negative
 * @param white the white it is relative to
 */
public record Lab(double l, double a, double b, WhitePoint white) {

  /** The largest |a*| or |b*| that {@link #parse} takes: beyond any real surface's colour. */
  public static final double LARGEST_PARSED_AB = 160;

  /** A chroma below this is rounding, not colour: such a colour has no hue. */
  static final double NEUTRAL_CHROMA = 1e-6;

  /** Refuses values that are not finite. */
  public Lab {
    Require.finite("l", l);
    Require.finite("a", a);
    Require.finite("b", b);
  }

  /** A colour relative to {@link WhitePoint#D65}. */
  public static Lab ofD65(double l, double a, double b) {
    return new Lab(l, a, b, WhitePoint.D65);
  }

  /**
   * Reads a colour in any {@link ColourNotation}. {@code lab(L, a, b)} with commas is relative to
   * D65; {@code lab(L a b)} with blanks is CSS's, relative to D50, and is adapted.
   *
   * @return the colour relative to D65
   * @throws IllegalArgumentException when the text is no colour, or one that is transparent in
   *     part, L* is outside 0 to 100, or a* or b* outside ±{@value #LARGEST_PARSED_AB}
   */
  public static Lab parse(String text) {
    return ColourNotation.required(text).lab(text);
  }

  /** Chroma C*ab, at least 0. */
  public double chroma() {
    return Math.hypot(a, b);
  }

  /** Hue angle h_ab in degrees, 0 to below 360; empty for a neutral colour, which has none. */
  public OptionalDouble hueDegrees() {
    return toLch().hueDegrees();
  }

  /** The same colour in cylindrical coordinates. */
  public Lch toLch() {
    double chroma = chroma();
    if (chroma < NEUTRAL_CHROMA) {
      return new Lch(l, chroma, OptionalDouble.empty(), white);
    }
    double degrees = Math.toDegrees(Math.atan2(b, a));
    double positive = degrees < 0 ? degrees + 360 : degrees;
    return new Lch(l, chroma, OptionalDouble.of(positive == 360 ? 0 : positive), white);
  }

  /** Tristimulus values under this colour's own white. */
  public Xyz toXyz() {
    double fy = (l + 16) / 116;
    return new Xyz(
        white.xn() * CielabCurve.decode(fy + a / 500),
        white.yn() * CielabCurve.decode(fy),
        white.zn() * CielabCurve.decode(fy - b / 200),
        white);
  }

  /** The corresponding colour under another white, by the linear Bradford transform. */
  public Lab adaptTo(WhitePoint target) {
    return white.equals(target) ? this : toXyz().adaptTo(target).toLab();
  }

  /** sRGB of this colour, adapted to D65; channels outside 0 to 1 are kept as they come out. */
  public Srgb toSrgb() {
    return LinearRgb.ofXyz(toXyz()).encode();
  }

  /** The colour as {@link #parse} reads it, rounded to two decimals: for people. */
  public String toText() {
    return "lab(" + rounded(l) + ", " + rounded(a) + ", " + rounded(b) + ")";
  }

  /** Two decimals; what is rounded to 0 has no sign. */
  private static String rounded(double value) {
    String text = String.format(Locale.ROOT, "%.2f", value);
    return text.equals("-0.00") ? "0.00" : text;
  }
}
