package io.github.swatchwright.colour;

/** The compressive curve of CIELAB and its inverse, with the exact constants of CIE 15:2018. */
final class CielabCurve {
  static final double EPSILON = 216.0 / 24389;
  private static final double KAPPA = 24389.0 / 27;

  private CielabCurve() {}

  /** f(t): the cube root, with its straight start below ε. */
  static double encode(double t) {
    return t > EPSILON ? Math.cbrt(t) : (KAPPA * t + 16) / 116;
  }

  /** t of f. */
  static double decode(double f) {
    double cube = f * f * f;
    return cube > EPSILON ? cube : (116 * f - 16) / KAPPA;
  }
}
