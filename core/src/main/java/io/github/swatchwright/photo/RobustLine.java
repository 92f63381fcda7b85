package io.github.swatchwright.photo;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.SingularMatrixException;

/**
 * A linear fit that strays can't bend: least squares again and again with Tukey's biweight (Beaton
 * and Tukey 1974), whose reach is 4.685 standard deviations, told by the median of the residuals.
 */
final class RobustLine {
  private static final int ROUNDS = 12;
  private static final double REACH = 4.685;

  /** The median absolute residual of a normal distribution, in standard deviations. */
  private static final double MEDIAN = 0.6745;

  /** Steps of 8-bit pictures: smaller residuals count as none. */
  private static final double LEAST_SCATTER = 1e-3;

  private final double[] coefficients;
  private final double scatter;

  private RobustLine(double[] coefficients, double scatter) {
    this.coefficients = coefficients;
    this.scatter = scatter;
  }

  /**
   * Fits {@code y} by the columns of {@code rows}.
   *
   * @throws IllegalArgumentException when the rows are too alike
   */
  static RobustLine fit(List<double[]> rows, double[] y) {
    double[] weights = new double[y.length];
    Arrays.fill(weights, 1);
    double[] coefficients = new double[rows.get(0).length];
    double scatter = 0;
    for (int round = 0; round < ROUNDS; round++) {
      coefficients = weighted(rows, y, weights);
      double[] off = new double[y.length];
      for (int i = 0; i < y.length; i++) {
        off[i] = y[i];
        for (int j = 0; j < coefficients.length; j++) {
          off[i] -= coefficients[j] * rows.get(i)[j];
        }
      }
      double[] sizes = Arrays.stream(off).map(Math::abs).sorted().toArray();
      scatter = Math.max(LEAST_SCATTER, sizes[sizes.length / 2] / MEDIAN);
      for (int i = 0; i < y.length; i++) {
        double t = off[i] / (REACH * scatter);
        weights[i] = Math.abs(t) < 1 ? (1 - t * t) * (1 - t * t) : 0;
      }
    }
    return new RobustLine(coefficients, scatter);
  }

  private static double[] weighted(List<double[]> rows, double[] y, double[] weights) {
    int n = rows.get(0).length;
    RealMatrix normal = new Array2DRowRealMatrix(n, n);
    double[] right = new double[n];
    for (int i = 0; i < y.length; i++) {
      double[] row = rows.get(i);
      for (int j = 0; j < n; j++) {
        right[j] += weights[i] * row[j] * y[i];
        for (int k = 0; k < n; k++) {
          normal.addToEntry(j, k, weights[i] * row[j] * row[k]);
        }
      }
    }
    try {
      return new QRDecomposition(normal, 1e-9)
          .getSolver()
          .solve(new ArrayRealVector(right, false))
          .toArray();
    } catch (SingularMatrixException e) {
      throw new IllegalArgumentException("the plain areas are too few to fit a light by", e);
    }
  }

  double coefficient(int column) {
    return coefficients[column];
  }

  /** The standard deviation of what isn't stray. */
  double scatter() {
    return scatter;
  }
}
