package io.github.swatchwright.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;

class EvidenceRowsTest {
  private static final int ROWS = 9;

  private final Random random = new Random(3);

  private double[] numbers(int count) {
    return random.doubles(count, -1, 1).toArray();
  }

  private static GaussianBelief unit(int size) {
    double[][] covariance = new double[size][size];
    for (int i = 0; i < size; i++) {
      covariance[i][i] = 1;
    }
    return GaussianBelief.of(new double[size], covariance);
  }

  @Test
  void integratingAnUnknownOutLeavesTheCovarianceOfTheOthersAsItWas() {
    Map<String, GaussianBelief> beliefs = new LinkedHashMap<>();
    beliefs.put("first", unit(OpticsState.SIZE));
    beliefs.put("second", unit(OpticsState.SIZE));
    beliefs.put("batch", unit(1));
    EvidenceRows rows = new EvidenceRows(ROWS, beliefs);
    for (int row = 0; row < ROWS; row++) {
      if (row != 4) {
        rows.add("first", row, numbers(OpticsState.SIZE));
      }
      if (row > 2) {
        rows.add("second", row, numbers(OpticsState.SIZE));
      }
      if (row % 3 == 1) {
        rows.add("batch", row, numbers(1));
      }
    }
    Map<String, double[][]> values = new LinkedHashMap<>();
    values.put("first", new double[][] {numbers(OpticsState.SIZE), numbers(OpticsState.SIZE)});
    values.put("second", new double[][] {numbers(OpticsState.SIZE), numbers(OpticsState.SIZE)});

    double[][] with = rows.covarianceOf(values, rows.factor());
    EvidenceRows without = rows.integrated(Set.of("batch"));
    double[][] after = without.covarianceOf(values, without.factor());

    assertThat(without.of("batch")).isEmpty();
    for (int i = 0; i < with.length; i++) {
      for (int j = 0; j < with.length; j++) {
        // Both are sums of some hundred products near 1: rounding alone is left.
        assertThat(after[i][j]).isCloseTo(with[i][j], within(1e-10));
      }
    }
  }

  @Test
  void rowsAreThoseOfAMatrix() {
    int some = 5;
    double[][] first = new double[ROWS][OpticsState.SIZE];
    double[][] second = new double[ROWS][OpticsState.SIZE];
    EvidenceRows rows =
        new EvidenceRows(
            ROWS, Map.of("first", unit(OpticsState.SIZE), "second", unit(OpticsState.SIZE)));
    // Not in order: rows may come as they like.
    for (int row = ROWS - 1; row >= 0; row--) {
      first[row] = numbers(OpticsState.SIZE);
      rows.add("first", row, first[row]);
      if (row < some) {
        second[row] = numbers(OpticsState.SIZE);
        rows.add("second", row, second[row]);
      }
    }
    RealMatrix a = MatrixUtils.createRealMatrix(first);
    RealMatrix b = MatrixUtils.createRealMatrix(second);
    double[] alpha = numbers(ROWS);
    double[] shift = numbers(OpticsState.SIZE);

    assertThat(rows.pull("first", alpha)).containsExactly(a.preMultiply(alpha), within(1e-12));
    assertThat(rows.pull("second", alpha)).containsExactly(b.preMultiply(alpha), within(1e-12));
    assertThat(rows.along(Map.of("first", shift, "second", minusTwice(shift))))
        .containsExactly(a.subtract(b.scalarMultiply(2)).operate(shift), within(1e-12));
    RealMatrix g =
        a.multiply(a.transpose())
            .add(b.multiply(b.transpose()))
            .add(MatrixUtils.createRealIdentityMatrix(ROWS));
    assertThat(rows.factor().logDeterminant())
        .isCloseTo(Math.log(new LUDecomposition(g).getDeterminant()), within(1e-10));

    EvidenceRows larger = new EvidenceRows(ROWS + 1, Map.of());
    rows.copyTo(larger);
    assertThat(larger.of("second").keySet()).containsExactly(0, 1, 2, 3, 4);
    assertThat(larger.of("first")).isEqualTo(rows.of("first")).hasSize(ROWS);
    assertThat(larger.of("nobody")).isEmpty();
  }

  private static double[] minusTwice(double... shift) {
    return Arrays.stream(shift).map(value -> -2 * value).toArray();
  }
}
