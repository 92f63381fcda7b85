package io.github.swatchwright.photo;

/** Receives the pixels of a region row by row; a row may come in pieces. */
public interface PixelRows {

  /**
   * Takes pixels of 8 bits a channel.
   *
   * @param argb {@code 0xAARRGGBB}, alpha not multiplied in; read only, and only during the call
   * @param offset where they begin
   * @param count how many there are
   */
  void argb(int[] argb, int offset, int count);

  /**
   * Takes pixels of 16 bits a channel.
   *
   * @param argb {@code 0xAAAARRRRGGGGBBBB}, alpha not multiplied in; read only, and only during the
   *     call
   * @param offset where they begin
   * @param count how many there are
   */
  void deepArgb(long[] argb, int offset, int count);
}
