package io.github.swatchwright.spectrum;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ReflectanceTest {

  private static double[] sampled(double from, double step, int count, DoubleUnaryOperator curve) {
    return IntStream.range(0, count)
        .mapToDouble(i -> curve.applyAsDouble(from + i * step))
        .toArray();
  }

  private static double cubic(double nm) {
    double t = (nm - 550) / 200;
    return 0.5 + 0.3 * t - 0.2 * t * t + 0.1 * t * t * t;
  }

  @Test
  void valuesAreCopiedInAndOut() {
    double[] values = sampled(380, 10, 36, ReflectanceTest::cubic);
    Reflectance reflectance = Reflectance.of(values);
    values[3] = 0.99;
    reflectance.toArray()[4] = 0.99;
    assertThat(reflectance.at(3)).isEqualTo(cubic(410));
    assertThat(reflectance.at(4)).isEqualTo(cubic(420));
  }

  @Test
  void equalityIsByValue() {
    Reflectance half = Reflectance.constant(0.5);
    double[] values = new double[Bands.COUNT];
    Arrays.fill(values, 0.5);
    assertThat(half).isEqualTo(Reflectance.of(values)).hasSameHashCodeAs(Reflectance.of(values));
    values[35] = 0.25;
    assertThat(half).isNotEqualTo(Reflectance.of(values));
    assertThat(half.hashCode()).isNotEqualTo(Reflectance.of(values).hashCode());
    assertThat(half.toString()).startsWith("Reflectance[0.5, 0.5");
  }

  @Test
  void nonsenseIsRefusedWithBandValueAndRange() {
    double[] values = new double[Bands.COUNT];
    values[2] = 1.25;
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Reflectance.of(values))
        .withMessage("reflectance at 400 nm is 1.25, must be within [0.0, 1.0]");
    values[2] = Double.NaN;
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Reflectance.of(values))
        .withMessageContaining("NaN");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Reflectance.of(0.5, 0.5))
        .withMessage("number of bands is 2, must be within [36, 36]");
    values[2] = 1;
    values[35] = -0.25;
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Reflectance.of(values))
        .withMessage("reflectance at 730 nm is -0.25, must be within [0.0, 1.0]");
    assertThatIllegalArgumentException().isThrownBy(() -> Reflectance.constant(-0.1));
  }

  @Test
  void measuredOnTheNativeGridIsTakenAsItIs() {
    double[] values = sampled(380, 10, 36, nm -> 0.5 + 0.4 * Math.sin(nm));
    assertThat(Reflectance.ofMeasured(380, 10, values)).isEqualTo(Reflectance.of(values));
  }

  @Test
  void finerTablesGiveTheirSamplesAtTheBands() {
    for (double step : new double[] {1, 2, 5}) {
      int count = (int) Math.round(400 / step) + 1;
      double[] values = sampled(360, step, count, nm -> 0.5 + 0.4 * Math.sin(nm));
      Reflectance reflectance = Reflectance.ofMeasured(360, step, values);
      for (int band = 0; band < Bands.COUNT; band++) {
        double expected = 0.5 + 0.4 * Math.sin(Bands.wavelengthNm(band));
        // The wavelength is rebuilt as from + i·step: exact for these steps.
        assertThat(reflectance.at(band)).isEqualTo(expected);
      }
    }
  }

  @Test
  void coarserTablesFollowACubicExactlyAndHoldTheirEnds() {
    Reflectance reflectance =
        Reflectance.ofMeasured(400, 20, sampled(400, 20, 16, ReflectanceTest::cubic));
    for (int band = 2; band <= 32; band++) {
      // Lagrange's cubic reproduces a cubic but for rounding.
      assertThat(reflectance.at(band)).isCloseTo(cubic(Bands.wavelengthNm(band)), within(1e-14));
    }
    assertThat(reflectance.at(0)).isEqualTo(cubic(400));
    assertThat(reflectance.at(1)).isEqualTo(cubic(400));
    assertThat(reflectance.at(33)).isEqualTo(cubic(700));
    assertThat(reflectance.at(35)).isEqualTo(cubic(700));
  }

  @Test
  void gridsThatMissTheBandsAreInterpolated() {
    Reflectance reflectance =
        Reflectance.ofMeasured(383.3, 3.3, sampled(383.3, 3.3, 110, ReflectanceTest::cubic));
    assertThat(reflectance.at(0)).isEqualTo(cubic(383.3));
    for (int band = 1; band < Bands.COUNT; band++) {
      assertThat(reflectance.at(band)).isCloseTo(cubic(Bands.wavelengthNm(band)), within(1e-14));
    }
  }

  @Test
  void overshootBetweenSamplesIsCutOff() {
    double[] step = sampled(400, 20, 16, nm -> nm < 550 ? 0 : 1);
    for (double value : Reflectance.ofMeasured(400, 20, step).toArray()) {
      assertThat(value).isBetween(0.0, 1.0);
    }
  }

  @Test
  void measurementsThatSayTooLittleAreRefused() {
    double[] sixteen = new double[16];
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Reflectance.ofMeasured(500, 10, sixteen))
        .withMessage("fromNm is 500.0, must be within [1.0, 450.0]");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Reflectance.ofMeasured(400, 10, sixteen))
        .withMessageStartingWith("wavelength of the last value is 550.0, must be within [650.0");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Reflectance.ofMeasured(400, 0, sixteen))
        .withMessageStartingWith("stepNm is 0.0");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Reflectance.ofMeasured(400, 100, sixteen))
        .withMessageStartingWith("stepNm is 100.0");
    double[] percent = sampled(400, 20, 16, nm -> 45);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Reflectance.ofMeasured(400, 20, percent))
        .withMessage("reflectance at 400.0 nm is 45.0, must be within [0.0, 1.0]");
    double[] dip = sampled(400, 20, 16, nm -> nm == 460 ? -0.1 : 0.45);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Reflectance.ofMeasured(400, 20, dip))
        .withMessage("reflectance at 460.0 nm is -0.1, must be within [0.0, 1.0]");
  }
}
