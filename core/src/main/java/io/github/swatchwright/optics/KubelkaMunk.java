package io.github.swatchwright.optics;

import io.github.swatchwright.argument.Require;

/**
 * Opaque paint: reflectance at full hiding and the ratio q = K/S (Kubelka and Munk 1931; Kubelka
 * 1948). Internal reflectance throughout.
 */
public final class KubelkaMunk {
  private KubelkaMunk() {}

  /**
   * q = (1 − R)² / 2R.
   *
   * @param r internal reflectance at full hiding, above 0 to 1
   */
  public static double absorptionRatio(double r) {
    Require.positive("r", r);
    Require.within("r", r, 0, 1);
    return (1 - r) * (1 - r) / (2 * r);
  }

  /**
   * R∞ = 1 + q − √(q² + 2q), in the form 1 / (1 + q + √(q² + 2q)), which loses no digits for dark
   * paint.
   *
   * @param q K/S, at least 0
   */
  public static double reflectance(double q) {
    Require.nonNegative("q", q);
    return 1 / (1 + q + Math.sqrt(q * (q + 2)));
  }

  /**
   * R∞ from K and S themselves.
   *
   * @param k absorption, at least 0
   * @param s scattering, above 0
   */
  static double reflectance(double k, double s) {
    return s / divisor(k, s);
  }

  /** D = K + S + √(K² + 2KS), what S is divided by to give R∞. */
  static double divisor(double k, double s) {
    return k + s + Math.sqrt(k * (k + 2 * s));
  }
}
