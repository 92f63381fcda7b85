package io.github.swatchwright.card;

import io.github.swatchwright.colour.GamutPolicy;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.Srgb;
import java.util.Locale;

/**
 * A colour as an sRGB screen shows it. What a screen can't show keeps its lightness and hue and
 * gives up chroma ({@link GamutPolicy#REDUCE_CHROMA}), and says so.
 *
 * @param colour the colour
 */
record ScreenColour(Lab colour) {

  /** What is said beside a colour that a screen can't show. */
  static final String TOO_STRONG = "stronger than a screen can show; drawn weaker";

  /** The colour to draw with, {@code #RRGGBB}. */
  String hex() {
    return colour.toSrgb().fit(GamutPolicy.REDUCE_CHROMA).toHex();
  }

  /** Whether it is drawn as it is. */
  boolean isTrue() {
    return colour.toSrgb().isDisplayable();
  }

  /** The colour in words and numbers, with what a screen leaves out. */
  String notation() {
    String plain =
        String.format(Locale.ROOT, "L %.0f a %.0f b %.0f", colour.l(), colour.a(), colour.b());
    return hex() + " · " + minus(plain) + (isTrue() ? "" : " · " + TOO_STRONG);
  }

  /** A real minus sign, and none before a zero. */
  private static String minus(String numbers) {
    return numbers.replaceAll("-0(?![0-9])", "0").replace('-', '\u2212');
  }

  /** Black or white, whichever is read better on it. */
  String inkOnIt() {
    return colour.l() > INK_CHANGES ? Srgb.of8Bit(0, 0, 0).toHex() : "#FFFFFF";
  }

  /**
   * L* at which black and white have the same contrast by WCAG 2.2: (Y+5)/5 = 105/(Y+5), Y = 17.9.
   */
  private static final double INK_CHANGES = 49.4;
}
