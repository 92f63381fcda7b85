package io.github.swatchwright.photo;

import java.util.List;

/** Hands parts of a region's rows to several receivers, so that a file is decoded once. */
final class SplitRows implements PixelRows {
  private final Region whole;
  private final List<Part> parts;
  private int row;

  /**
   * A part.
   *
   * @param region a rectangle within the whole
   * @param rows what receives it
   */
  record Part(Region region, PixelRows rows) {
    private boolean holds(int y) {
      return y >= region.y() && y < region.y() + region.height();
    }
  }

  SplitRows(Region whole, List<Part> parts) {
    this.whole = whole;
    this.parts = parts;
    this.row = whole.y();
  }

  @Override
  public void argb(int[] argb, int offset, int count) {
    for (Part part : parts) {
      if (part.holds(row)) {
        int from = offset + part.region().x() - whole.x();
        part.rows().argb(argb, from, part.region().width());
      }
    }
    row++;
  }

  @Override
  public void deepArgb(long[] argb, int offset, int count) {
    for (Part part : parts) {
      if (part.holds(row)) {
        int from = offset + part.region().x() - whole.x();
        part.rows().deepArgb(argb, from, part.region().width());
      }
    }
    row++;
  }
}
