package io.github.swatchwright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Finds ring marks, a dark dot in a light hole in a dark ring, anywhere in a photo. The nesting is
 * what tells them from everything else: it survives perspective, blur, uneven light and turning.
 */
final class RingMarks {
  /** A pixel is dark below this share of the mean about it. */
  private static final double DARK = 0.78;

  /** The mean is taken over a square of this share of the longer side. */
  private static final int WINDOWS = 10;

  /** The longer side of the picture that is searched, pixels. */
  private static final int LONGEST = 1800;

  private static final int SMALLEST_RING = 7;
  private static final int MOST = 48;

  /**
   * A mark.
   *
   * @param centre in pixels of the photo
   * @param size the larger side of the ring's box, pixels of the photo
   */
  record Found(Spot centre, double size) {}

  private RingMarks() {}

  /** The marks of a photo, largest first. */
  static List<Found> in(SheetPhoto photo) {
    int step = Math.max(1, (Math.max(photo.width(), photo.height()) + LONGEST - 1) / LONGEST);
    int width = photo.width() / step;
    int height = photo.height() / step;
    int[] grey = shrunk(photo, step, width, height);
    boolean[] dark = dark(grey, width, height);
    List<Blobs.Blob> blobs = Blobs.in(dark, width, height);
    List<Blobs.Blob> rings =
        blobs.stream()
            .filter(b -> Math.min(b.width(), b.height()) >= SMALLEST_RING)
            .filter(b -> b.fill() > 0.2 && b.fill() < 0.72)
            .filter(b -> ratio(b.width(), b.height()) < 3.2)
            .toList();
    List<Found> found = new ArrayList<>();
    for (Blobs.Blob dot : blobs) {
      if (dot.fill() > 0.5 && ratio(dot.width(), dot.height()) < 3.5) {
        rings.stream()
            .filter(ring -> nested(dot, ring))
            .min(Comparator.comparingDouble(Blobs.Blob::width))
            .ifPresent(ring -> found.add(mark(dot, ring, step)));
      }
    }
    found.sort(Comparator.comparingDouble(Found::size).reversed());
    return found.subList(0, Math.min(MOST, found.size()));
  }

  private static Found mark(Blobs.Blob dot, Blobs.Blob ring, int step) {
    double x = (dot.x() + ring.x()) / 2;
    double y = (dot.y() + ring.y()) / 2;
    return new Found(
        new Spot((x + 0.5) * step, (y + 0.5) * step),
        (double) step * Math.max(ring.width(), ring.height()));
  }

  private static double ratio(double one, double other) {
    return Math.max(one, other) / Math.min(one, other);
  }

  private static boolean nested(Blobs.Blob dot, Blobs.Blob ring) {
    double size = (double) dot.width() / ring.width();
    double tall = (double) dot.height() / ring.height();
    return size > 0.2
        && size < 0.62
        && tall > 0.2
        && tall < 0.62
        && Math.abs(dot.x() - ring.x()) < 0.14 * ring.width()
        && Math.abs(dot.y() - ring.y()) < 0.14 * ring.height();
  }

  private static int[] shrunk(SheetPhoto photo, int step, int width, int height) {
    int[] grey = new int[width * height];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        int sum = 0;
        for (int dy = 0; dy < step; dy++) {
          for (int dx = 0; dx < step; dx++) {
            sum += photo.grey(x * step + dx, y * step + dy);
          }
        }
        grey[y * width + x] = sum / (step * step);
      }
    }
    return grey;
  }

  /** Dark against the mean about it, by a table of sums. */
  private static boolean[] dark(int[] grey, int width, int height) {
    long[] sums = new long[(width + 1) * (height + 1)];
    for (int y = 0; y < height; y++) {
      long row = 0;
      for (int x = 0; x < width; x++) {
        row += grey[y * width + x];
        sums[(y + 1) * (width + 1) + x + 1] = sums[y * (width + 1) + x + 1] + row;
      }
    }
    int half = Math.max(width, height) / WINDOWS / 2;
    boolean[] dark = new boolean[width * height];
    for (int y = 0; y < height; y++) {
      int top = Math.max(0, y - half);
      int bottom = Math.min(height, y + half + 1);
      for (int x = 0; x < width; x++) {
        int left = Math.max(0, x - half);
        int right = Math.min(width, x + half + 1);
        long sum =
            sums[bottom * (width + 1) + right]
                - sums[top * (width + 1) + right]
                - sums[bottom * (width + 1) + left]
                + sums[top * (width + 1) + left];
        double mean = (double) sum / ((bottom - top) * (right - left));
        dark[y * width + x] = grey[y * width + x] < DARK * mean;
      }
    }
    return dark;
  }
}
