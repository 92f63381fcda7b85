package io.github.swatchwright.card;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/**
 * How deep each cell of a grid lies within the marks of one pass, in millimetres of the model. The
 * grid begins again beyond its edges, so that pictures can be laid side by side.
 */
final class BlotField {
  /** Around a mark, the field tells how far it would have to grow. */
  private static final double MARGIN = 0.6;

  /** Marks alone come so far; a pass that covers more grows them. */
  private static final double MOST = 0.97;

  /** Where no mark is near: deeper than that no cell lies outside of one. */
  private static final float FAR = -1000;

  private final SpeckleGrid grid;
  private final float[] depth;
  private int covered;

  private BlotField(SpeckleGrid grid) {
    this.grid = grid;
    this.depth = new float[grid.count()];
    Arrays.fill(depth, Float.NEGATIVE_INFINITY);
  }

  /** The field of marks. Where no mark is near, a place counts the less the farther on it is. */
  static float[] of(SpeckleGrid grid, List<Blot> blots) {
    BlotField field = new BlotField(grid);
    blots.forEach(field::add);
    for (int cell = 0; cell < field.depth.length; cell++) {
      if (field.depth[cell] == Float.NEGATIVE_INFINITY) {
        field.depth[cell] = FAR - cell;
      }
    }
    return field.depth;
  }

  /** As many marks as cover about that share of a piece. */
  static List<Blot> shower(SpeckleGrid grid, Landing landing, double coverage, Random random) {
    List<Blot> blots = new ArrayList<>();
    BlotField field = new BlotField(grid);
    double towards = Math.PI * random.nextDouble();
    int wanted = (int) (Math.min(coverage, MOST) * grid.count());
    while (coverage > 0 && field.covered <= wanted) {
      double x = grid.width() * random.nextDouble();
      double y = grid.height() * random.nextDouble();
      List<Blot> landed = Blot.landing(landing, x, y, towards, random);
      landed.forEach(field::add);
      blots.addAll(landed);
    }
    return blots;
  }

  private void add(Blot blot) {
    double reach = blot.reach() + MARGIN;
    int top = (int) Math.floor((blot.y() - reach) / grid.cellHeight());
    int bottom = (int) Math.ceil((blot.y() + reach) / grid.cellHeight());
    int left = (int) Math.floor((blot.x() - reach) / grid.cellWidth());
    int right = (int) Math.ceil((blot.x() + reach) / grid.cellWidth());
    for (int row = top; row <= bottom; row++) {
      for (int column = left; column <= right; column++) {
        double inside =
            blot.depth((column + 0.5) * grid.cellWidth(), (row + 0.5) * grid.cellHeight());
        int cell = grid.at(column, row);
        covered += inside >= 0 && depth[cell] < 0 ? 1 : 0;
        depth[cell] = Math.max(depth[cell], (float) inside);
      }
    }
  }
}
