package io.github.swatchwright.cli;

import io.github.swatchwright.cli.photo.PhotoFile;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.photo.Photo;
import io.github.swatchwright.photo.PhotoColour;
import io.github.swatchwright.photo.Region;
import java.nio.file.Path;
import java.util.Locale;

/** A colour on the command line. */
final class ColourArgument {
  private ColourArgument() {}

  /**
   * Reads {@code #RRGGBB}, {@code lab(L, a, b)}, {@code photo.jpg@x,y,w,h} or the name of a paint.
   * What must be said about a colour from a photo is told.
   *
   * @param text the colour
   * @param shelf the paints
   * @param reference what tells the light of photos
   * @param output where to tell
   * @throws IllegalArgumentException when it is none of them
   */
  static GivenColour parse(String text, Shelf shelf, PhotoReference reference, Output output) {
    String trimmed = text.trim();
    if (trimmed.startsWith("#")) {
      return GivenColour.of(new Swatch.OfSrgb(Srgb.parse(trimmed)));
    }
    if (trimmed.toLowerCase(Locale.ROOT).startsWith("lab(")) {
      return GivenColour.of(new Swatch.OfLab(Lab.parse(trimmed)));
    }
    int at = trimmed.lastIndexOf('@');
    if (isARegion(trimmed)) {
      GivenColour colour =
          GivenColour.of(
              trimmed, photo(trimmed.substring(0, at), trimmed.substring(at + 1), reference));
      colour.note().ifPresent(output::note);
      return colour;
    }
    return GivenColour.of(masstone(trimmed, shelf));
  }

  /** Whether a colour is given by the name of a paint. */
  static boolean isAName(String text) {
    String trimmed = text.trim();
    return !trimmed.startsWith("#")
        && !trimmed.toLowerCase(Locale.ROOT).startsWith("lab(")
        && !isARegion(trimmed);
  }

  private static boolean isARegion(String text) {
    int at = text.lastIndexOf('@');
    return at > 0 && text.substring(at).matches("@[^,]*,[^,]*,[^,]*,[^,]*");
  }

  private static PhotoColour photo(String file, String region, PhotoReference reference) {
    Photo photo = PhotoFile.open(Path.of(file));
    Region read = Region.parse(region, photo.width(), photo.height());
    return reference.reader(photo).colour(read);
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
