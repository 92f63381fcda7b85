package io.github.swatchwright.estimate;

/**
 * An observation of the unknowns of one or several paints: what was measured, what a state of the
 * unknowns would have given, and how well it was measured.
 */
interface Evidence {

  /** The measured values. */
  double[] observed();

  /** What would have been measured in that state of the unknowns. */
  double[] predict(double[] state);

  /** Derivatives of {@link #predict}: a row for each value, a column for each unknown. */
  double[][] jacobian(double[] state);

  /** Covariance of the measured values' error, positive definite. */
  double[][] errorCovariance();
}
