package io.github.swatchwright.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class NormalCloudTest {
  private final double[][] cloud = NormalCloud.of(512);

  @Test
  void everyPointHasItsMirrorImage() {
    assertThat(cloud).hasNumberOfRows(512);
    for (int i = 0; i < cloud.length; i += 2) {
      for (int axis = 0; axis < 3; axis++) {
        assertThat(cloud[i + 1][axis] + cloud[i][axis]).isZero();
      }
    }
  }

  @Test
  void pointsAreNormalByTheirMoments() {
    for (int axis = 0; axis < 3; axis++) {
      double square = 0;
      double fourth = 0;
      double across = 0;
      for (double[] point : cloud) {
        square += point[axis] * point[axis] / cloud.length;
        fourth += Math.pow(point[axis], 4) / cloud.length;
        across += point[axis] * point[(axis + 1) % 3] / cloud.length;
      }
      // 1, 3 and 0; random points would have standard errors of 0.06, 0.4 and 0.04, and these are
      // spread more evenly, but have no tails beyond 1 in 512.
      assertThat(square).isCloseTo(1, within(0.06));
      assertThat(fourth).isCloseTo(3, within(0.4));
      assertThat(across).isCloseTo(0, within(0.04));
    }
  }

  @Test
  void halfOfThePointsLieWithinTheQuartiles() {
    for (int axis = 0; axis < 3; axis++) {
      int inside = 0;
      for (double[] point : cloud) {
        // 0.6745 by any table of the normal distribution.
        inside += Math.abs(point[axis]) < 0.6745 ? 1 : 0;
      }
      assertThat(inside / 512.0).isCloseTo(0.5, within(0.02));
    }
  }
}
