package io.github.swatchwright.card;

import io.github.swatchwright.sheet.Spot;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;

/**
 * Outlines of the cells that a pass painted, as smooth closed curves of the same area.
 *
 * <p>The problem: cells have corners and paint has none, but rounding corners off takes area away,
 * and the picture of a share must show that share. An outline is followed along the edges of the
 * cells; every few edges it leaves a control point of a closed quadratic B-spline, which is moved
 * outwards, evenly along the curve, until the curve encloses as much of the picture as the cells
 * did.
 */
final class BlotOutlines {
  /** Beyond the picture's edge the marks go on, so that no curve bends along the edge. */
  static final int MARGIN = 3;

  /** Edges of cells for one control point. */
  private static final double STEP = 3.5;

  private static final int FEWEST = 4;
  private static final int ROUNDS = 4;

  /** To the right, down, to the left, up: a painted cell lies to the right of its edges. */
  private static final int[] RIGHT = {1, 0, -1, 0};

  private static final int[] DOWN = {0, 1, 0, -1};

  private final SpeckleGrid grid;
  private final int columns;
  private final byte[] edges;

  private BlotOutlines(SpeckleGrid grid) {
    this.grid = grid;
    this.columns = grid.columns() + 2 * MARGIN + 1;
    this.edges = new byte[columns * (grid.rows() + 2 * MARGIN + 1)];
  }

  /** Control points of the curves, in cells from the picture's left upper corner. */
  static List<List<Spot>> of(SpeckleGrid grid, SpeckleRaster raster, int pass) {
    int columns = grid.columns() + 2 * MARGIN;
    int rows = grid.rows() + 2 * MARGIN;
    BlotOutlines outlines = new BlotOutlines(grid);
    IntPredicate painted =
        cell -> {
          int column = cell % columns;
          int row = cell / columns;
          return raster.isPainted(pass, column - MARGIN, row - MARGIN);
        };
    outlines.mark(columns, rows, painted);
    return outlines.curves();
  }

  private void mark(int cellColumns, int cellRows, IntPredicate painted) {
    for (int row = 0; row < cellRows; row++) {
      for (int column = 0; column < cellColumns; column++) {
        int cell = row * cellColumns + column;
        if (painted.test(cell)) {
          if (row == 0 || !painted.test(cell - cellColumns)) {
            mark(column, row, 0);
          }
          if (column == cellColumns - 1 || !painted.test(cell + 1)) {
            mark(column + 1, row, 1);
          }
          if (row == cellRows - 1 || !painted.test(cell + cellColumns)) {
            mark(column + 1, row + 1, 2);
          }
          if (column == 0 || !painted.test(cell - 1)) {
            mark(column, row + 1, 3);
          }
        }
      }
    }
  }

  private void mark(int column, int row, int direction) {
    edges[row * columns + column] |= (byte) (1 << direction);
  }

  private List<List<Spot>> curves() {
    List<List<Spot>> curves = new ArrayList<>();
    for (int corner = 0; corner < edges.length; corner++) {
      while (edges[corner] != 0) {
        List<int[]> corners = follow(corner);
        if (shows(corners)) {
          curves.add(curve(corners));
        }
      }
    }
    return curves;
  }

  /** Corners along a closed outline; its edges are taken away. */
  private List<int[]> follow(int start) {
    List<int[]> corners = new ArrayList<>();
    int corner = start;
    int direction = Integer.numberOfTrailingZeros(edges[corner]);
    do {
      corners.add(new int[] {corner % columns - MARGIN, corner / columns - MARGIN});
      edges[corner] &= (byte) ~(1 << direction);
      corner += RIGHT[direction] + columns * DOWN[direction];
      direction = next(corner, direction);
    } while (corner != start && direction >= 0);
    return corners;
  }

  private boolean shows(List<int[]> corners) {
    return corners.stream()
            .anyMatch(
                corner ->
                    corner[0] > 0
                        && corner[0] < grid.columns()
                        && corner[1] > 0
                        && corner[1] < grid.rows())
        || corners.size() >= 2 * (grid.columns() + grid.rows());
  }

  /** Where two cells touch at a corner, the outline stays with the cell that it came along. */
  private int next(int corner, int direction) {
    for (int turn : new int[] {1, 0, 3}) {
      int candidate = (direction + turn) % 4;
      if ((edges[corner] & 1 << candidate) != 0) {
        return candidate;
      }
    }
    return -1;
  }

  private List<Spot> curve(List<int[]> corners) {
    int edgeCount = corners.size();
    int count = Math.max(FEWEST, (int) Math.round(edgeCount / STEP));
    double[] points = new double[2 * count];
    for (int i = 0; i < count; i++) {
      double from = (double) i * edgeCount / count;
      double to = (double) (i + 1) * edgeCount / count;
      for (int axis = 0; axis < 2; axis++) {
        points[2 * i + axis] = mean(corners, axis, from, to);
      }
    }
    SplineArea area = new SplineArea(grid.columns(), grid.rows());
    double wanted = area.ofPolygon(corners);
    for (int round = 0; round < ROUNDS; round++) {
      area.widen(points, wanted);
    }
    List<Spot> spots = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      spots.add(new Spot(points[2 * i], points[2 * i + 1]));
    }
    return spots;
  }

  /** The mean place of a stretch of the outline, of both ends and its middle. */
  private static double mean(List<int[]> corners, int axis, double from, double to) {
    return (along(corners, axis, from)
            + 2 * along(corners, axis, (from + to) / 2)
            + along(corners, axis, to))
        / 4;
  }

  private static double along(List<int[]> corners, int axis, double place) {
    int before = (int) place;
    double part = place - before;
    double here = corners.get(before % corners.size())[axis];
    double next = corners.get((before + 1) % corners.size())[axis];
    return here + part * (next - here);
  }
}
