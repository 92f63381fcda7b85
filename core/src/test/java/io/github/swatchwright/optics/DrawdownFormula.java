package io.github.swatchwright.optics;

import io.github.swatchwright.argument.Require;

/**
 * What one film drawn over black and over white says in one band, in closed form: a second way to
 * what the estimate finds by search (Kubelka 1948; Judd and Wyszecki). Internal reflectances.
 *
 * @param q K/S of the film
 * @param sx its scattering power S·X
 */
public record DrawdownFormula(double q, double sx) {

  /**
   * Solves a = ½[R + (R0 − R + Rg) / (R0·Rg)] and SX = (1/b)·artanh[b·R0 / (1 − a·R0)].
   *
   * @param r0 reflectance over a base that reflects nothing, above 0 to below 1
   * @param r reflectance over the white base, above r0 to 1
   * @param rg reflectance of the white base, above 0 to 1
   * @throws IllegalArgumentException when no film gives these reflectances, or the film hides the
   *     base to the last digit, so that nothing says how thick it is
   */
  public static DrawdownFormula of(double r0, double r, double rg) {
    Require.positive("r0", r0);
    Require.within("r0", r0, 0, Math.nextDown(1.0));
    Require.positive("rg", rg);
    Require.within("rg", rg, 0, 1);
    Require.within("r", r, r0, 1);
    double a = (r + (r0 - r + rg) / (r0 * rg)) / 2;
    if (a < 1) {
      throw new IllegalArgumentException(
          "no film reflects r0 = " + r0 + " over black and r = " + r + " over rg = " + rg);
    }
    double b = Math.sqrt((a - 1) * (a + 1));
    double sx = b == 0 ? r0 / (1 - r0) : artanh(b * r0 / (1 - a * r0)) / b;
    if (!(sx > 0 && sx < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "a film with r0 = "
              + r0
              + " and r = "
              + r
              + " over rg = "
              + rg
              + " hides fully: its thickness can't be told");
    }
    return new DrawdownFormula(a - 1, sx);
  }

  private static double artanh(double t) {
    return (Math.log1p(t) - Math.log1p(-t)) / 2;
  }
}
