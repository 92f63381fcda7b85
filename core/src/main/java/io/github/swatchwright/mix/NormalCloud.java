package io.github.swatchwright.mix;

import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.random.HaltonSequenceGenerator;

/** Quasi-random points of a standard normal distribution in three dimensions, mirrored in pairs. */
final class NormalCloud {
  private NormalCloud() {}

  /**
   * A cloud whose mean is 0 exactly.
   *
   * @param points how many, even
   */
  static double[][] of(int points) {
    NormalDistribution normal = new NormalDistribution();
    HaltonSequenceGenerator halton = new HaltonSequenceGenerator(3);
    halton.skipTo(1);
    double[][] cloud = new double[points][3];
    for (int i = 0; i < points; i += 2) {
      double[] uniform = halton.nextVector();
      for (int axis = 0; axis < 3; axis++) {
        cloud[i][axis] = normal.inverseCumulativeProbability(uniform[axis]);
        cloud[i + 1][axis] = -cloud[i][axis];
      }
    }
    return cloud;
  }
}
