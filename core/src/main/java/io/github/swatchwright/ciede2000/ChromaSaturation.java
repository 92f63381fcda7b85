package io.github.swatchwright.ciede2000;

/**
 * CIEDE2000's √(C⁷ / (C⁷ + 25⁷)), which is 0 for greys and near 1 for vivid colours. It sets how
 * far greys are spread along a* (equation 4) and how much the blue region is bent (equation 17).
 */
final class ChromaSaturation {
  private static final double C25_7 = 6103515625.0;

  /** Nearer to 0 the function is C^3.5, which no polynomial follows. */
  private static final double TABLE_START = 1;

  /** Beyond any surface's colour. */
  private static final double TABLE_END = 128;

  private static final PiecewisePolynomial TABLE =
      new PiecewisePolynomial(ChromaSaturation::formula, TABLE_END, 2);

  private ChromaSaturation() {}

  /** The value for a chroma of 0 to 1e40, within 1e-14. */
  static double of(double chroma) {
    return chroma > TABLE_START && chroma < TABLE_END ? TABLE.at(chroma) : formula(chroma);
  }

  private static double formula(double chroma) {
    double square = chroma * chroma;
    double c7 = square * square * square * chroma;
    return Math.sqrt(c7 / (c7 + C25_7));
  }
}
