package io.github.swatchwright.sheet;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Lays marks that were found in a photo onto those of a layout: of all ways to lay four onto four,
 * the one that brings most of the others onto theirs.
 */
final class MarkLaying {
  /** Fewer marks on their places could be chance. */
  static final int FEWEST = 7;

  /** More marks than these aren't tried as corners; larger ones go first. */
  static final int MOST_TRIED = 20;

  /** How far a mark may be off, as a share of the sheet's side: lenses bend, paper curls. */
  private static final double REACH = 0.028;

  /** The places of the marks, in a frame whose corners are the corner marks. */
  private final List<Spot> framed;

  private MarkLaying(List<Spot> framed) {
    this.framed = framed;
  }

  /** A way to lay the marks found onto the layout's. */
  static final class Laid {
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
   * For layouts with these marks.
   *
   * @param marks in millimetres, the corners first
   */
  static MarkLaying of(List<Spot> marks) {
    Homography frame = frameOf(marks);
    return new MarkLaying(marks.stream().map(mark -> frame.at(mark.x(), mark.y())).toList());
  }

  private static Homography frameOf(List<Spot> marks) {
    return Homography.between(
        marks.subList(0, 4),
        List.of(new Spot(0, 0), new Spot(1, 0), new Spot(1, 1), new Spot(0, 1)));
  }

  /** The best way with enough marks on their places; of a mirrored sheet if asked for. */
  Optional<Laid> best(List<RingMarks.Found> all, boolean mirrored) {
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
            Spot[] turning = Quadrangle.of(all, pick, mirrored);
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
          Laid laid =
              laid(
                  all,
                  Homography.product(picture, Homography.inverse(square)),
                  Quadrangle.side(turning));
          better = laid.betterThan(better) ? laid : better;
        }
      }
    }
    return better;
  }

  /** The marks that lie where the layout has them when the frame is seen through a homography. */
  Laid laid(List<RingMarks.Found> all, double[] h, double side) {
    double reach = REACH * side;
    int[] which = new int[framed.size()];
    double[] distances = new double[which.length];
    for (int i = 0; i < which.length; i++) {
      Spot mark = framed.get(i);
      double w = h[6] * mark.x() + h[7] * mark.y() + 1;
      which[i] = -1;
      distances[i] = reach;
      if (w > 0.1) {
        double x = (h[0] * mark.x() + h[1] * mark.y() + h[2]) / w;
        double y = (h[3] * mark.x() + h[4] * mark.y() + h[5]) / w;
        for (int k = 0; k < all.size(); k++) {
          Spot centre = all.get(k).centre();
          double distance = Math.hypot(centre.x() - x, centre.y() - y);
          if (distance < distances[i]) {
            distances[i] = distance;
            which[i] = k;
          }
        }
      }
    }
    return countedOnce(which, distances, reach);
  }

  /** One thing in the photo is one mark, the nearest: a crushed frame has many on one place. */
  private static Laid countedOnce(int[] which, double[] distances, double reach) {
    int inliers = 0;
    double off = 0;
    for (int i = 0; i < which.length; i++) {
      for (int j = 0; j < which.length && which[i] >= 0; j++) {
        boolean isNearer = distances[j] < distances[i] || (distances[j] == distances[i] && j < i);
        if (which[j] == which[i] && isNearer) {
          which[i] = -1;
          distances[i] = reach;
        }
      }
      inliers += which[i] >= 0 ? 1 : 0;
      off += distances[i];
    }
    return new Laid(inliers, off, which);
  }
}
