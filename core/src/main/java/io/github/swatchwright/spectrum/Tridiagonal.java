package io.github.swatchwright.spectrum;

/**
 * A symmetric tridiagonal matrix with −1 beside the diagonal, as the second differences of a
 * spectrum give it, factorised as L·D·Lᵀ without pivoting.
 */
final class Tridiagonal {
  private final double[] pivot;

  /** Factorises the matrix of this diagonal. */
  Tridiagonal(double[] diagonal) {
    pivot = diagonal.clone();
    for (int i = 1; i < pivot.length; i++) {
      pivot[i] -= 1 / pivot[i - 1];
    }
  }

  /** Diagonal of DᵀD, where D takes first differences, plus {@code addition} everywhere. */
  static double[] slopeDiagonal(int size, double addition) {
    double[] diagonal = new double[size];
    for (int i = 0; i < size; i++) {
      diagonal[i] = (i == 0 || i == size - 1 ? 1 : 2) + addition;
    }
    return diagonal;
  }

  /** DᵀD·z at one row. */
  static double slopeRow(double[] z, int row) {
    double sum = 0;
    if (row > 0) {
      sum += z[row] - z[row - 1];
    }
    if (row < z.length - 1) {
      sum += z[row] - z[row + 1];
    }
    return sum;
  }

  /** Replaces a right-hand side by the solution, and returns it. */
  double[] solve(double[] b) {
    int last = b.length - 1;
    for (int i = 1; i <= last; i++) {
      b[i] += b[i - 1] / pivot[i - 1];
    }
    b[last] /= pivot[last];
    for (int i = last - 1; i >= 0; i--) {
      b[i] = (b[i] + b[i + 1]) / pivot[i];
    }
    return b;
  }
}
