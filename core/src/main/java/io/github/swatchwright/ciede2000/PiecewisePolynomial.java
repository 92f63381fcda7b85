package io.github.swatchwright.ciede2000;

import java.util.function.DoubleUnaryOperator;

/**
 * A smooth function from 0 to some limit, held as polynomials of 7th degree over equal pieces; each
 * goes through the function at Chebyshev's nodes. It stands in for square roots and exponentials
 * where these would cost most of the time. How far it is off depends on the function and the
 * pieces, and is tested for each use. The function is also asked for one piece beyond the limit.
 */
final class PiecewisePolynomial {
  private static final int TERMS = 8;

  /** Adding it leaves a number rounded to an integer, which is the low half of the bits. */
  private static final double TO_INTEGER = 0x1.8p52;

  private final double piecesPerUnit;
  private final double[] coefficients;

  PiecewisePolynomial(DoubleUnaryOperator function, double limit, int piecesPerUnit) {
    this.piecesPerUnit = piecesPerUnit;
    int pieces = (int) Math.ceil(limit * piecesPerUnit) + 1;
    coefficients = new double[pieces * TERMS];
    for (int piece = 0; piece < pieces; piece++) {
      fit(function, piece);
    }
  }

  /** The function at {@code x}, which is within 0 and the limit, or above it by rounding. */
  double at(double x) {
    double scaled = x * piecesPerUnit - 0.5;
    double shifted = scaled + TO_INTEGER;
    double u = scaled - (shifted - TO_INTEGER);
    double u2 = u * u;
    double[] c = coefficients;
    int k = (int) Double.doubleToRawLongBits(shifted) * TERMS;
    double low = c[k] + c[k + 1] * u + u2 * (c[k + 2] + c[k + 3] * u);
    double high = c[k + 4] + c[k + 5] * u + u2 * (c[k + 6] + c[k + 7] * u);
    return low + u2 * u2 * high;
  }

  /** Newton's divided differences in u, which is −½ to ½ about the piece's middle. */
  private void fit(DoubleUnaryOperator function, int piece) {
    double[] u = new double[TERMS];
    double[] newton = new double[TERMS];
    for (int i = 0; i < TERMS; i++) {
      u[i] = 0.5 * Math.cos(Math.PI * (i + 0.5) / TERMS);
      newton[i] = function.applyAsDouble((piece + 0.5 + u[i]) / piecesPerUnit);
    }
    for (int order = 1; order < TERMS; order++) {
      for (int i = TERMS - 1; i >= order; i--) {
        newton[i] = (newton[i] - newton[i - 1]) / (u[i] - u[i - order]);
      }
    }
    expand(newton, u, piece * TERMS);
  }

  /** Newton's form to powers of u. */
  private void expand(double[] newton, double[] u, int at) {
    for (int i = TERMS - 1; i >= 0; i--) {
      for (int power = TERMS - 1; power > 0; power--) {
        coefficients[at + power] = coefficients[at + power - 1] - u[i] * coefficients[at + power];
      }
      coefficients[at] = newton[i] - u[i] * coefficients[at];
    }
  }
}
