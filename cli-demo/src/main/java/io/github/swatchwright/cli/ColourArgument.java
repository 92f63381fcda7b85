package io.github.swatchwright.cli;

import io.github.swatchwright.argument.Printable;
import io.github.swatchwright.colour.ColourNotation;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;

/** Reads a colour on the command line: as numbers, from a photo, or a paint of the shelf. */
final class ColourArgument {
  private ColourArgument() {}

  /**
   * Reads a colour: a paint of the shelf, a region of a photo, or any {@link ColourNotation}; and
   * prints what has to be said about it.
   *
   * @param text the colour
   * @param shelf the paints
   * @param reference how the light of photos is known
   * @param output where the doubts are printed
   * @throws IllegalArgumentException when the text is no colour, or names no paint of the shelf
   */
  static GivenColour parse(String text, Shelf shelf, PhotoReference reference, Output output) {
    String trimmed = text.trim();
    GivenColour colour =
        ArgumentKind.of(trimmed, shelf) == ArgumentKind.PHOTO
            ? GivenColour.of(trimmed, PhotoPatch.parse(trimmed).colour(reference, shelf))
            : known(trimmed, shelf);
    colour.note().ifPresent(output::note);
    return colour;
  }

  /** A colour in numbers, by its name in CSS, or a paint of the shelf. */
  static GivenColour known(String text, Shelf shelf) {
    return ArgumentKind.of(text, shelf) == ArgumentKind.NOTATION
        ? noted(text)
        : GivenColour.of(masstone(text, shelf));
  }

  private static GivenColour noted(String text) {
    ColourNotation notation = ColourNotation.of(text).orElseThrow();
    if (!notation.isRgb()) {
      return GivenColour.of(new Swatch.OfLab(Lab.parse(text)));
    }
    Srgb colour = Srgb.parse(text);
    GivenColour given = GivenColour.of(new Swatch.OfSrgb(colour));
    return notation == ColourNotation.NAME
        ? given.noting("no paint is named '" + text + "': taken for CSS's colour " + colour.toHex())
        : given;
  }

  /** As stated; only a paint that is known by a stroke or by test cards has to be estimated. */
  private static Swatch masstone(String name, Shelf shelf) {
    Paint paint = paint(name, shelf);
    return paint.masstone().orElseGet(() -> ShelfOptics.estimate(shelf).colour(paint.name()));
  }

  private static Paint paint(String name, Shelf shelf) {
    if (name.matches("(?i).*\\.(jpe?g|png|webp|tiff?)(@.*)?")) {
      throw new IllegalArgumentException(
          Printable.quoted(name)
              + " is not of the form photo.jpg@x,y,w,h, a file and a region of it in pixels or"
              + " percent");
    }
    try {
      return shelf.paint(name);
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException(
          e.getMessage()
              + " (a colour is #RRGGBB, rgb(r, g, b), lab(L, a, b) or the name of a paint)",
          e);
    }
  }
}
