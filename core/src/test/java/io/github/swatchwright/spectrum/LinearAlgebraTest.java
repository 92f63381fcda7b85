package io.github.swatchwright.spectrum;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;

/** The small solvers against Apache Commons Math, and logits against their definition. */
class LinearAlgebraTest {
  private static final SplittableRandom RANDOM = new SplittableRandom(8);

  private static double[] random(int size) {
    double[] values = new double[size];
    Arrays.setAll(values, i -> 2 * RANDOM.nextDouble() - 1);
    return values;
  }

  private static double[] solved(RealMatrix a, double[] b) {
    return new LUDecomposition(a).getSolver().solve(MatrixUtils.createRealVector(b)).toArray();
  }

  @Test
  void smallSystemsAreSolvedLikeTheReference() {
    for (int i = 0; i < 200; i++) {
      double[][] a = {random(4), random(4), random(4), random(4)};
      if (i % 2 == 0) {
        // Only swapping rows leads on from here.
        a[0][0] = i % 4 == 0 ? 0 : 1e-14;
      }
      RealMatrix matrix = MatrixUtils.createRealMatrix(a);
      double[] b = random(4);
      double[] expected = solved(matrix, b);
      double largest = Arrays.stream(expected).map(Math::abs).max().orElseThrow();
      // Random matrices of four rows have condition numbers of up to some thousands.
      assertThat(SmallSystem.solve(a, b.clone()))
          .containsExactly(expected, within(1e-11 * (1 + largest)));
    }
  }

  @Test
  void tridiagonalSystemsAreSolvedLikeTheReference() {
    for (int size = 2; size < 40; size += 3) {
      double addition = 0.1 + RANDOM.nextDouble();
      double[] diagonal = Tridiagonal.slopeDiagonal(size, addition);
      RealMatrix differences = MatrixUtils.createRealMatrix(size - 1, size);
      for (int row = 0; row < size - 1; row++) {
        differences.setEntry(row, row, -1);
        differences.setEntry(row, row + 1, 1);
      }
      RealMatrix matrix =
          differences
              .transpose()
              .multiply(differences)
              .add(MatrixUtils.createRealIdentityMatrix(size).scalarMultiply(addition));
      double[] b = random(size);
      assertThat(new Tridiagonal(diagonal).solve(b.clone()))
          .containsExactly(solved(matrix, b), within(1e-12));
      double[] product = matrix.operate(b);
      for (int row = 0; row < size; row++) {
        assertThat(Tridiagonal.slopeRow(b, row) + addition * b[row])
            .isCloseTo(product[row], within(1e-14));
      }
    }
  }

  @Test
  void logitsAreTheLogarithmsOfOdds() {
    assertThat(LogitSpectrum.logit(0.5)).isZero();
    assertThat(LogitSpectrum.logit(0.8)).isCloseTo(Math.log(4), within(1e-15));
    assertThat(LogitSpectrum.internal(Math.log(4))).isCloseTo(0.8, within(1e-15));
    for (double z = -20; z <= 20; z += 0.5) {
      // Near 1 an ulp of the reflectance is much of 1 − R: e^20 · 1e-16.
      assertThat(LogitSpectrum.logit(LogitSpectrum.internal(z))).isCloseTo(z, within(1e-7));
    }
  }
}
