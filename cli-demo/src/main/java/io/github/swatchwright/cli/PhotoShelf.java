package io.github.swatchwright.cli;

import io.github.swatchwright.argument.Printable;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.photo.PhotoColour;
import io.github.swatchwright.photo.RegionColour;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Named colours of a photo as paints, each with the error of its colour. */
final class PhotoShelf {
  /** The smallest and the largest error that a shelf may state. */
  private static final double LEAST_ERROR = 0.3;

  private static final double MOST_ERROR = 20;

  private PhotoShelf() {}

  /**
   * The shelf.
   *
   * @param name what it is called
   * @param medium of all paints
   * @throws IllegalArgumentException when a colour has no name, or two have the same
   */
  static Shelf of(String name, List<RegionColour> colours, Medium medium) {
    List<Paint> paints = new ArrayList<>();
    Set<String> names = new HashSet<>();
    for (RegionColour read : colours) {
      String called =
          read.name()
              .orElseThrow(
                  () ->
                      new IllegalArgumentException(
                          "a shelf needs names: give the regions by --regions FILE, which the page"
                              + " of --pick saves"));
      if (!names.add(called)) {
        throw new IllegalArgumentException(
            Printable.quoted(called) + " has several colours; a paint on a shelf has one");
      }
      paints.add(paint(called, read.colour(), medium));
    }
    return Shelf.of(name, paints);
  }

  private static Paint paint(String name, PhotoColour colour, Medium medium) {
    double error = Math.max(LEAST_ERROR, Math.min(MOST_ERROR, colour.error()));
    try {
      return Paint.of(name, medium, colour.swatch()).withSwatchError(Math.rint(100 * error) / 100);
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException(Printable.quoted(name) + ": " + e.getMessage(), e);
    }
  }
}
