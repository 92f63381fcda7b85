package io.github.swatchwright.card;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * Passes of marks on a grid: what lies on top in each cell, and what each pass painted.
 *
 * <p>The problem: marks that land at random cover a share that is random too, but a picture of 30 %
 * should show 30 %. A pass covers those cells of a colour below that lie deepest within its marks,
 * as many as its share asks for. So each mark grows or shrinks a little, and every share is met to
 * half a cell, in each of the colours that showed before: those are Demichel's products (1924).
 */
final class SpeckleRaster {
  private final SpeckleGrid grid;
  private final byte[] top;
  private final List<BitSet> painted = new ArrayList<>();

  private SpeckleRaster(SpeckleGrid grid) {
    this.grid = grid;
    this.top = new byte[grid.count()];
  }

  /** The passes in their order, each with its marks and the share that it covers. */
  static SpeckleRaster of(SpeckleGrid grid, List<List<Blot>> marks, double[] coverages) {
    SpeckleRaster raster = new SpeckleRaster(grid);
    for (int pass = 0; pass < coverages.length; pass++) {
      raster.paint(pass + 1, BlotField.of(grid, marks.get(pass)), coverages[pass]);
    }
    return raster;
  }

  private void paint(int pass, float[] depth, double coverage) {
    BitSet painting = new BitSet(depth.length);
    for (int below = 0; below < pass; below++) {
      float[] depths = depthsOver(below, depth);
      int wanted = (int) Math.round(coverage * depths.length);
      if (wanted > 0) {
        Arrays.sort(depths);
        deepest(below, depth, depths[depths.length - wanted], wanted, painting);
      }
    }
    painting.stream().forEach(cell -> top[cell] = (byte) pass);
    painted.add(painting);
  }

  private float[] depthsOver(int below, float[] depth) {
    float[] depths = new float[depth.length];
    int count = 0;
    for (int cell = 0; cell < depth.length; cell++) {
      if (top[cell] == below) {
        depths[count++] = depth[cell];
      }
    }
    return Arrays.copyOf(depths, count);
  }

  /** Cells from a depth on; of those that lie just there, as many as are still wanted. */
  private void deepest(int below, float[] depth, float least, int wanted, BitSet painting) {
    int left = wanted;
    for (int cell = 0; cell < depth.length; cell++) {
      if (top[cell] == below && depth[cell] > least) {
        painting.set(cell);
        left--;
      }
    }
    for (int cell = 0; cell < depth.length && left > 0; cell++) {
      if (top[cell] == below && depth[cell] == least) {
        painting.set(cell);
        left--;
      }
    }
  }

  /** What lies on top in a cell: 0 for the base, else the number of the pass. */
  int top(int cell) {
    return top[cell];
  }

  /** Whether a pass, from 1 on, painted a cell, seen now or painted over. */
  boolean isPainted(int pass, int column, int row) {
    return painted.get(pass - 1).get(grid.at(column, row));
  }

  /** The share of the cells in which the base shows, then each pass. */
  double[] shares() {
    double[] shares = new double[painted.size() + 1];
    for (byte showing : top) {
      shares[showing]++;
    }
    Arrays.setAll(shares, showing -> shares[showing] / top.length);
    return shares;
  }
}
