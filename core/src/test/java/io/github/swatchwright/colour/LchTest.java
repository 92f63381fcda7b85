package io.github.swatchwright.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class LchTest {

  @Test
  void hueAndChromaAreRefusedOutOfRange() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Lch(50, 10, OptionalDouble.of(360), WhitePoint.D65))
        .withMessageStartingWith("hueDegrees is 360.0, must be within [0.0, 359.99");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Lch(50, 10, OptionalDouble.of(Double.NaN), WhitePoint.D65))
        .withMessageStartingWith("hueDegrees is NaN");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Lch(50, -1, OptionalDouble.empty(), WhitePoint.D65))
        .withMessage("c is -1.0, must be a finite number of at least 0");
  }

  @Test
  void chromaWithoutAHueIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Lch(50, 10, OptionalDouble.empty(), WhitePoint.D65))
        .withMessage("c is 10.0 without a hue, must be below 1.0E-6");
    Lch grey = Lab.ofD65(50, 0, 0).toLch();
    assertThatIllegalArgumentException().isThrownBy(() -> grey.withChroma(10));
  }

  @Test
  void coordinatesAreThoseOfTheSameColour() {
    Lab lab = new Lch(50, 10, OptionalDouble.of(30), WhitePoint.D50).toLab();
    assertThat(lab.a()).isCloseTo(10 * Math.sqrt(3) / 2, within(1e-14));
    assertThat(lab.b()).isCloseTo(5, within(1e-14));
    assertThat(lab.white()).isEqualTo(WhitePoint.D50);
  }

  @Test
  void neutralColourStaysNeutral() {
    assertThat(Lab.ofD65(50, 0, 0).toLch().toLab()).isEqualTo(Lab.ofD65(50, 0, 0));
  }
}
