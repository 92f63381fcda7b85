package io.github.swatchwright.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Finds a sheet in a photo by its ring marks: of all ways to lay four of the marks found onto four
 * of the layout's, the one that brings most of the others onto theirs. Marks may be hidden, also
 * one at a corner, as long as {@value #FEWEST} are seen.
 */
final class SheetFinder {
  /** Fewer marks on their places could be chance. */
  static final int FEWEST = 7;

  /** More marks than these aren't tried as corners; larger ones go first. */
  private static final int MOST_TRIED = 20;

  /** How far a mark may be off, as a share of the sheet's side: lenses bend, paper curls. */
  private static final double REACH = 0.028;

  /** Marks of one sheet aren't more unlike in size, seen at 35°. */
  private static final double MOST_UNLIKE = 3.0;

  /** The places of the marks, in a frame whose corners are the corner marks. */
  private final List<Spot> framed;

  private SheetFinder(List<Spot> marks) {
    Homography frame = frameOf(marks);
    framed = marks.stream().map(mark -> frame.at(mark.x(), mark.y())).toList();
  }

  /** A way to lay the marks found onto the layout's. */
  private static final class Laid {
    private final int inliers;
    private final double off;
    private final int[] which;

    Laid(int inliers, double off, int[] which) {
      this.inliers = inliers;
      this.off = off;
      this.which = which;
    }

    int inliers() {
      return inliers;
    }

    int[] which() {
      return which;
    }

    boolean betterThan(@Nullable Laid other) {
      return other == null
          || inliers > other.inliers
          || (inliers == other.inliers && off < other.off);
    }
  }

  /**
   * A finder for layouts with these marks.
   *
   * @param marks in millimetres, the corners first
   */
  static SheetFinder of(List<Spot> marks) {
    return new SheetFinder(marks);
  }

  private static Homography frameOf(List<Spot> marks) {
    return Homography.between(
        marks.subList(0, 4),
        List.of(new Spot(0, 0), new Spot(1, 0), new Spot(1, 1), new Spot(0, 1)));
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
    Optional<Laid> best = best(all, false);
    if (best.isEmpty()) {
      if (best(all, true).isPresent()) {
        throw new IllegalArgumentException(
            "the sheet is mirrored; turn mirroring off in the camera, or flip the picture back");
      }
      throw new IllegalArgumentException(
          "no sheet found: at least "
              + FEWEST
              + " of its ring marks must be seen, sharp and not covered; "
              + Math.min(all.size(), MOST_TRIED)
              + " things look like one. Photograph the whole sheet, nearer and sharper, or give its"
              + " corner marks with --corners and its layout with --layout");
    }
    FoundSheet found = found(photo, all, best.get());
    List<RingMarks.Found> others = new ArrayList<>(all);
    others.removeIf(mark -> found.seen().contains(mark.centre()));
    if (best(others, false).isPresent()) {
      throw new IllegalArgumentException(
          "there are two sheets in the photo; photograph each by itself");
    }
    return found;
  }

  /** The sheet whose corner marks are near four places of the photo. */
  FoundSheet near(SheetPhoto photo, List<Spot> corners) {
    double[] h =
        Homography.ofSquare(corners.get(0), corners.get(1), corners.get(2), corners.get(3));
    if (h == null || convex(corners.toArray(Spot[]::new), 1).length == 0) {
      throw new IllegalArgumentException(
          "the corners must be those of the sheet, clockwise from its left upper one");
    }
    List<RingMarks.Found> all = RingMarks.in(photo);
    Laid laid = laid(all, h, side(corners.toArray(Spot[]::new)));
    if (laid.inliers() >= FEWEST) {
      return found(photo, all, laid);
    }
    return new FoundSheet(photo, List.of(0, 1, 2, 3), corners);
  }

  private FoundSheet found(SheetPhoto photo, List<RingMarks.Found> all, Laid laid) {
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

  private Optional<Laid> best(List<RingMarks.Found> all, boolean mirrored) {
    int n = Math.min(MOST_TRIED, all.size());
    if (n < FEWEST) {
      return Optional.empty();
    }
    Laid best = null;
    Spot[][] quads = corners();
    int[] pick = new int[4];
    for (pick[0] = 0; pick[0] < n; pick[0]++) {
      for (pick[1] = pick[0] + 1; pick[1] < n; pick[1]++) {
        for (pick[2] = pick[1] + 1; pick[2] < n; pick[2]++) {
          for (pick[3] = pick[2] + 1; pick[3] < n; pick[3]++) {
            Spot[] turning = convex(all, pick, mirrored);
            if (turning.length == 4) {
              best = tried(all, turning, quads, best);
            }
          }
        }
      }
    }
    return Optional.ofNullable(best).filter(laid -> laid.inliers() >= FEWEST);
  }

  /** The four corners; and with each corner replaced by the mark next to it on its side edge. */
  private Spot[][] corners() {
    Spot[][] quads = new Spot[5][];
    for (int hidden = -1; hidden < 4; hidden++) {
      Spot[] quad = framed.subList(0, 4).toArray(Spot[]::new);
      if (hidden >= 0) {
        Spot corner = quad[hidden];
        quad[hidden] =
            framed.subList(4, framed.size()).stream()
                .filter(mark -> Math.abs(mark.x() - corner.x()) < 0.1)
                .min((p, q) -> Double.compare(p.distanceTo(corner), q.distanceTo(corner)))
                .orElse(corner);
      }
      quads[hidden + 1] = quad;
    }
    return quads;
  }

  private @Nullable Laid tried(
      List<RingMarks.Found> all, Spot[] turning, Spot[][] quads, @Nullable Laid best) {
    Laid better = best;
    for (Spot[] quad : quads) {
      double[] square = Homography.ofSquare(quad[0], quad[1], quad[2], quad[3]);
      for (int turn = 0; turn < 4 && square != null; turn++) {
        double[] picture =
            Homography.ofSquare(
                turning[turn],
                turning[(turn + 1) % 4],
                turning[(turn + 2) % 4],
                turning[(turn + 3) % 4]);
        if (picture != null) {
          Laid laid = laid(all, product(picture, inverse(square)), side(turning));
          better = laid.betterThan(better) ? laid : better;
        }
      }
    }
    return better;
  }

  private static double side(Spot[] quad) {
    double around = 0;
    for (int i = 0; i < 4; i++) {
      around += quad[i].distanceTo(quad[(i + 1) % 4]);
    }
    return around / 4;
  }

  private Laid laid(List<RingMarks.Found> all, double[] h, double side) {
    int[] which = new int[framed.size()];
    int inliers = 0;
    double off = 0;
    double reach = REACH * side;
    for (int i = 0; i < which.length; i++) {
      Spot mark = framed.get(i);
      double w = h[6] * mark.x() + h[7] * mark.y() + 1;
      which[i] = -1;
      if (w > 0.1) {
        double x = (h[0] * mark.x() + h[1] * mark.y() + h[2]) / w;
        double y = (h[3] * mark.x() + h[4] * mark.y() + h[5]) / w;
        double nearest = reach;
        for (int k = 0; k < all.size(); k++) {
          Spot centre = all.get(k).centre();
          double distance = Math.hypot(centre.x() - x, centre.y() - y);
          if (distance < nearest) {
            nearest = distance;
            which[i] = k;
          }
        }
        inliers += which[i] >= 0 ? 1 : 0;
        off += nearest;
      }
    }
    return new Laid(inliers, off, which);
  }

  /** The four in order, clockwise or, for a mirrored sheet, the other way; empty if not convex. */
  private static Spot[] convex(List<RingMarks.Found> all, int[] pick, boolean mirrored) {
    double small = Double.POSITIVE_INFINITY;
    double large = 0;
    double x = 0;
    double y = 0;
    Spot[] spots = new Spot[4];
    for (int i = 0; i < 4; i++) {
      RingMarks.Found found = all.get(pick[i]);
      small = Math.min(small, found.size());
      large = Math.max(large, found.size());
      spots[i] = found.centre();
      x += spots[i].x() / 4;
      y += spots[i].y() / 4;
    }
    if (large > MOST_UNLIKE * small) {
      return new Spot[0];
    }
    double middleX = x;
    double middleY = y;
    Arrays.sort(
        spots,
        (p, q) ->
            Double.compare(
                Math.atan2(p.y() - middleY, p.x() - middleX),
                Math.atan2(q.y() - middleY, q.x() - middleX)));
    Spot[] turning = convex(spots, large * large);
    return mirrored && turning.length == 4
        ? new Spot[] {spots[3], spots[2], spots[1], spots[0]}
        : turning;
  }

  /** The same, when they turn clockwise and span a parallelogram of at least this area. */
  private static Spot[] convex(Spot[] spots, double least) {
    for (int i = 0; i < 4; i++) {
      Spot a = spots[i];
      Spot b = spots[(i + 1) % 4];
      Spot c = spots[(i + 2) % 4];
      double cross = (b.x() - a.x()) * (c.y() - b.y()) - (b.y() - a.y()) * (c.x() - b.x());
      if (cross < least) {
        return new Spot[0];
      }
    }
    return spots;
  }

  private static double[] inverse(double[] m) {
    double[] inverse = {
      m[4] - m[5] * m[7],
      m[2] * m[7] - m[1],
      m[1] * m[5] - m[2] * m[4],
      m[5] * m[6] - m[3],
      m[0] - m[2] * m[6],
      m[2] * m[3] - m[0] * m[5],
      m[3] * m[7] - m[4] * m[6],
      m[1] * m[6] - m[0] * m[7],
      m[0] * m[4] - m[1] * m[3]
    };
    return scaled(inverse);
  }

  private static double[] scaled(double[] nine) {
    double[] eight = new double[8];
    for (int i = 0; i < 8; i++) {
      eight[i] = nine[i] / nine[8];
    }
    return eight;
  }

  private static double[] product(double[] a, double[] b) {
    double[] nine = new double[9];
    for (int row = 0; row < 3; row++) {
      for (int column = 0; column < 3; column++) {
        for (int k = 0; k < 3; k++) {
          nine[3 * row + column] += entry(a, row, k) * entry(b, k, column);
        }
      }
    }
    return scaled(nine);
  }

  private static double entry(double[] eight, int row, int column) {
    int at = 3 * row + column;
    return at == 8 ? 1 : eight[at];
  }
}
