package io.github.swatchwright.ciede2000;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class PiecewisePolynomialTest {
  private static double seventhDegree(double x) {
    return 1 + x * (-2 + x * (0.5 + x * (3 + x * (-1 + x * (0.25 + x * (-0.5 + x * 0.125))))));
  }

  @Test
  void aPolynomialOfTheSeventhDegreeIsItself() {
    PiecewisePolynomial pieces =
        new PiecewisePolynomial(PiecewisePolynomialTest::seventhDegree, 2, 4);
    for (int i = 0; i <= 2000; i++) {
      double x = i / 1000.0;
      // Rounding alone; the values stay below 10.
      assertThat(pieces.at(x)).as("at %s", x).isCloseTo(seventhDegree(x), within(1e-13));
    }
  }

  @Test
  void aSmoothFunctionIsMetAsCloselyAsChebyshevsNodesPromise() {
    int perUnit = 2;
    PiecewisePolynomial pieces = new PiecewisePolynomial(Math::exp, 3, perUnit);
    double width = 1.0 / perUnit;
    // Interpolation at 8 Chebyshev nodes: |f⁗⁗|·(width/2)⁸ / (2⁷·8!), e³ the most derivative.
    double promised = Math.exp(3) * Math.pow(width / 2, 8) / (128 * 40320.0);
    double worst = 0;
    for (int i = 0; i < 30_000; i++) {
      double x = i / 10_000.0;
      worst = Math.max(worst, Math.abs(pieces.at(x) - Math.exp(x)));
    }
    // And rounding of values up to 20.
    assertThat(worst).isBetween(promised / 4, promised + 2e-14);
  }
}
