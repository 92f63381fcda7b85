package io.github.swatchwright.colour;

import io.github.swatchwright.argument.Printable;
import java.util.Locale;

/** The hexadecimal notations of CSS Color Module Level 4, section 5.2. */
final class HexColour {
  private HexColour() {}

  /**
   * A colour of 3, 4, 6 or 8 digits after {@code #}; of six, the {@code #} may be left out.
   *
   * @throws IllegalArgumentException when it is anything else, or its alpha isn't {@code ff}
   */
  static Srgb parse(String text) {
    String digits = text.trim().replaceFirst("^#", "").toLowerCase(Locale.ROOT);
    if (!digits.matches("[0-9a-f]{3,8}") || digits.length() == 5 || digits.length() == 7) {
      throw new IllegalArgumentException(
          Printable.quoted(text) + " is not a colour of the form #RRGGBB with six digits 0 to F");
    }
    boolean isShort = digits.length() < 6;
    String all = isShort ? digits.replaceAll("[0-9a-f]", "$0$0") : digits;
    if (all.length() == 8 && !all.endsWith("ff")) {
      throw CssFunction.seeThrough(text);
    }
    return Srgb.ofPacked(Integer.parseInt(all.substring(0, 6), 16));
  }
}
