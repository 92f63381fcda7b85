package io.github.swatchwright.ciede2000;

import java.math.BigDecimal;

/**
 * The sign of p·q + r·s without rounding. Opposite and mirrored hues sit on jumps of CIEDE2000, and
 * there the last bit decides.
 */
final class ExactSign {
  private ExactSign() {}

  /**
   * -1, 0 or 1. Rounding a product keeps order, so that the rounded products tell the sign unless
   * they cancel.
   */
  static int ofSum(double p, double q, double r, double s) {
    double rounded = p * q + r * s;
    if (rounded != 0) {
      return rounded > 0 ? 1 : -1;
    }
    return new BigDecimal(p)
        .multiply(new BigDecimal(q))
        .add(new BigDecimal(r).multiply(new BigDecimal(s)))
        .signum();
  }
}
