package io.github.swatchwright.sheet;

import java.util.Arrays;
import java.util.List;

/** Four marks as the corners of something flat that is seen from one side. */
final class Quadrangle {
  /** The largest ratio between the sizes of one sheet's marks, seen at 35°. */
  private static final double MOST_UNLIKE = 3.0;

  private Quadrangle() {}

  /** The four in order, clockwise or, for a mirrored sheet, the other way; empty if not convex. */
  static Spot[] of(List<RingMarks.Found> all, int[] pick, boolean mirrored) {
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
  static Spot[] convex(Spot[] spots, double least) {
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

  /** The mean length of its sides. */
  static double side(Spot[] quad) {
    double around = 0;
    for (int i = 0; i < 4; i++) {
      around += quad[i].distanceTo(quad[(i + 1) % 4]);
    }
    return around / 4;
  }
}
