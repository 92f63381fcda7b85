package io.github.swatchwright.difference;

/**
 * CIEDE2000's sin 2Δθ with Δθ = 30°·exp(−((h̄′ − 275°)/25°)²): the bend of the tolerance ellipses
 * in the blue region. As a function of t = tan((h̄′ − 275°)/2), which needs no angle, it is smooth
 * and fades out towards both ends; it is held here as short polynomials in t, within 1e-15 of the
 * formula.
 */
final class HueRotation {
  private static final double CENTRE_COS = Math.cos(Math.toRadians(275));
  private static final double CENTRE_SIN = Math.sin(Math.toRadians(275));
  private static final int PIECES_PER_UNIT = 64;

  /** tan(150.0°/2) = 3.73: sin 2Δθ is below 3e-16 there. */
  private static final double LARGEST_T = 3.75;

  private static final int PIECES = (int) (LARGEST_T * PIECES_PER_UNIT);
  private static final int TERMS = 8;
  private static final double[] COEFFICIENTS = coefficients();

  private HueRotation() {}

  /**
   * sin 2Δθ for the mean hue of a vector, which is below 360° and at least 0°: on which side of
   * this seam it lies is for the caller to tell.
   *
   * @param x length · cos h̄′
   * @param y length · sin h̄′
   * @param length above 0
   */
  static double sine(double x, double y, double length) {
    double along = length + x * CENTRE_COS + y * CENTRE_SIN;
    double across = Math.abs(y * CENTRE_COS - x * CENTRE_SIN);
    return across < LARGEST_T * along ? ofTangent(across / along) : 0;
  }

  private static double ofTangent(double t) {
    double scaled = t * PIECES_PER_UNIT;
    int piece = Math.min((int) scaled, PIECES - 1);
    double u = scaled - piece - 0.5;
    double u2 = u * u;
    int k = piece * TERMS;
    double[] c = COEFFICIENTS;
    double low = c[k] + c[k + 1] * u + u2 * (c[k + 2] + c[k + 3] * u);
    double high = c[k + 4] + c[k + 5] * u + u2 * (c[k + 6] + c[k + 7] * u);
    return low + u2 * u2 * high;
  }

  /** Interpolating polynomials in u = −½ … ½ across each piece, through Chebyshev's nodes. */
  private static double[] coefficients() {
    double[] coefficients = new double[PIECES * TERMS];
    double[] u = new double[TERMS];
    for (int i = 0; i < TERMS; i++) {
      u[i] = 0.5 * Math.cos(Math.PI * (i + 0.5) / TERMS);
    }
    for (int piece = 0; piece < PIECES; piece++) {
      double[] newton = new double[TERMS];
      for (int i = 0; i < TERMS; i++) {
        newton[i] = formula((piece + 0.5 + u[i]) / PIECES_PER_UNIT);
      }
      for (int order = 1; order < TERMS; order++) {
        for (int i = TERMS - 1; i >= order; i--) {
          newton[i] = (newton[i] - newton[i - 1]) / (u[i] - u[i - order]);
        }
      }
      expand(newton, u, coefficients, piece * TERMS);
    }
    return coefficients;
  }

  /** Newton's form to powers of u. */
  private static void expand(double[] newton, double[] u, double[] into, int at) {
    for (int i = TERMS - 1; i >= 0; i--) {
      for (int power = TERMS - 1; power > 0; power--) {
        into[at + power] = into[at + power - 1] - u[i] * into[at + power];
      }
      into[at] = newton[i] - u[i] * into[at];
    }
  }

  private static double formula(double t) {
    double x = Math.toDegrees(2 * Math.atan(t)) / 25;
    return Math.sin(Math.toRadians(60 * Math.exp(-x * x)));
  }
}
