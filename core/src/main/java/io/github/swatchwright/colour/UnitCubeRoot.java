package io.github.swatchwright.colour;

/**
 * Cube roots of numbers from 2⁻⁷ to below 2, where CIELAB needs them for colours up to the white,
 * several times faster than {@link Math#cbrt}. A number is split into 2ᵉ·m with m in [1, 2); the
 * root of m is the binomial series about the middle of one of 128 pieces, cut off after the 4th
 * power. The first term left out is 22/729·(1/256)⁵, so that the result is within 3e-14 of its
 * size.
 */
final class UnitCubeRoot {
  private static final int PIECE_BITS = 7;
  private static final int PIECES = 1 << PIECE_BITS;
  private static final int MANTISSA_BITS = 52;
  private static final int PIECE_SHIFT = MANTISSA_BITS - PIECE_BITS;
  private static final long MANTISSA = (1L << MANTISSA_BITS) - 1;
  private static final long ONE = Double.doubleToRawLongBits(1);
  private static final int LOWEST_EXPONENT = -7;

  /** The coefficients of (1 + x)^(1/3). */
  private static final double[] BINOMIAL = {1, 1.0 / 3, -1.0 / 9, 5.0 / 81, -10.0 / 243};

  private static final int TERMS = BINOMIAL.length;
  private static final double[] SERIES = series();
  private static final double[] ROOTS_OF_TWO_POWERS = rootsOfTwoPowers();

  private UnitCubeRoot() {}

  /** The cube root of {@code t}, 2⁻⁷ to below 2. */
  static double of(double t) {
    long bits = Double.doubleToRawLongBits(t);
    double m = Double.longBitsToDouble((bits & MANTISSA) | ONE);
    int piece = (int) (bits >>> PIECE_SHIFT) & (PIECES - 1);
    double u = m - middle(piece);
    int k = piece * TERMS;
    double u2 = u * u;
    double root =
        SERIES[k]
            + SERIES[k + 1] * u
            + u2 * (SERIES[k + 2] + SERIES[k + 3] * u + SERIES[k + 4] * u2);
    return ROOTS_OF_TWO_POWERS[Math.getExponent(t) - LOWEST_EXPONENT] * root;
  }

  private static double middle(int piece) {
    return 1 + (piece + 0.5) / PIECES;
  }

  private static double[] series() {
    double[] series = new double[PIECES * TERMS];
    for (int piece = 0; piece < PIECES; piece++) {
      double middle = middle(piece);
      for (int power = 0; power < TERMS; power++) {
        series[piece * TERMS + power] =
            StrictMath.cbrt(middle) * BINOMIAL[power] / Math.pow(middle, power);
      }
    }
    return series;
  }

  private static double[] rootsOfTwoPowers() {
    double[] roots = new double[1 - LOWEST_EXPONENT];
    for (int i = 0; i < roots.length; i++) {
      roots[i] = StrictMath.cbrt(Math.scalb(1.0, i + LOWEST_EXPONENT));
    }
    return roots;
  }
}
