package io.github.swatchwright.sheet;

import io.github.swatchwright.argument.Require;

/**
 * A point: on paper in millimetres, in a photo in pixels; from the left upper corner.
 *
 * @param x to the right
 * @param y downwards
 */
public record Spot(double x, double y) {
  private static final double FARTHEST = 1e6;

  /** Refuses what isn't a number. */
  public Spot {
    Require.within("x", x, -FARTHEST, FARTHEST);
    Require.within("y", y, -FARTHEST, FARTHEST);
  }

  double distanceTo(Spot other) {
    return Math.hypot(x - other.x, y - other.y);
  }
}
