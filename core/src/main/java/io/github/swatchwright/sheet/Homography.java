package io.github.swatchwright.sheet;

import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.SingularMatrixException;
import org.jspecify.annotations.Nullable;

/**
 * How a flat thing looks in a picture without lens errors: x' = (ax + by + c)/(gx + hy + 1), y' =
 * (dx + ey + f)/(gx + hy + 1).
 */
final class Homography {
  private final double[] h;

  Homography(double[] h) {
    this.h = h;
  }

  /** Its eight coefficients, a to h. */
  double[] h() {
    return h;
  }

  /**
   * The homography that takes points nearest to others, by least squares of the linear equations.
   *
   * @throws SingularMatrixException when three of four points are on a line
   */
  static Homography between(List<Spot> from, List<Spot> to) {
    double[][] rows = new double[2 * from.size()][];
    double[] right = new double[2 * from.size()];
    for (int i = 0; i < from.size(); i++) {
      double x = from.get(i).x();
      double y = from.get(i).y();
      double u = to.get(i).x();
      double v = to.get(i).y();
      rows[2 * i] = new double[] {x, y, 1, 0, 0, 0, -x * u, -y * u};
      rows[2 * i + 1] = new double[] {0, 0, 0, x, y, 1, -x * v, -y * v};
      right[2 * i] = u;
      right[2 * i + 1] = v;
    }
    return new Homography(
        new QRDecomposition(new Array2DRowRealMatrix(rows, false), 1e-12)
            .getSolver()
            .solve(new ArrayRealVector(right, false))
            .toArray());
  }

  /**
   * The homography that takes the unit square to a quadrangle (Heckbert 1989), or null when it is
   * degenerate. Much faster than {@link #between}.
   */
  static double @Nullable [] ofSquare(Spot p0, Spot p1, Spot p2, Spot p3) {
    double dx1 = p1.x() - p2.x();
    double dx2 = p3.x() - p2.x();
    double dy1 = p1.y() - p2.y();
    double dy2 = p3.y() - p2.y();
    double sx = p0.x() - p1.x() + p2.x() - p3.x();
    double sy = p0.y() - p1.y() + p2.y() - p3.y();
    double det = dx1 * dy2 - dx2 * dy1;
    if (Math.abs(det) < 1e-9) {
      return null;
    }
    double g = (sx * dy2 - dx2 * sy) / det;
    double h = (dx1 * sy - sx * dy1) / det;
    return new double[] {
      p1.x() - p0.x() + g * p1.x(),
      p3.x() - p0.x() + h * p3.x(),
      p0.x(),
      p1.y() - p0.y() + g * p1.y(),
      p3.y() - p0.y() + h * p3.y(),
      p0.y(),
      g,
      h
    };
  }

  Spot at(double x, double y) {
    double w = h[6] * x + h[7] * y + 1;
    double safe = Math.abs(w) < 1e-6 ? 1e-6 : w;
    return new Spot(
        held((h[0] * x + h[1] * y + h[2]) / safe), held((h[3] * x + h[4] * y + h[5]) / safe));
  }

  private static double held(double value) {
    return Math.max(-1e6, Math.min(1e6, value));
  }

  /** The eight coefficients of the way back. */
  static double[] inverse(double[] m) {
    double[] inverse = {
      m[4] - m[5] * m[7],
      m[2] * m[7] - m[1],
      m[1] * m[5] - m[2] * m[4],
      m[5] * m[6] - m[3],
      m[0] - m[2] * m[6],
      m[2] * m[3] - m[0] * m[5],
      m[3] * m[7] - m[4] * m[6],
      m[1] * m[6] - m[0] * m[7],
      m[0] * m[4] - m[1] * m[3]
    };
    return scaled(inverse);
  }

  private static double[] scaled(double[] nine) {
    double[] eight = new double[8];
    for (int i = 0; i < 8; i++) {
      eight[i] = nine[i] / nine[8];
    }
    return eight;
  }

  /** First b, then a, by their eight coefficients. */
  static double[] product(double[] a, double[] b) {
    double[] nine = new double[9];
    for (int row = 0; row < 3; row++) {
      for (int column = 0; column < 3; column++) {
        for (int k = 0; k < 3; k++) {
          nine[3 * row + column] += entry(a, row, k) * entry(b, k, column);
        }
      }
    }
    return scaled(nine);
  }

  private static double entry(double[] eight, int row, int column) {
    int at = 3 * row + column;
    return at == 8 ? 1 : eight[at];
  }
}
