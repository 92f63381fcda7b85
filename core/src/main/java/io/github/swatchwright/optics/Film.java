package io.github.swatchwright.optics;

import io.github.swatchwright.argument.Require;

/**
 * A film of finite thickness in one band, by Kubelka's hyperbolic solution (Kubelka 1948).
 *
 * <p>With a = 1 + K/S, b = √(a² − 1) and y = bSX = X·√(K² + 2KS), the textbook forms
 *
 * <pre>
 * R0 = sinh y / (a sinh y + b cosh y)      T = b / (a sinh y + b cosh y)
 * </pre>
 *
 * are divided by b·cosh y and written with τ = tanh(y)/y, which is 1 at y = 0:
 *
 * <pre>
 * R0 = SXτ / ((K + S)Xτ + 1)      T = sech y / ((K + S)Xτ + 1)
 * </pre>
 *
 * so that a clear film (S = 0), a film without absorption (K = 0) and no film at all are ordinary
 * values and not limits.
 *
 * @param k absorption K per unit of thickness, at least 0
 * @param s scattering S per unit of thickness, at least 0; a typical white has 1
 * @param x thickness, at least 0; a coat is {@value #COAT}
 */
public record Film(double k, double s, double x) {

  /** The thickness of one coat of the usual wet thickness. */
  public static final double COAT = 3;

  private static final double SERIES_BELOW = 0.01;

  /** Refuses negative numbers and those that are not finite. */
  public Film {
    Require.nonNegative("k", k);
    Require.nonNegative("s", s);
    Require.nonNegative("x", x);
  }

  private double extinction() {
    return x * Math.sqrt(k * (k + 2 * s));
  }

  /** (K + S)Xτ + 1 for y = the extinction. */
  private static double denominator(double k, double s, double x, double tau) {
    return (k + s) * x * tau + 1;
  }

  /** tanh(y)/y by one exponential; below 0.01, where that loses digits, by its series to y⁶. */
  private static double tau(double y) {
    if (y < SERIES_BELOW) {
      double t = y * y;
      return 1 + t * (-1.0 / 3 + t * (2.0 / 15 - t * 17 / 315));
    }
    double e = Math.exp(-2 * y);
    return (1 - e) / ((1 + e) * y);
  }

  /** R0: internal reflectance over a base that reflects nothing, 0 to below 1. */
  public double reflectanceOverBlack() {
    double tau = tau(extinction());
    return s * x * tau / denominator(k, s, x, tau);
  }

  /** T: the share of diffuse light that one passage lets through, 0 to 1. */
  public double transmittance() {
    double y = extinction();
    return 1 / (StrictMath.cosh(y) * denominator(k, s, x, tau(y)));
  }

  /**
   * R over a base: R0 + T²·Rg / (1 − R0·Rg).
   *
   * @param rg internal reflectance of the base, 0 to 1
   */
  public double reflectanceOver(double rg) {
    Require.within("rg", rg, 0, 1);
    return over(k, s, x, rg);
  }

  /**
   * The same without an object, for whole spectra, with sech² = 1 − tanh²; rounding never takes it
   * above 1.
   */
  static double over(double k, double s, double x, double rg) {
    double y = x * Math.sqrt(k * (k + 2 * s));
    double tau = tau(y);
    double denominator = denominator(k, s, x, tau);
    return over(s * x * tau / denominator, tSquared(tau * y, denominator), rg);
  }

  /**
   * The same over two bases, which share what the film alone does.
   *
   * @param into receives R over each base in one band: a row for each base
   */
  static void over(
      double k, double s, double x, double first, double second, double[][] into, int band) {
    double y = x * Math.sqrt(k * (k + 2 * s));
    double tau = tau(y);
    double denominator = denominator(k, s, x, tau);
    double r0 = s * x * tau / denominator;
    double tSquared = tSquared(tau * y, denominator);
    into[0][band] = over(r0, tSquared, first);
    into[1][band] = over(r0, tSquared, second);
  }

  private static double tSquared(double tanh, double denominator) {
    return (1 - tanh) * (1 + tanh) / (denominator * denominator);
  }

  private static double over(double r0, double tSquared, double rg) {
    return Math.min(1, r0 + tSquared * rg / (1 - r0 * rg));
  }
}
