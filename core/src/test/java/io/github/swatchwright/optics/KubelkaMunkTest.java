package io.github.swatchwright.optics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KubelkaMunkTest {
  @ParameterizedTest(name = "q = (1-R)^2/2R, worked by hand: R = {0}, q = {1}")
  @CsvSource({"0.04, 11.52", "0.1, 4.05", "0.25, 1.125", "0.5, 0.25", "0.8, 0.025", "1, 0"})
  void ratioOfAReflectanceIsTheWorkedFigure(double r, double q) {
    assertThat(KubelkaMunk.absorptionRatio(r)).isCloseTo(q, within(1e-14));
    assertThat(KubelkaMunk.reflectance(q)).isCloseTo(r, within(1e-14));
  }

  @Test
  void reflectanceAtRatioOneIsTwoMinusRootThree() {
    assertThat(KubelkaMunk.reflectance(1)).isCloseTo(2 - Math.sqrt(3), within(1e-15));
  }

  @Property
  void ratioAndReflectanceAreInversesToTheLastDigits(
      @ForAll @Scale(9) @DoubleRange(min = 1e-9, max = 0.999) double r) {
    double back = KubelkaMunk.reflectance(KubelkaMunk.absorptionRatio(r));
    // Relative: near R = 1, q is a small number squared, and half of the digits of 1 − R remain.
    assertThat(back / r).isCloseTo(1, within(1e-12));
  }

  @Test
  void impossibleValuesAreRefusedWithTheirRange() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> KubelkaMunk.absorptionRatio(0))
        .withMessage("r is 0.0, must be a finite number above 0");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> KubelkaMunk.absorptionRatio(1.5))
        .withMessage("r is 1.5, must be within [0.0, 1.0]");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> KubelkaMunk.reflectance(Double.NaN))
        .withMessageContaining("q is NaN");
  }
}
