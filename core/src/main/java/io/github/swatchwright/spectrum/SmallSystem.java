package io.github.swatchwright.spectrum;

/** Gaussian elimination with row pivoting, for the three or four unknowns of a colour. */
final class SmallSystem {
  private SmallSystem() {}

  /**
   * Solves a·x = b; both arguments are used up, and {@code b} is returned as x. A singular matrix
   * gives values that are not finite.
   */
  static double[] solve(double[][] a, double[] b) {
    int size = b.length;
    for (int column = 0; column < size; column++) {
      swapLargestUp(a, b, column);
      for (int row = column + 1; row < size; row++) {
        double factor = a[row][column] / a[column][column];
        for (int k = column; k < size; k++) {
          a[row][k] -= factor * a[column][k];
        }
        b[row] -= factor * b[column];
      }
    }
    for (int row = size - 1; row >= 0; row--) {
      for (int k = row + 1; k < size; k++) {
        b[row] -= a[row][k] * b[k];
      }
      b[row] /= a[row][row];
    }
    return b;
  }

  private static void swapLargestUp(double[][] a, double[] b, int column) {
    int largest = column;
    for (int row = column + 1; row < b.length; row++) {
      if (Math.abs(a[row][column]) > Math.abs(a[largest][column])) {
        largest = row;
      }
    }
    double[] otherRow = a[column];
    a[column] = a[largest];
    a[largest] = otherRow;
    double other = b[column];
    b[column] = b[largest];
    b[largest] = other;
  }
}
