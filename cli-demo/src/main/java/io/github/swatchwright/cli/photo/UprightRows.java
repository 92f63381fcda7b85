package io.github.swatchwright.cli.photo;

import java.awt.image.ComponentSampleModel;
import java.awt.image.DataBufferByte;
import java.awt.image.Raster;
import org.jspecify.annotations.Nullable;

/**
 * Rows of samples of a stored picture as they stand upright. Where rows are stored as columns,
 * several are taken out at once, because memory is read in lines.
 */
final class UprightRows {
  private static final int AT_ONCE = 32;

  private final Raster raster;
  private final Turn turn;
  private final int[] offsets;
  private final byte @Nullable [] bytes;
  private final int origin;
  private final int acrossStep;
  private final int downStep;
  private final int[] several;
  private int firstTaken = Integer.MIN_VALUE;

  /**
   * Rows of a part of a picture.
   *
   * @param raster the stored part
   * @param turn how it stands
   */
  UprightRows(Raster raster, Turn turn) {
    this.raster = raster;
    this.turn = turn;
    int rows = turn.exchanges() ? AT_ONCE : 0;
    several = new int[rows * raster.getHeight() * raster.getNumBands()];
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
    if (turn.exchanges()) {
      int first = y - y % AT_ONCE;
      if (first != firstTaken) {
        takeOut(first, stored);
      }
      System.arraycopy(several, (y - first) * samples.length, samples, 0, samples.length);
    } else {
      int bands = offsets.length;
      for (int band = 0; band < bands; band++) {
        int at = origin + y * downStep + offsets[band];
        for (int to = band; to < samples.length; to += bands) {
          samples[to] = stored[at] & 0xFF;
          at += acrossStep;
        }
      }
    }
  }

  /** Stored rows are read one after another, and their samples dealt out to the upright rows. */
  private void takeOut(int first, byte[] stored) {
    int bands = offsets.length;
    int width = width();
    int count = Math.min(AT_ONCE, height() - first);
    for (int x = 0; x < width; x++) {
      for (int band = 0; band < bands; band++) {
        int at = origin + x * acrossStep + first * downStep + offsets[band];
        int to = x * bands + band;
        for (int row = 0; row < count; row++) {
          several[to] = stored[at] & 0xFF;
          to += width * bands;
          at += downStep;
        }
      }
    }
    firstTaken = first;
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
