package io.github.swatchwright.sheet;

import java.util.List;

/**
 * A sheet that was found in a photo, before its layout is known.
 *
 * @param photo the photo
 * @param marks which marks of the layout are seen, by their index
 * @param seen where, in pixels of the photo
 */
public record FoundSheet(SheetPhoto photo, List<Integer> marks, List<Spot> seen) {
  /** Copies the lists, and refuses fewer than four marks. */
  public FoundSheet {
    marks = List.copyOf(marks);
    seen = List.copyOf(seen);
    if (marks.size() < 4 || marks.size() != seen.size()) {
      throw new IllegalArgumentException("marks must be at least four, each with its place");
    }
  }

  /**
   * Finds a sheet of the usual layout.
   *
   * @throws IllegalArgumentException when there is none, more than one, or only a mirrored one
   */
  public static FoundSheet in(SheetPhoto photo) {
    return SheetFinder.of(SheetLayout.usualMarks(Paper.A4)).in(photo);
  }

  /**
   * Finds a sheet with these marks.
   *
   * @throws IllegalArgumentException when there is none, more than one, or only a mirrored one
   */
  public static FoundSheet in(SheetPhoto photo, List<Spot> marks) {
    return SheetFinder.of(marks).in(photo);
  }

  /**
   * The sheet whose corner marks are near four places of a photo, as a user taps them. Its other
   * marks are looked for; without them the lens isn't corrected.
   *
   * @param photo the photo
   * @param marks the layout's marks, mm
   * @param corners about where the corner marks are, pixels, clockwise from the left upper one
   */
  public static FoundSheet near(SheetPhoto photo, List<Spot> marks, List<Spot> corners) {
    return SheetFinder.of(marks).near(photo, corners);
  }

  /** Where each place of a layout is in the photo. */
  public Flattening on(SheetLayout layout) {
    return Flattening.by(
        layout.width(),
        layout.height(),
        photo,
        marks.stream().map(layout.marks()::get).toList(),
        seen);
  }

  /** Where each place of a usual layout on this paper is in the photo, before its code is read. */
  public Flattening on(Paper paper) {
    List<Spot> all = SheetLayout.usualMarks(paper);
    return Flattening.by(
        paper.width(), paper.height(), photo, marks.stream().map(all::get).toList(), seen);
  }
}
