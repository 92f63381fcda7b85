package io.github.swatchwright.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The factor of a matrix, and what follows from it, against Commons Math's. */
class LowerTriangleTest {
  // Rounding of some hundred operations, times how uneven the matrices are (about 50).
  private static final double ROUNDING = 1e-10;

  /** Random and positive definite, with variances about 1. */
  private static RealMatrix matrix(int size) {
    Random random = new Random(size);
    double[][] values = new double[size][size + 2];
    for (double[] row : values) {
      for (int i = 0; i < row.length; i++) {
        row[i] = random.nextGaussian() / Math.sqrt(row.length);
      }
    }
    RealMatrix root = MatrixUtils.createRealMatrix(values);
    return root.multiply(root.transpose())
        .add(MatrixUtils.createRealIdentityMatrix(size).scalarMultiply(0.1));
  }

  private static double[][] lower(RealMatrix matrix) {
    double[][] rows = new double[matrix.getRowDimension()][];
    for (int i = 0; i < rows.length; i++) {
      rows[i] = matrix.getSubMatrix(i, i, 0, i).getRow(0);
    }
    return rows;
  }

  private static double[] vector(int size) {
    return new Random(-size).doubles(size, -1, 1).toArray();
  }

  // Panels are 48 rows, and from 200 rows below a panel on they are shared among threads.
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 47, 48, 49, 97, 300})
  void factorsAsCommonsMathDoes(int size) {
    RealMatrix matrix = matrix(size);
    CholeskyDecomposition expected = new CholeskyDecomposition(matrix);
    LowerTriangle factor = LowerTriangle.factor(lower(matrix));
    double logDeterminant = 0;
    for (int i = 0; i < size; i++) {
      logDeterminant += 2 * Math.log(expected.getL().getEntry(i, i));
    }
    assertThat(factor.logDeterminant()).isCloseTo(logDeterminant, within(size * ROUNDING));
    double[] y = vector(size);
    double[] solved = expected.getSolver().solve(MatrixUtils.createRealVector(y)).toArray();
    assertThat(factor.solve(y)).containsExactly(solved, within(ROUNDING));
    assertThat(expected.getL().operate(factor.forward(y))).containsExactly(y, within(ROUNDING));
    double[][] together = new double[size][];
    for (int i = 0; i < size; i++) {
      together[i] = new double[] {y[i], i, -y[i]};
    }
    double[][] product =
        expected
            .getL()
            .multiply(MatrixUtils.createRealMatrix(factor.forwardRows(together)))
            .getData();
    for (int i = 0; i < size; i++) {
      assertThat(product[i]).containsExactly(together[i], within(ROUNDING));
    }
  }

  // More than 400 columns are worked out in several goes.
  @Test
  void blocksOfTheInverseAreCommonsMaths() {
    RealMatrix matrix = matrix(450);
    RealMatrix inverse = new CholeskyDecomposition(matrix).getSolver().getInverse();
    LowerTriangle factor = LowerTriangle.factor(lower(matrix));
    int[] bounds = {0, 1, 150, 401, 401, 430, 450};
    List<double[][]> blocks = factor.inverseBlocks(bounds);
    assertThat(blocks).hasSize(bounds.length - 1);
    for (int block = 0; block < blocks.size(); block++) {
      assertIsBlock(inverse, bounds[block], blocks.get(block));
    }
    assertIsBlock(inverse, 100, factor.inverseBlock(100, 130));
  }

  private static void assertIsBlock(RealMatrix inverse, int from, double[][] block) {
    for (int i = 0; i < block.length; i++) {
      double[] expected = new double[block.length];
      for (int j = 0; j < block.length; j++) {
        expected[j] = inverse.getEntry(from + i, from + j);
      }
      assertThat(block[i]).containsExactly(expected, within(ROUNDING));
    }
  }

  /** By its definition; four columns are taken at a time, and what is left one by one. */
  @ParameterizedTest
  @ValueSource(ints = {1, 3, 4, 7, 8})
  void multiplesOfColumnsAreSubtracted(int columns) {
    RealMatrix matrix = matrix(9);
    double[] factors = vector(10);
    double[] row = vector(9);
    double[] expected = row.clone();
    for (int j = 2; j < 8; j++) {
      for (int m = 0; m < columns; m++) {
        expected[j] -= factors[1 + m] * matrix.getEntry(m, j);
      }
    }
    double[][] some = matrix.getSubMatrix(0, columns - 1, 0, 8).getData();
    LowerTriangle.subtract(row, factors, 1, some, 2, 8);
    assertThat(row).containsExactly(expected, within(1e-14));
  }

  @Test
  void aRowThatAnotherOneDeterminesCountsAsKnown() {
    LowerTriangle factor = LowerTriangle.factor(new double[][] {{4}, {4, 4}});
    // The rest of its variance is 2e-14 of it.
    assertThat(factor.logDeterminant()).isCloseTo(Math.log(4 * 4 * 2e-14), within(1e-9));
    double[] solved = factor.solve(new double[] {4, 4});
    assertThat(solved[0] + solved[1]).isCloseTo(1, within(1e-9));
  }

  @Test
  void whatIsNoCovarianceIsRefused() {
    for (double bad : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThatIllegalArgumentException()
          .isThrownBy(() -> LowerTriangle.factor(new double[][] {{1}, {0, bad}}))
          .withMessage("the matrix isn't positive definite in row 1");
    }
  }
}
