package io.github.swatchwright.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import java.util.Set;
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
}
