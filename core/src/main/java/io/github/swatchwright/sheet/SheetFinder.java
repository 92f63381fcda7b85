package io.github.swatchwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds a sheet in a photo by its ring marks: of all ways to lay four of the marks found onto four
 * of the layout's, the one that brings most of the others onto theirs. Marks may be hidden, also
 * one at a corner, as long as {@value MarkLaying#FEWEST} are seen.
 */
final class SheetFinder {
  private final MarkLaying laying;

  private SheetFinder(MarkLaying laying) {
    this.laying = laying;
  }

  /**
   * A finder for layouts with these marks.
   *
   * @param marks in millimetres, the corners first
   */
  static SheetFinder of(List<Spot> marks) {
    return new SheetFinder(MarkLaying.of(marks));
  }

  /**
   * Finds the sheet.
   *
   * @throws IllegalArgumentException when there is none, more than one, or only a mirrored one
   */
  FoundSheet in(SheetPhoto photo) {
    return among(photo, RingMarks.in(photo));
  }

  FoundSheet among(SheetPhoto photo, List<RingMarks.Found> all) {
    Optional<MarkLaying.Laid> best = laying.best(all, false);
    Optional<MarkLaying.Laid> mirrored = laying.best(all, true);
    int seen = best.map(MarkLaying.Laid::inliers).orElse(0);
    if (mirrored.isPresent() && mirrored.get().inliers() > seen) {
      throw new IllegalArgumentException(
          "the sheet is mirrored; turn mirroring off in the camera, or flip the picture back");
    }
    if (best.isEmpty()) {
      throw new IllegalArgumentException(
          "no sheet found: at least "
              + MarkLaying.FEWEST
              + " of its ring marks must be seen, sharp and not covered; "
              + Math.min(all.size(), MarkLaying.MOST_TRIED)
              + " things look like one. Photograph the whole sheet, nearer and sharper, or say"
              + " where its corner marks are and which layout it has"
              + photo.sizeAdvice());
    }
    FoundSheet found = found(photo, all, best.get());
    List<RingMarks.Found> others = new ArrayList<>(all);
    others.removeIf(mark -> found.seen().contains(mark.centre()));
    if (laying.best(others, false).isPresent()) {
      throw new IllegalArgumentException(
          "there are two sheets in the photo; photograph each by itself");
    }
    return found;
  }

  /** The sheet whose corner marks are near four places of the photo. */
  FoundSheet near(SheetPhoto photo, List<Spot> corners) {
    Spot[] quad = corners.toArray(Spot[]::new);
    double[] h = Homography.ofSquare(quad[0], quad[1], quad[2], quad[3]);
    if (h == null || Quadrangle.convex(quad, 1).length == 0) {
      throw new IllegalArgumentException(
          "the corners must be those of the sheet, clockwise from its left upper one");
    }
    List<RingMarks.Found> all = RingMarks.in(photo);
    MarkLaying.Laid laid = laying.laid(all, h, Quadrangle.side(quad));
    if (laid.inliers() >= MarkLaying.FEWEST) {
      return found(photo, all, laid);
    }
    return new FoundSheet(photo, List.of(0, 1, 2, 3), corners);
  }

  private FoundSheet found(SheetPhoto photo, List<RingMarks.Found> all, MarkLaying.Laid laid) {
    List<Integer> indices = new ArrayList<>();
    List<Spot> seen = new ArrayList<>();
    for (int i = 0; i < laid.which().length; i++) {
      if (laid.which()[i] >= 0) {
        indices.add(i);
        seen.add(all.get(laid.which()[i]).centre());
      }
    }
    return new FoundSheet(photo, indices, seen);
  }
}
