package io.github.swatchwright.ciede2000;

/**
 * CIEDE2000's sin 2Δθ with Δθ = 30°·exp(−((h̄′ − 275°)/25°)²): the bend of the tolerance ellipses
 * in the blue region. It is a smooth function of w = 1 − cos(h̄′ − 275°), which needs no angle.
 *
 * <p>The formula isn't periodic: with h̄′ from 0° to below 360°, it jumps at 0° from 1e-5 to 0. So
 * from 0° to 90°, where w doesn't know on which side of the jump it is, the value is 0.
 */
final class HueRotation {
  private static final double CENTRE_COS = Math.cos(Math.toRadians(275));
  private static final double CENTRE_SIN = Math.sin(Math.toRadians(275));
  private static final PiecewisePolynomial SINE =
      new PiecewisePolynomial(HueRotation::formula, 2, 128);

  private HueRotation() {}

  /**
   * sin 2Δθ, within 1e-14.
   *
   * @param x cosine of the mean hue h̄′, times some length
   * @param y sine of the mean hue, times that length
   * @param inverse 1 / length
   * @param doubled a number with the sign of sin 2h̄′; on the half circle about 45°, where x + y is
   *     above 0, it tells exactly whether the mean hue is in 0° to 90°
   */
  static double sine(double x, double y, double inverse, double doubled) {
    if (x + y > 0 && doubled >= 0) {
      return 0;
    }
    return SINE.at(Math.abs(1 - (x * CENTRE_COS + y * CENTRE_SIN) * inverse));
  }

  /** The formula itself, of w. */
  static double formula(double w) {
    double x = Math.toDegrees(2 * Math.asin(Math.sqrt(Math.min(w / 2, 1)))) / 25;
    return Math.sin(Math.toRadians(60 * Math.exp(-x * x)));
  }
}
