package io.github.swatchwright.estimate;

import java.util.stream.IntStream;

/**
 * The lower triangular factor L of a positive definite matrix G = L·Lᵀ, by Cholesky's method in
 * panels, for the thousands of rows that test cards bring. Rows have their own length: row i holds
 * i + 1 numbers.
 *
 * <p>Rows are worked on in parallel, each by itself, so that the numbers don't depend on threads.
 */
final class LowerTriangle {
  private static final int PANEL = 48;

  /** A hundred times the rounding of one operation. */
  private static final double EDGE = 2e-14;

  /** Fewer rows than this aren't worth a second thread. */
  private static final int WORTH_SHARING = 200;

  private final double[][] rows;

  private LowerTriangle(double[][] rows) {
    this.rows = rows;
  }

  /**
   * Factors a matrix in place.
   *
   * <p>Where rounding leaves nothing of a row that the rows before it nearly determine, a share of
   * {@value #EDGE} of its own variance is left: the row then counts as known from the others, and
   * the factor stays usable.
   *
   * @param rows its lower triangle, which is overwritten
   * @throws IllegalArgumentException when a variance isn't above 0, or a number isn't finite
   */
  static LowerTriangle factor(double[][] rows) {
    double[] variances = new double[rows.length];
    for (int i = 0; i < rows.length; i++) {
      variances[i] = rows[i][i];
    }
    for (int start = 0; start < rows.length; start += PANEL) {
      int end = Math.min(rows.length, start + PANEL);
      factorPanel(rows, variances, start, end);
      subtractPanel(rows, start, end);
    }
    return new LowerTriangle(rows);
  }

  private static void factorPanel(double[][] rows, double[] variances, int start, int end) {
    for (int i = start; i < rows.length; i++) {
      double[] row = rows[i];
      for (int j = start; j < Math.min(end, i + 1); j++) {
        double rest = row[j];
        double[] other = rows[j];
        for (int m = start; m < j; m++) {
          rest -= row[m] * other[m];
        }
        if (i == j) {
          if (!(variances[i] > 0 && rest < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("the matrix isn't positive definite in row " + i);
          }
          row[j] = Math.sqrt(Math.max(rest, EDGE * variances[i]));
        } else {
          row[j] = rest / other[j];
        }
      }
    }
  }

  private static void subtractPanel(double[][] rows, int start, int end) {
    double[][] columns = new double[end - start][rows.length];
    for (int i = end; i < rows.length; i++) {
      for (int m = start; m < end; m++) {
        columns[m - start][i] = rows[i][m];
      }
    }
    IntStream from = IntStream.range(end, rows.length);
    (rows.length - end < WORTH_SHARING ? from : from.parallel())
        .forEach(i -> subtractPanel(rows[i], start, columns, end, i + 1));
  }

  /** Four columns at a time, so that the row is read and written a quarter as often. */
  private static void subtractPanel(double[] row, int start, double[][] columns, int from, int to) {
    int m = 0;
    for (; m + 3 < columns.length; m += 4) {
      double f0 = row[start + m];
      double f1 = row[start + m + 1];
      double f2 = row[start + m + 2];
      double f3 = row[start + m + 3];
      double[] c0 = columns[m];
      double[] c1 = columns[m + 1];
      double[] c2 = columns[m + 2];
      double[] c3 = columns[m + 3];
      for (int j = from; j < to; j++) {
        row[j] -= f0 * c0[j] + f1 * c1[j] + (f2 * c2[j] + f3 * c3[j]);
      }
    }
    for (; m < columns.length; m++) {
      subtract(row, row[start + m], columns[m], from, to);
    }
  }

  private static void subtract(double[] row, double factor, double[] column, int from, int to) {
    for (int j = from; j < to; j++) {
      row[j] -= factor * column[j];
    }
  }

  int size() {
    return rows.length;
  }

  /** ln det G. */
  double logDeterminant() {
    double sum = 0;
    for (int i = 0; i < rows.length; i++) {
      sum += 2 * Math.log(rows[i][i]);
    }
    return sum;
  }

  /** L⁻¹·y. */
  double[] forward(double[] y) {
    return forward(y, 0);
  }

  /** L⁻¹·y of a vector whose numbers before {@code first} are 0. */
  private double[] forward(double[] y, int first) {
    double[] x = y.clone();
    for (int i = first; i < x.length; i++) {
      double[] row = rows[i];
      double sum0 = 0;
      double sum1 = 0;
      double sum2 = 0;
      double sum3 = 0;
      int j = first;
      for (; j + 3 < i; j += 4) {
        sum0 += row[j] * x[j];
        sum1 += row[j + 1] * x[j + 1];
        sum2 += row[j + 2] * x[j + 2];
        sum3 += row[j + 3] * x[j + 3];
      }
      for (; j < i; j++) {
        sum0 += row[j] * x[j];
      }
      x[i] = (x[i] - (sum0 + sum1) - (sum2 + sum3)) / row[i];
    }
    return x;
  }

  /** L⁻¹·Y for a matrix of as many rows, whose columns may be any number. */
  double[][] forwardRows(double[][] y) {
    double[][] x = new double[y.length][];
    for (int i = 0; i < y.length; i++) {
      x[i] = y[i].clone();
      for (int j = 0; j < i; j++) {
        subtract(x[i], rows[i][j], x[j], 0, x[i].length);
      }
      for (int column = 0; column < x[i].length; column++) {
        x[i][column] /= rows[i][i];
      }
    }
    return x;
  }

  /** G⁻¹·y. */
  double[] solve(double[] y) {
    double[] x = forward(y);
    for (int i = x.length - 1; i >= 0; i--) {
      x[i] /= rows[i][i];
      subtract(x, x[i], rows[i], 0, i);
    }
    return x;
  }

  /** The block of G⁻¹ in those rows and columns. */
  double[][] inverseBlock(int from, int to) {
    double[][] solved = new double[to - from][];
    for (int i = from; i < to; i++) {
      double[] unit = new double[rows.length];
      unit[i] = 1;
      solved[i - from] = forward(unit, i);
    }
    double[][] block = new double[to - from][to - from];
    for (int i = 0; i < block.length; i++) {
      for (int j = 0; j < block.length; j++) {
        block[i][j] = dot(solved[i], solved[j]);
      }
    }
    return block;
  }

  static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
