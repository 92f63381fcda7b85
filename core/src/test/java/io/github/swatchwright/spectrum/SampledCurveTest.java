package io.github.swatchwright.spectrum;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.apache.commons.math3.analysis.polynomials.PolynomialFunctionLagrangeForm;
import org.junit.jupiter.api.Test;

class SampledCurveTest {
  private static final double FROM = 400;
  private static final double STEP = 20;
  private static final double[] ROUGH = rough();
  private static final SampledCurve CURVE = new SampledCurve(FROM, STEP, ROUGH);

  private static double[] rough() {
    SplittableRandom random = new SplittableRandom(4);
    double[] values = new double[16];
    Arrays.setAll(values, i -> random.nextDouble());
    return values;
  }

  /** Apache Commons Math through the samples from one on. */
  private static double reference(int first, int points, double nm) {
    double[] x = new double[points];
    Arrays.setAll(x, i -> FROM + STEP * (first + i));
    return PolynomialFunctionLagrangeForm.evaluate(
        x, Arrays.copyOfRange(ROUGH, first, first + points), nm);
  }

  @Test
  void betweenSamplesTheFourNearestDecide() {
    for (double nm = 401; nm < 700; nm += 3.7) {
      int below = (int) ((nm - FROM) / STEP);
      int first = Math.max(0, Math.min(below - 1, 12));
      assertThat(CURVE.at(nm)).as("%s nm", nm).isCloseTo(reference(first, 4, nm), within(1e-12));
    }
  }

  @Test
  void samplesAreTakenAsTheyAreAndEndsAreHeld() {
    for (int i = 0; i < 16; i++) {
      assertThat(CURVE.at(FROM + STEP * i)).isEqualTo(ROUGH[i]);
      // A rounding error in the wavelength is no distance.
      assertThat(CURVE.at(Math.nextUp(FROM + STEP * i))).isEqualTo(ROUGH[i]);
    }
    assertThat(CURVE.at(300)).isEqualTo(ROUGH[0]);
    assertThat(CURVE.at(900)).isEqualTo(ROUGH[15]);
    assertThat(CURVE.lastNm()).isEqualTo(700);
  }

  @Test
  void fewSamplesGiveALineOrAParabola() {
    SampledCurve line = new SampledCurve(400, 100, new double[] {0.2, 0.6});
    assertThat(line.at(425)).isCloseTo(0.3, within(1e-15));
    SampledCurve parabola = new SampledCurve(400, 100, new double[] {1, 4, 9});
    assertThat(parabola.at(550)).isCloseTo(6.25, within(1e-14));
    assertThat(parabola.at(450)).isCloseTo(2.25, within(1e-14));
  }
}
