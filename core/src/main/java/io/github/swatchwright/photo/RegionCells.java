package io.github.swatchwright.photo;

import io.github.swatchwright.colour.LinearRgb;
import io.github.swatchwright.colour.RgbSpace;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A region cut into small square cells, each averaged in linear light: what is left of a photo's
 * colours when its noise is smoothed, for searching shades and uneven light. Cells are a 64th of
 * the region's shorter side wide, at most {@value #LARGEST_SIDE} pixels; of many, some thousand are
 * kept, in a fixed pattern that stripes can't hide in. Pixels that tell no colour are left out as
 * in {@link RegionSampler}, and cells that are mostly such.
 *
 * <p>Mutable, for one region and one thread.
 */
final class RegionCells implements PixelRows {
  private static final int LARGEST_SIDE = 4;
  private static final int SIDES_ACROSS = 64;
  private static final int MOST_CELLS = 4096;
  private static final int DEEP = 257;

  /**
   * One cell.
   *
   * @param x its middle in the picture, pixels
   * @param y its middle, pixels
   * @param light its mean, linear
   * @param crushed whether most of its pixels are stronger than the file can hold
   */
  record Cell(double x, double y, LinearRgb light, boolean crushed) {}

  private final Region region;
  private final RgbSpace space;
  private final int side;
  private final long keptOf32Bits;
  private final List<Cell> cells = new ArrayList<>();
  private final int[] columns;
  private final double[] sums;
  private final int[] used;
  private final int[] crushed;
  private double[] light = new double[0];
  private int kept;
  private int row;

  /**
   * Cells that have seen nothing yet.
   *
   * @param region the region
   * @param space the colour space of the pixels to come
   */
  RegionCells(Region region, RgbSpace space) {
    this.region = region;
    this.space = space;
    int shorter = Math.min(region.width(), region.height());
    side = Math.max(1, Math.min(LARGEST_SIDE, shorter / SIDES_ACROSS));
    int across = region.width() / side;
    long all = (long) across * (region.height() / side);
    keptOf32Bits = Math.min(1L << 32, (long) Math.ceil((double) MOST_CELLS / all * (1L << 32)));
    columns = new int[across];
    sums = new double[3 * across];
    used = new int[across];
    crushed = new int[across];
  }

  /**
   * The cells of a region of a picture.
   *
   * @throws IllegalArgumentException when too few of its pixels tell a colour
   */
  static List<Cell> of(Photo photo, Region region) {
    RegionCells cells = new RegionCells(region, photo.space());
    photo.read(region, cells);
    return cells.result();
  }

  /**
   * The cells of the rows seen.
   *
   * @throws IllegalArgumentException when too few of the pixels tell a colour
   */
  List<Cell> result() {
    if (cells.size() < RegionSample.FEWEST_PIXELS) {
      throw new IllegalArgumentException(
          "the region " + region.toText() + " tells no colour: too few of its pixels are usable");
    }
    return List.copyOf(cells);
  }

  @Override
  public void argb(int[] argb, int offset, int count) {
    begin(255);
    for (int i = 0; i < kept; i++) {
      int from = offset + columns[i] * side;
      for (int at = from; at < from + side; at++) {
        int p = argb[at];
        add(i, p >>> 24 == 0xFF, p >> 16 & 0xFF, p >> 8 & 0xFF, p & 0xFF, 1);
      }
    }
    end();
  }

  @Override
  public void deepArgb(long[] argb, int offset, int count) {
    begin(65_535);
    for (int i = 0; i < kept; i++) {
      int from = offset + columns[i] * side;
      for (int at = from; at < from + side; at++) {
        long p = argb[at];
        int r = (int) (p >> 32) & 0xFFFF;
        int g = (int) (p >> 16) & 0xFFFF;
        int b = (int) p & 0xFFFF;
        add(i, p >>> 48 == 0xFFFF, r, g, b, DEEP);
      }
    }
    end();
  }

  private void add(int cell, boolean opaque, int r, int g, int b, int scale) {
    int highest = Math.max(r, Math.max(g, b));
    if (opaque
        && highest < RegionSampler.CLIPPED * scale
        && highest >= RegionSampler.NEAR_BLACK * scale) {
      sums[3 * cell] += light[r];
      sums[3 * cell + 1] += light[g];
      sums[3 * cell + 2] += light[b];
      used[cell]++;
      crushed[cell] += Math.min(r, Math.min(g, b)) <= RegionSampler.CRUSHED * scale ? 1 : 0;
    }
  }

  /** At the first row of a row of cells, chooses those to keep. */
  private void begin(int highest) {
    if (light.length == 0) {
      light = new double[highest + 1];
      for (int level = 0; level <= highest; level++) {
        light[level] = space.decode((double) level / highest);
      }
    }
    if (row % side == 0) {
      kept = 0;
      boolean whole = row + side <= region.height();
      for (int column = 0; whole && column < region.width() / side; column++) {
        if (scattered(row / side, column) < keptOf32Bits) {
          columns[kept++] = column;
        }
      }
      Arrays.fill(sums, 0);
      Arrays.fill(used, 0);
      Arrays.fill(crushed, 0);
    }
  }

  /** 32 bits that look drawn by lot (Steele, Lea and Flood 2014, the finaliser of SplitMix64). */
  private static long scattered(int row, int column) {
    long z = ((long) row << 32 | column) * 0x9E3779B97F4A7C15L;
    z = (z ^ z >>> 30) * 0xBF58476D1CE4E5B9L;
    z = (z ^ z >>> 27) * 0x94D049BB133111EBL;
    return (z ^ z >>> 31) >>> 32;
  }

  private void end() {
    row++;
    if (row % side != 0) {
      return;
    }
    for (int i = 0; i < kept; i++) {
      if (2 * used[i] >= side * side) {
        double n = used[i];
        LinearRgb mean =
            space.toLinearSrgb(sums[3 * i] / n, sums[3 * i + 1] / n, sums[3 * i + 2] / n);
        double x = region.x() + (columns[i] + 0.5) * side;
        double y = region.y() + row - 0.5 * side;
        cells.add(new Cell(x, y, mean, 2 * crushed[i] > used[i]));
      }
    }
  }
}
