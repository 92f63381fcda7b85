package io.github.swatchwright.photo;

/**
 * Receives the pixels of a region: one call a row, from the top row to the bottom one, each of the
 * region's whole width.
 */
public interface PixelRows {

  /**
   * Takes a row of 8 bits a channel.
   *
   * @param argb {@code 0xAARRGGBB}, alpha not multiplied in; read only, and only during the call
   * @param offset where the row begins
   * @param count how many pixels it has
   */
  void argb(int[] argb, int offset, int count);

  /**
   * Takes a row of 16 bits a channel.
   *
   * @param argb {@code 0xAAAARRRRGGGGBBBB}, alpha not multiplied in; read only, and only during the
   *     call
   * @param offset where the row begins
   * @param count how many pixels it has
   */
  void deepArgb(long[] argb, int offset, int count);
}
