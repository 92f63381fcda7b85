package io.github.swatchwright.photo;

import java.util.Arrays;

/**
 * Some thousand pixels drawn evenly from any number: about every n-th, at a place in its stretch
 * that changes in a fixed pattern, so that stripes can't hide. When there is no room left, every
 * second is given up and n doubles.
 */
final class PixelDraw {
  private static final int ROOM = 1 << 13;
  private static final int PATTERN = 0x9E3779B1;

  private final long[] kept = new long[ROOM];
  private int size;
  private long seen;
  private long next;
  private long stretch = 1;
  private long number;

  /** The index within the coming {@code count} pixels of the one to keep, or −1 for none. */
  int wanted(int count) {
    return next < seen + count ? (int) (next - seen) : -1;
  }

  /** Keeps the pixel that was wanted: {@code 0xAAAARRRRGGGGBBBB}. */
  void keep(long argb) {
    if (size == ROOM) {
      for (int i = 0; i < ROOM / 2; i++) {
        kept[i] = kept[2 * i];
      }
      size = ROOM / 2;
      stretch *= 2;
      number = next / stretch;
    }
    kept[size++] = argb;
    number++;
    next = Math.max(next + 1, number * stretch + jitter());
  }

  private long jitter() {
    return (Integer.toUnsignedLong((int) number * PATTERN) * stretch) >>> 32;
  }

  /** Counts pixels that have gone by. */
  void passed(int count) {
    seen += count;
  }

  long[] pixels() {
    return Arrays.copyOf(kept, size);
  }
}
