package io.github.swatchwright.sheet;

import java.util.ArrayList;
import java.util.List;

/** The connected dark parts of a black-and-white picture (neighbours share a side). */
final class Blobs {
  private Blobs() {}

  /**
   * A connected part.
   *
   * @param x of its centre of gravity
   * @param y of its centre of gravity
   * @param width of its box
   * @param height of its box
   * @param pixels how many it has
   */
  record Blob(double x, double y, int width, int height, int pixels) {
    /** The share of its box that it fills. */
    double fill() {
      return (double) pixels / ((double) width * height);
    }
  }

  /** All parts of at least four pixels. */
  static List<Blob> in(boolean[] dark, int width, int height) {
    boolean[] seen = new boolean[dark.length];
    int[] stack = new int[dark.length + 1];
    List<Blob> blobs = new ArrayList<>();
    for (int start = 0; start < dark.length; start++) {
      if (dark[start] && !seen[start]) {
        Blob blob = filled(dark, seen, stack, start, width, height);
        if (blob.pixels() >= 4) {
          blobs.add(blob);
        }
      }
    }
    return blobs;
  }

  private static Blob filled(
      boolean[] dark, boolean[] seen, int[] stack, int start, int width, int height) {
    int top = 0;
    stack[top++] = start;
    seen[start] = true;
    int left = width;
    int right = 0;
    int upper = height;
    int lower = 0;
    long sumX = 0;
    long sumY = 0;
    int pixels = 0;
    while (top > 0) {
      int at = stack[--top];
      int x = at % width;
      int y = at / width;
      pixels++;
      sumX += x;
      sumY += y;
      left = Math.min(left, x);
      right = Math.max(right, x);
      upper = Math.min(upper, y);
      lower = Math.max(lower, y);
      if (x > 0 && dark[at - 1] && !seen[at - 1]) {
        seen[at - 1] = true;
        stack[top++] = at - 1;
      }
      if (x + 1 < width && dark[at + 1] && !seen[at + 1]) {
        seen[at + 1] = true;
        stack[top++] = at + 1;
      }
      if (y > 0 && dark[at - width] && !seen[at - width]) {
        seen[at - width] = true;
        stack[top++] = at - width;
      }
      if (y + 1 < height && dark[at + width] && !seen[at + width]) {
        seen[at + width] = true;
        stack[top++] = at + width;
      }
    }
    return new Blob(
        (double) sumX / pixels,
        (double) sumY / pixels,
        right - left + 1,
        lower - upper + 1,
        pixels);
  }
}
