package io.github.swatchwright.sheet;

import io.github.swatchwright.argument.Require;

/**
 * A rectangle on the paper, in millimetres from its left upper corner.
 *
 * @param left its left edge, 0 to 1000
 * @param top its top edge, 0 to 1000
 * @param width its width, above 0 to 1000
 * @param height its height, above 0 to 1000
 */
public record Area(double left, double top, double width, double height) {
  private static final double LARGEST = 1000;

  /** Refuses a rectangle without area, and one that no paper holds. */
  public Area {
    Require.within("left", left, 0, LARGEST);
    Require.within("top", top, 0, LARGEST);
    Require.positive("width", Require.within("width", width, 0, LARGEST));
    Require.positive("height", Require.within("height", height, 0, LARGEST));
  }

  /** Its right edge. */
  public double right() {
    return left + width;
  }

  /** Its lower edge. */
  public double bottom() {
    return top + height;
  }

  /** This area with a margin taken off each side. */
  Area inset(double horizontal, double vertical) {
    return new Area(
        left + horizontal, top + vertical, width - 2 * horizontal, height - 2 * vertical);
  }

  boolean contains(Area other) {
    return other.left >= left
        && other.top >= top
        && other.right() <= right() + 1e-6
        && other.bottom() <= bottom() + 1e-6;
  }
}
