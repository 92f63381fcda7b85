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
    Filling filling = new Filling(dark, width, height);
    List<Blob> blobs = new ArrayList<>();
    for (int start = 0; start < dark.length; start++) {
      if (filling.isNew(start)) {
        Blob blob = filling.from(start);
        if (blob.pixels() >= 4) {
          blobs.add(blob);
        }
      }
    }
    return blobs;
  }

  /** Fills connected parts, each pixel once, and sums up what belongs to the one at hand. */
  private static final class Filling {
    private final boolean[] dark;
    private final boolean[] seen;
    private final int[] stack;
    private final int width;
    private final int height;
    private int top;
    private int left;
    private int right;
    private int upper;
    private int lower;
    private long sumX;
    private long sumY;
    private int pixels;

    Filling(boolean[] dark, int width, int height) {
      this.dark = dark;
      this.width = width;
      this.height = height;
      seen = new boolean[dark.length];
      stack = new int[dark.length + 1];
    }

    /** Whether a pixel is dark and belongs to no part yet. */
    boolean isNew(int at) {
      return dark[at] && !seen[at];
    }

    /** The part that a new pixel belongs to. */
    Blob from(int start) {
      left = width;
      right = 0;
      upper = height;
      lower = 0;
      sumX = 0;
      sumY = 0;
      pixels = 0;
      push(start);
      while (top > 0) {
        int at = stack[--top];
        int x = at % width;
        int y = at / width;
        count(x, y);
        if (x > 0) {
          push(at - 1);
        }
        if (x + 1 < width) {
          push(at + 1);
        }
        if (y > 0) {
          push(at - width);
        }
        if (y + 1 < height) {
          push(at + width);
        }
      }
      return new Blob(
          (double) sumX / pixels,
          (double) sumY / pixels,
          right - left + 1,
          lower - upper + 1,
          pixels);
    }

    private void push(int at) {
      if (isNew(at)) {
        seen[at] = true;
        stack[top++] = at;
      }
    }

    private void count(int x, int y) {
      pixels++;
      sumX += x;
      sumY += y;
      left = Math.min(left, x);
      right = Math.max(right, x);
      upper = Math.min(upper, y);
      lower = Math.max(lower, y);
    }
  }
}
