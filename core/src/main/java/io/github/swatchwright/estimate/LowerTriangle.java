package io.github.swatchwright.estimate;

import java.util.ArrayList;
import java.util.List;
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

  /** So many columns of the inverse are worked out at a time, for the memory that they take. */
  private static final int AT_ONCE = 400;

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
    double[][] columns = new double[end - start][end];
    for (int i = start; i < end; i++) {
      double[] row = rows[i];
      divide(row, start, i, rows, columns);
      double rest = row[i];
      for (int j = start; j < i; j++) {
        rest -= row[j] * row[j];
        columns[j - start][i] = row[j];
      }
      if (!(variances[i] > 0 && rest < Double.POSITIVE_INFINITY)) {
        throw new IllegalArgumentException("the matrix isn't positive definite in row " + i);
      }
      row[i] = Math.sqrt(Math.max(rest, EDGE * variances[i]));
    }
    IntStream below = IntStream.range(end, rows.length);
    (rows.length - end < WORTH_SHARING ? below : below.parallel())
        .forEach(i -> divide(rows[i], start, end, rows, columns));
  }

  /** A row's numbers in a panel, up to {@code end}, given the panel's columns of the rows above. */
  private static void divide(
      double[] row, int start, int end, double[][] rows, double[][] columns) {
    for (int j = start; j < end; j++) {
      row[j] /= rows[j][j];
      subtract(row, row[j], columns[j - start], j + 1, end);
    }
  }

  private static void subtractPanel(double[][] rows, int start, int end) {
    double[][] columns = columns(rows, start, end);
    IntStream from = IntStream.range(end, rows.length);
    (rows.length - end < WORTH_SHARING ? from : from.parallel())
        .forEach(i -> subtract(rows[i], rows[i], start, columns, end, i + 1));
  }

  /** The columns of a panel, below it. */
  private static double[][] columns(double[][] rows, int start, int end) {
    double[][] columns = new double[end - start][rows.length];
    for (int i = end; i < rows.length; i++) {
      for (int m = start; m < end; m++) {
        columns[m - start][i] = rows[i][m];
      }
    }
    return columns;
  }

  /**
   * Subtracts multiples of columns from a row: row[j] −= Σₘ factors[first + m]·columns[m][j]. Four
   * columns at a time, so that the row is read and written a quarter as often.
   *
   * @param from the first j
   * @param to after the last j
   */
  static void subtract(
      double[] row, double[] factors, int first, double[][] columns, int from, int to) {
    int m = 0;
    for (; m + 3 < columns.length; m += 4) {
      double f0 = factors[first + m];
      double f1 = factors[first + m + 1];
      double f2 = factors[first + m + 2];
      double f3 = factors[first + m + 3];
      double[] c0 = columns[m];
      double[] c1 = columns[m + 1];
      double[] c2 = columns[m + 2];
      double[] c3 = columns[m + 3];
      for (int j = from; j < to; j++) {
        row[j] -= f0 * c0[j] + f1 * c1[j] + (f2 * c2[j] + f3 * c3[j]);
      }
    }
    for (; m < columns.length; m++) {
      subtract(row, factors[first + m], columns[m], from, to);
    }
  }

  private static void subtract(double[] row, double factor, double[] column, int from, int to) {
    for (int j = from; j < to; j++) {
      row[j] -= factor * column[j];
    }
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
    double[] x = y.clone();
    forward(x, 0, x.length);
    return x;
  }

  /** Numbers {@code from} to before {@code to} of L⁻¹·x in place, if nothing before them counts. */
  private void forward(double[] x, int from, int to) {
    for (int i = from; i < to; i++) {
      double[] row = rows[i];
      double sum0 = 0;
      double sum1 = 0;
      double sum2 = 0;
      double sum3 = 0;
      int j = from;
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
    return products(forwardUnits(from, to), 0, to - from);
  }

  /**
   * Blocks of G⁻¹ along its diagonal.
   *
   * @param bounds the first row of each block, and the end of the last one; ascending
   */
  List<double[][]> inverseBlocks(int... bounds) {
    List<double[][]> blocks = new ArrayList<>();
    int last = bounds.length - 1;
    for (int block = 0; block < last; ) {
      int from = block;
      while (block < last && (block == from || bounds[block + 1] - bounds[from] <= AT_ONCE)) {
        block++;
      }
      int start = bounds[from];
      double[][] units = forwardUnits(start, bounds[block]);
      IntStream.range(from, block)
          .mapToObj(b -> products(units, bounds[b] - start, bounds[b + 1] - start))
          .forEach(blocks::add);
    }
    return blocks;
  }

  private static double[][] products(double[][] vectors, int from, int to) {
    double[][] products = new double[to - from][to - from];
    for (int i = 0; i < products.length; i++) {
      for (int j = 0; j <= i; j++) {
        products[i][j] = dot(vectors[from + i], vectors[from + j]);
        products[j][i] = products[i][j];
      }
    }
    return products;
  }

  /** L⁻¹·eᵢ for each row i in a range, in panels. */
  private double[][] forwardUnits(int from, int to) {
    double[][] units = new double[to - from][rows.length];
    for (int i = from; i < to; i++) {
      units[i - from][i] = 1;
    }
    for (int start = from; start < rows.length; start += PANEL) {
      int first = start;
      int end = Math.min(rows.length, start + PANEL);
      double[][] columns = columns(rows, start, end);
      IntStream all = IntStream.range(0, Math.min(units.length, end - from));
      (units.length < WORTH_SHARING ? all : all.parallel())
          .forEach(
              unit -> {
                forward(units[unit], first, end);
                subtract(units[unit], units[unit], first, columns, end, rows.length);
              });
    }
    return units;
  }

  static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
