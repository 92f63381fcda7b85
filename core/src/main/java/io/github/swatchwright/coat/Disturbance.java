package io.github.swatchwright.coat;

import io.github.swatchwright.spectrum.Bands;
import java.util.List;

/** One independent cause of error in a stack of coats, and what it does to the colour. */
interface Disturbance {
  /** Small enough for first order, large enough for the digits of a double. */
  double STEP = 1e-4;

  /** Stacks with it at work. */
  List<CoatStack> variants();

  /**
   * What it adds to the covariance of L*, a* and b*: 3 × 3.
   *
   * @param slope derivatives of L*, a* and b* by seen reflectance
   * @param seen reflectance undisturbed
   * @param moved reflectance of each variant
   */
  double[][] covariance(double[][] slope, double[] seen, List<double[]> moved);

  /**
   * A number that is off, and how many times as far as the variant shows.
   *
   * @param variant the stack with the number off
   * @param times sd of the error over what the variant has
   */
  record Shift(CoatStack variant, double times) implements Disturbance {
    @Override
    public List<CoatStack> variants() {
      return List.of(variant);
    }

    @Override
    public double[][] covariance(double[][] slope, double[] seen, List<double[]> moved) {
      double[] shift = new double[3];
      for (int row = 0; row < 3; row++) {
        for (int band = 0; band < Bands.COUNT; band++) {
          shift[row] += slope[row][band] * (moved.get(0)[band] - seen[band]) * times;
        }
      }
      double[][] covariance = new double[3][3];
      for (int i = 0; i < 3; i++) {
        for (int j = 0; j < 3; j++) {
          covariance[i][j] = shift[i] * shift[j];
        }
      }
      return covariance;
    }
  }
}
