package io.github.swatchwright.ciede2000;

/**
 * Some hues of CIEDE2000, and what its terms that depend on the mean hue come to at the most there.
 *
 * @param middle in radians, −π to π
 * @param half how far they reach to either side, at least 0
 */
record HueInterval(double middle, double half) {
  /** T = 1 − 0.17cos(h̄′ − 30°) + …: the sum of the coefficients. */
  static final double LARGEST_T = 1.93;

  /** −R_T / √(C⁷ / (C⁷ + 25⁷)) is at most 2 sin 60°. */
  static final double MOST_ROTATION = Math.sqrt(3);

  /** The sum of the coefficients of T's derivative. */
  private static final double STEEPEST_T = 0.17 + 2 * 0.24 + 3 * 0.32 + 4 * 0.20;

  private static final double BLUE = Math.toRadians(275);

  /** Every hue. */
  static final HueInterval ALL = new HueInterval(0, Math.PI);

  /** No less than the largest 2 sin 2Δθ: where the hue comes nearest to 275°. */
  double mostRotation() {
    double apart = positive() - BLUE;
    double nearest = Math.abs(holdsZero() ? Math.IEEEremainder(apart, 2 * Math.PI) : apart);
    return rotation(Math.max(0, nearest - half));
  }

  /** No more than the smallest. */
  double leastRotation() {
    return holdsZero() ? 0 : rotation(Math.abs(positive() - BLUE) + half);
  }

  /** Δθ takes the hue from 0° to below 360°: 5° is 270° away from 275°, and not 90°. */
  private double positive() {
    return middle < 0 ? middle + 2 * Math.PI : middle;
  }

  private boolean holdsZero() {
    return positive() < half || positive() + half >= 2 * Math.PI;
  }

  private static double rotation(double apart) {
    double x = Math.toDegrees(apart) / 25;
    return 2 * Math.sin(Math.toRadians(60 * Math.exp(-x * x)));
  }

  /** No less than the largest T. */
  double mostT() {
    return Math.min(LARGEST_T, t() + STEEPEST_T * half);
  }

  /** No more than the smallest T. */
  double leastT() {
    return Math.max(2 - LARGEST_T, t() - STEEPEST_T * half);
  }

  private double t() {
    return 1
        - 0.17 * Math.cos(middle - Math.toRadians(30))
        + 0.24 * Math.cos(2 * middle)
        + 0.32 * Math.cos(3 * middle + Math.toRadians(6))
        - 0.20 * Math.cos(4 * middle - Math.toRadians(63));
  }
}
