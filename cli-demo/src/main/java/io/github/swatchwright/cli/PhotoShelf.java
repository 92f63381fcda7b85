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
    try {
      return Paint.of(name, medium, colour.swatch())
          .withSwatchError(StatedError.of(colour.error()));
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException(Printable.quoted(name) + ": " + e.getMessage(), e);
    }
  }
}
