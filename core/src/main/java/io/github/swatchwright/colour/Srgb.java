package io.github.swatchwright.colour;

import io.github.swatchwright.argument.Printable;
import io.github.swatchwright.argument.Require;
import java.util.Locale;

/**
 * A colour in encoded sRGB (IEC 61966-2-1). Channels outside 0 to 1 stand for colours that an sRGB
 * display can't show; {@link #fit} is the only way they are changed.
 *
 * @param red encoded red, 0 to 1 when displayable
 * @param green encoded green
 * @param blue encoded blue
 */
public record Srgb(double red, double green, double blue) {

  /**
   * How far outside 0 to 1 a channel may lie and still count as displayable: rounding, a twentieth
   * of an 8-bit step at most.
   */
  public static final double DISPLAYABLE_TOLERANCE = 0.0002;

  /** Refuses values that are not finite. */
  public Srgb {
    Require.finite("red", red);
    Require.finite("green", green);
    Require.finite("blue", blue);
  }

  /** A colour from 8-bit channels, 0 to 255 each. */
  public static Srgb of8Bit(int red, int green, int blue) {
    return new Srgb(
        Require.within("red", red, 0, 255) / 255.0,
        Require.within("green", green, 0, 255) / 255.0,
        Require.within("blue", blue, 0, 255) / 255.0);
  }

  /** A colour from the low 24 bits of {@code 0xRRGGBB}; higher bits are ignored. */
  public static Srgb ofPacked(int rgb) {
    return of8Bit(rgb >> 16 & 0xFF, rgb >> 8 & 0xFF, rgb & 0xFF);
  }

  /**
   * Reads a colour in any {@link ColourNotation}: {@code #RRGGBB} and the other notations of CSS.
   * Of a {@code lab()} beyond a display's range, channels lie outside 0 to 1.
   *
   * @throws IllegalArgumentException when the text is no colour, or one that is transparent in part
   */
  public static Srgb parse(String text) {
    return ColourNotation.required(text).srgb(text);
  }

  /**
   * Reads {@code #RRGGBB} alone, as file formats have it.
   *
   * @throws IllegalArgumentException when the text is anything else
   */
  public static Srgb parseHex(String text) {
    String trimmed = text.trim();
    if (!trimmed.matches("#[0-9A-Fa-f]{6}")) {
      throw new IllegalArgumentException(
          Printable.quoted(text) + " is not a colour of the form #RRGGBB with six digits 0 to F");
    }
    return ofPacked(Integer.parseInt(trimmed.substring(1), 16));
  }

  /** sRGB of a colour, adapted to D65. */
  public static Srgb ofXyz(Xyz colour) {
    return LinearRgb.ofXyz(colour).encode();
  }

  /** The same colour in linear light. */
  public LinearRgb decode() {
    return new LinearRgb(SrgbCurve.decode(red), SrgbCurve.decode(green), SrgbCurve.decode(blue));
  }

  /** Tristimulus values relative to D65. */
  public Xyz toXyz() {
    return decode().toXyz();
  }

  /** CIELAB relative to D65. */
  public Lab toLab() {
    return toXyz().toLab();
  }

  /** Whether an sRGB display can show this colour, up to {@link #DISPLAYABLE_TOLERANCE}. */
  public boolean isDisplayable() {
    return isDisplayable(red) && isDisplayable(green) && isDisplayable(blue);
  }

  private static boolean isDisplayable(double channel) {
    return channel >= -DISPLAYABLE_TOLERANCE && channel <= 1 + DISPLAYABLE_TOLERANCE;
  }

  /**
   * This colour brought into a display's range by the stated policy; a displayable colour stays.
   *
   * @throws IllegalArgumentException under {@link GamutPolicy#REFUSE}, when it isn't displayable
   */
  public Srgb fit(GamutPolicy policy) {
    return isDisplayable() ? this : policy.fit(this);
  }

  /**
   * The colour as {@code 0xRRGGBB}, rounded to 8 bits.
   *
   * @throws IllegalArgumentException when it isn't displayable: {@link #fit} it first
   */
  public int toPacked() {
    if (!isDisplayable()) {
      throw new IllegalArgumentException(this + " is outside the sRGB range 0 to 1; fit it first");
    }
    return to8Bit(red) << 16 | to8Bit(green) << 8 | to8Bit(blue);
  }

  private static int to8Bit(double channel) {
    return (int) Math.max(0, Math.min(255, Math.round(channel * 255)));
  }

  /**
   * The colour as {@code #RRGGBB}, rounded to 8 bits.
   *
   * @throws IllegalArgumentException when it isn't displayable: {@link #fit} it first
   */
  public String toHex() {
    return String.format(Locale.ROOT, "#%06X", toPacked());
  }
}
