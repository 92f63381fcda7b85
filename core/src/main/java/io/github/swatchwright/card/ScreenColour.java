package io.github.swatchwright.card;

import io.github.swatchwright.colour.GamutPolicy;
import io.github.swatchwright.colour.Lab;
import java.util.List;
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

  private static final char MINUS = '\u2212';
  private static final char NO_BREAK_SPACE = '\u00A0';

  /** The colour to draw with, {@code #RRGGBB}. */
  String hex() {
    return colour.toSrgb().fit(GamutPolicy.REDUCE_CHROMA).toHex();
  }

  /** Whether it is drawn as it is. */
  boolean isTrue() {
    return colour.toSrgb().isDisplayable();
  }

  /** The colour in words and numbers, a line each, with what a screen leaves out. */
  List<String> notation() {
    String plain =
        String.format(Locale.ROOT, "L %.0f a %.0f b %.0f", colour.l(), colour.a(), colour.b());
    return isTrue() ? List.of(hex(), typeset(plain)) : List.of(hex(), typeset(plain), TOO_STRONG);
  }

  /** With real minus signs, none before a zero, and no line break within. */
  private static String typeset(String numbers) {
    return numbers.replaceAll("-0(?![0-9])", "0").replace('-', MINUS).replace(' ', NO_BREAK_SPACE);
  }
}
