package io.github.swatchwright.cli.photo;

import java.awt.image.Raster;

/**
 * Rows of samples of a stored picture as they stand upright. Where rows are stored as columns,
 * several are taken out at once, because memory is read in lines.
 */
final class UprightRows {
  private static final int AT_ONCE = 16;

  private final Raster raster;
  private final Turn turn;
  private final int[] several;
  private int firstTaken = -1;

  /**
   * Rows of a part of a picture.
   *
   * @param raster the stored part
   * @param turn how it stands
   */
  UprightRows(Raster raster, Turn turn) {
    this.raster = raster;
    this.turn = turn;
    several = new int[turn.exchanges() ? AT_ONCE * raster.getHeight() * raster.getNumBands() : 0];
  }

  int width() {
    return turn.exchanges() ? raster.getHeight() : raster.getWidth();
  }

  int height() {
    return turn.exchanges() ? raster.getWidth() : raster.getHeight();
  }

  /** Puts the samples of a row, pixel by pixel, into {@code samples}. */
  void row(int y, int[] samples) {
    int stored = turn.fromEnd(!turn.exchanges()) ? height() - 1 - y : y;
    if (turn.exchanges()) {
      column(stored, samples);
    } else {
      raster.getPixels(raster.getMinX(), raster.getMinY() + stored, raster.getWidth(), 1, samples);
    }
    if (turn.fromEnd(turn.exchanges())) {
      mirror(samples);
    }
  }

  private void column(int x, int[] samples) {
    int first = x - x % AT_ONCE;
    int wide = Math.min(AT_ONCE, raster.getWidth() - first);
    if (first != firstTaken) {
      raster.getPixels(
          raster.getMinX() + first, raster.getMinY(), wide, raster.getHeight(), several);
      firstTaken = first;
    }
    int bands = raster.getNumBands();
    int at = (x - first) * bands;
    for (int pixel = 0; pixel < raster.getHeight(); pixel++) {
      System.arraycopy(several, at, samples, pixel * bands, bands);
      at += wide * bands;
    }
  }

  private void mirror(int[] samples) {
    int bands = raster.getNumBands();
    int left = 0;
    int right = (width() - 1) * bands;
    while (left < right) {
      for (int band = 0; band < bands; band++) {
        int sample = samples[left + band];
        samples[left + band] = samples[right + band];
        samples[right + band] = sample;
      }
      left += bands;
      right -= bands;
    }
  }
}
