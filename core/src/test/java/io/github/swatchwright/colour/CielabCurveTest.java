package io.github.swatchwright.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CielabCurveTest {
  /** A step of a ten thousandth leaves a third-order error below a part in ten million. */
  @ParameterizedTest(name = "at {0}")
  @ValueSource(doubles = {0.0001, 0.005, 0.0088, 0.0089, 0.02, 0.18, 0.5, 1, 1.4})
  void theSlopeIsThatOfTheCurve(double t) {
    double step = 1e-4 * t;
    double rise = CielabCurve.encode(t + step) - CielabCurve.encode(t - step);
    assertThat(CielabCurve.slope(t)).isCloseTo(rise / (2 * step), withPercentage(1e-5));
  }
}
