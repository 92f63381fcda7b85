package io.github.swatchwright.card;

/**
 * Cells over a piece of a model's surface.
 *
 * @param columns how many cells lie side by side
 * @param rows how many lie below each other
 * @param width of the piece, millimetres of the model
 * @param height of the piece
 */
record SpeckleGrid(int columns, int rows, double width, double height) {
  int count() {
    return columns * rows;
  }

  double cellWidth() {
    return width / columns;
  }

  double cellHeight() {
    return height / rows;
  }

  /** The cell there; beyond an edge the grid begins again. */
  int at(int column, int row) {
    return Math.floorMod(row, rows) * columns + Math.floorMod(column, columns);
  }
}
