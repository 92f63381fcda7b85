package io.github.swatchwright.cli;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import java.util.Locale;

/** A colour on the command line. */
final class ColourArgument {
  private ColourArgument() {}

  /**
   * Reads {@code #RRGGBB}, {@code lab(L, a, b)} or the name of a paint.
   *
   * @throws IllegalArgumentException when it is none of them
   */
  static Swatch parse(String text, Shelf shelf) {
    String trimmed = text.trim();
    if (trimmed.startsWith("#")) {
      return new Swatch.OfSrgb(Srgb.parse(trimmed));
    }
    if (trimmed.toLowerCase(Locale.ROOT).startsWith("lab(")) {
      return new Swatch.OfLab(Lab.parse(trimmed));
    }
    if (trimmed.matches(".+@[^@]*,[^@]*,[^@]*,[^@]*")) {
      throw new IllegalArgumentException(
          "'"
              + text
              + "' asks for a colour from a photo, which can't be read yet; "
              + "give #RRGGBB, lab(L, a, b) or the name of a paint");
    }
    return masstone(trimmed, shelf);
  }

  private static Swatch masstone(String name, Shelf shelf) {
    Paint paint = paint(name, shelf);
    return paint
        .masstone()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "the paint '" + paint.name() + "' has no masstone to take for a colour"));
  }

  private static Paint paint(String name, Shelf shelf) {
    try {
      return shelf.paint(name);
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException(
          e.getMessage() + " (a colour is #RRGGBB, lab(L, a, b) or the name of a paint)", e);
    }
  }
}
