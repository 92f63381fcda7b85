package io.github.swatchwright.estimate;

import java.util.Arrays;

/**
 * A patch that is still to be painted: what measuring it would take off the errors of other values.
 * In a Gaussian estimate that doesn't depend on what will be measured.
 */
public final class PlannedPatch {
  private final Dependence values;
  private final double[][] noise;
  private final LowerTriangle root;

  /**
   * A patch.
   *
   * @param values what will be measured of it
   * @param noise covariance of its error, lower triangle
   */
  PlannedPatch(Dependence values, double[][] noise) {
    this.values = values;
    this.noise = noise;
    double[][] spread = values.covariance();
    double[][] lower = new double[spread.length][];
    for (int i = 0; i < lower.length; i++) {
      lower[i] = Arrays.copyOf(spread[i], i + 1);
      for (int j = 0; j <= i; j++) {
        lower[i][j] += noise[i][j];
      }
    }
    root = LowerTriangle.factor(lower);
  }

  /** What the patch would take off the covariance of those values: Cov(v, p)·V(p)⁻¹·Cov(p, v). */
  public double[][] takesOff(Dependence of) {
    double[][] explained = explained(of);
    double[][] product = new double[explained.length][explained.length];
    for (int i = 0; i < explained.length; i++) {
      for (int j = 0; j < explained.length; j++) {
        product[i][j] = LowerTriangle.dot(explained[i], explained[j]);
      }
    }
    return product;
  }

  /** Those values, once this patch has been painted and measured. */
  public Dependence given(Dependence of) {
    return of.with(explained(of));
  }

  /** Another planned patch, once this one has been painted and measured. */
  public PlannedPatch given(PlannedPatch other) {
    return new PlannedPatch(given(other.values), other.noise);
  }

  private double[][] explained(Dependence of) {
    return Arrays.stream(of.covarianceWith(values)).map(root::forward).toArray(double[][]::new);
  }
}
