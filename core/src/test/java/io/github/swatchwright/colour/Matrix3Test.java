package io.github.swatchwright.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;

/** Against Apache Commons Math, on random matrices far from singular ones. */
class Matrix3Test {
  private static final SplittableRandom RANDOM = new SplittableRandom(3);

  /** A diagonal of 3 to 5 and less than 1 elsewhere: the condition number stays below 10. */
  private static double[][] random() {
    double[][] m = new double[3][3];
    for (int row = 0; row < 3; row++) {
      for (int column = 0; column < 3; column++) {
        m[row][column] = row == column ? 3 + 2 * RANDOM.nextDouble() : RANDOM.nextDouble() - 0.5;
      }
    }
    return m;
  }

  private static Matrix3 matrix(double[][] m) {
    return new Matrix3(
        m[0][0], m[0][1], m[0][2], m[1][0], m[1][1], m[1][2], m[2][0], m[2][1], m[2][2]);
  }

  private static void assertSame(Matrix3 actual, RealMatrix expected) {
    for (int column = 0; column < 3; column++) {
      double[] found = actual.times(column == 0 ? 1 : 0, column == 1 ? 1 : 0, column == 2 ? 1 : 0);
      assertThat(found).containsExactly(expected.getColumn(column), within(1e-14));
    }
  }

  @Test
  void productsAreThoseOfTheReference() {
    for (int i = 0; i < 100; i++) {
      double[][] m = random();
      double[] v = {RANDOM.nextDouble(), -RANDOM.nextDouble(), 2 * RANDOM.nextDouble()};
      assertThat(matrix(m).times(v[0], v[1], v[2]))
          .containsExactly(MatrixUtils.createRealMatrix(m).operate(v), within(1e-14));
    }
  }

  @Test
  void inversesAreThoseOfTheReference() {
    for (int i = 0; i < 100; i++) {
      double[][] m = random();
      assertSame(
          matrix(m).inverse(),
          new LUDecomposition(MatrixUtils.createRealMatrix(m)).getSolver().getInverse());
    }
  }

  @Test
  void scaledColumnsAreAProductWithADiagonal() {
    for (int i = 0; i < 100; i++) {
      double[][] m = random();
      double[] d = {0.5 + RANDOM.nextDouble(), 2 + RANDOM.nextDouble(), -1 - RANDOM.nextDouble()};
      assertSame(
          matrix(m).scaleColumns(d[0], d[1], d[2]),
          MatrixUtils.createRealMatrix(m).multiply(MatrixUtils.createRealDiagonalMatrix(d)));
    }
  }
}
