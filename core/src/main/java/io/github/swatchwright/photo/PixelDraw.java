package io.github.swatchwright.photo;

import java.util.Arrays;

/**
 * Some thousand pixels drawn evenly from any number: about every n-th, at a place in its stretch
 * that changes in a fixed pattern, so that stripes can't hide. When there is no room left, one of
 * every two is given up, by the same pattern, and n doubles.
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
      size = ROOM / 2;
      stretch *= 2;
      for (int i = 0; i < size; i++) {
        kept[i] = kept[2 * i + (jitter(i) < stretch / 2 ? 0 : 1)];
      }
      number = next / stretch;
    }
    kept[size++] = argb;
    number++;
    next = Math.max(next + 1, number * stretch + jitter(number));
  }

  /** A place in the n-th stretch. */
  private long jitter(long n) {
    return (Integer.toUnsignedLong((int) n * PATTERN) * stretch) >>> 32;
  }

  /** Counts pixels that have gone by. */
  void passed(int count) {
    seen += count;
  }

  long[] pixels() {
    return Arrays.copyOf(kept, size);
  }
}
