package io.github.swatchwright.cli.photo;

import java.awt.image.ComponentSampleModel;
import java.awt.image.DataBufferByte;
import java.awt.image.Raster;
import org.jspecify.annotations.Nullable;

/** Rows of samples of a stored picture as they stand upright. */
final class UprightRows {
  private final Raster raster;
  private final Turn turn;
  private final int[] offsets;
  private final byte @Nullable [] bytes;
  private final int origin;
  private final int acrossStep;
  private final int downStep;

  /**
   * Rows of a part of a picture.
   *
   * @param raster the stored part
   * @param turn how it stands
   */
  UprightRows(Raster raster, Turn turn) {
    this.raster = raster;
    this.turn = turn;
    if (raster.getDataBuffer() instanceof DataBufferByte buffer
        && buffer.getNumBanks() == 1
        && raster.getSampleModel() instanceof ComponentSampleModel model) {
      bytes = buffer.getData();
      offsets = model.getBandOffsets();
      int right = model.getPixelStride();
      int down = model.getScanlineStride();
      int first =
          buffer.getOffset()
              + (raster.getMinX() - raster.getSampleModelTranslateX()) * right
              + (raster.getMinY() - raster.getSampleModelTranslateY()) * down;
      if (turn.fromEnd(false)) {
        first += (raster.getWidth() - 1) * right;
        right = -right;
      }
      if (turn.fromEnd(true)) {
        first += (raster.getHeight() - 1) * down;
        down = -down;
      }
      origin = first;
      acrossStep = turn.exchanges() ? down : right;
      downStep = turn.exchanges() ? right : down;
    } else {
      bytes = null;
      offsets = new int[0];
      origin = 0;
      acrossStep = 0;
      downStep = 0;
    }
  }

  int width() {
    return turn.exchanges() ? raster.getHeight() : raster.getWidth();
  }

  int height() {
    return turn.exchanges() ? raster.getWidth() : raster.getHeight();
  }

  /** Puts the samples of a row, pixel by pixel, into {@code samples}. */
  void row(int y, int[] samples) {
    byte[] stored = bytes;
    if (stored == null) {
      anyRow(y, samples);
      return;
    }
    int bands = offsets.length;
    int width = width();
    for (int band = 0; band < bands; band++) {
      int at = origin + y * downStep + offsets[band];
      for (int x = 0, to = band; x < width; x++, to += bands) {
        samples[to] = stored[at] & 0xFF;
        at += acrossStep;
      }
    }
  }

  private void anyRow(int y, int[] samples) {
    int stored = turn.fromEnd(!turn.exchanges()) ? height() - 1 - y : y;
    if (turn.exchanges()) {
      raster.getPixels(raster.getMinX() + stored, raster.getMinY(), 1, raster.getHeight(), samples);
    } else {
      raster.getPixels(raster.getMinX(), raster.getMinY() + stored, raster.getWidth(), 1, samples);
    }
    if (turn.fromEnd(turn.exchanges())) {
      mirror(samples);
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
