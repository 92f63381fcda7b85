package io.github.swatchwright.photo;

/**
 * Hands every row to two receivers, so that a file is decoded once.
 *
 * @param one the first
 * @param other the second
 */
record BothRows(PixelRows one, PixelRows other) implements PixelRows {
  @Override
  public void argb(int[] argb, int offset, int count) {
    one.argb(argb, offset, count);
    other.argb(argb, offset, count);
  }

  @Override
  public void deepArgb(long[] argb, int offset, int count) {
    one.deepArgb(argb, offset, count);
    other.deepArgb(argb, offset, count);
  }
}
