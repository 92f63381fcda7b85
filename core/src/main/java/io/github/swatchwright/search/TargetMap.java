package io.github.swatchwright.search;

import io.github.swatchwright.ciede2000.Ciede2000Bound;
import io.github.swatchwright.colour.Lab;
import java.util.Arrays;

/**
 * The chromatic bounds of {@link Ciede2000Bound} about one target, remembered: for squares of the
 * plane of a* and b* with sides of 1, 2, 4 … 64, each worked out when it is first asked for. The
 * least of the squares that a box touches bounds the box.
 *
 * <p>Threads may share it: a square that two of them work out at once comes to the same.
 */
final class TargetMap {
  /** Where its squares begin and end, in a* and in b*. */
  private static final double EDGE = 128;

  private static final int LEVELS = 7;

  /** A box is looked up among squares with a side of more than this share of its own longer one. */
  private static final double SHARE = 0.5;

  /** A float may be above the double that it stands for by so much. */
  private static final float ROUND_DOWN = 1 - 0x1p-23f;

  private Lab target;
  private Ciede2000Bound bound;
  private final float[][] squares = new float[LEVELS][];

  TargetMap(Lab target) {
    for (int level = 0; level < LEVELS; level++) {
      int side = (int) (2 * EDGE) >> level;
      squares[level] = new float[side * side];
    }
    turnTo(target);
  }

  /** Forgets all for another target. */
  void turnTo(Lab other) {
    target = other;
    bound = Ciede2000Bound.of(other);
    for (float[] ofLevel : squares) {
      Arrays.fill(ofLevel, Float.NaN);
    }
  }

  Lab target() {
    return target;
  }

  /** No more than ΔE00² of the target from any colour in a box. */
  double ofBox(double lowL, double highL, double lowA, double highA, double lowB, double highB) {
    return bound.lightness(lowL, highL) + chromatic(lowA, highA, lowB, highB);
  }

  private double chromatic(double lowA, double highA, double lowB, double highB) {
    if (lowA < -EDGE || lowB < -EDGE || highA >= EDGE || highB >= EDGE) {
      return bound.chromatic(lowA, highA, lowB, highB);
    }
    double longer = Math.max(highA - lowA, highB - lowB);
    int level = 0;
    while (level < LEVELS - 1 && longer * SHARE > 1 << level) {
      level++;
    }
    int shift = level;
    int firstA = (int) (lowA + EDGE) >> shift;
    int lastA = (int) (highA + EDGE) >> shift;
    int firstB = (int) (lowB + EDGE) >> shift;
    int lastB = (int) (highB + EDGE) >> shift;
    float least = Float.MAX_VALUE;
    for (int row = firstB; row <= lastB; row++) {
      for (int column = firstA; column <= lastA; column++) {
        least = Math.min(least, square(level, column, row));
      }
    }
    return least;
  }

  private float square(int level, int column, int row) {
    float[] ofLevel = squares[level];
    int index = row * ((int) (2 * EDGE) >> level) + column;
    float known = ofLevel[index];
    if (Float.isNaN(known)) {
      double side = 1 << level;
      double left = column * side - EDGE;
      double low = row * side - EDGE;
      known = (float) bound.chromatic(left, left + side, low, low + side) * ROUND_DOWN;
      ofLevel[index] = known;
    }
    return known;
  }
}
