package io.github.swatchwright.difference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.WhitePoint;
import org.junit.jupiter.api.Test;

/** CIE76, CIE94 and CMC where the weights can be worked out by hand. */
class OlderFormulasTest {
  private static final double ROUNDING = 1e-12;
  private static final Lab GREY = Lab.ofD65(50, 0, 0);
  private static final Lab REDDISH = Lab.ofD65(50, 20, 0);

  @Test
  void cie76IsTheDistance() {
    assertThat(Cie76.deltaE(Lab.ofD65(50, 1, 2), Lab.ofD65(52, 4, 8)))
        .isCloseTo(7, within(ROUNDING));
  }

  @Test
  void cie94WeighsByTheReference() {
    assertThat(Cie94.GRAPHIC_ARTS.deltaE(GREY, REDDISH)).isCloseTo(20, within(ROUNDING));
    assertThat(Cie94.GRAPHIC_ARTS.deltaE(REDDISH, GREY)).isCloseTo(20 / 1.9, within(ROUNDING));
    assertThat(Cie94.TEXTILES.deltaE(REDDISH, GREY)).isCloseTo(20 / 1.96, within(ROUNDING));
  }

  @Test
  void cmcWeighsByTheReference() {
    double sC = 0.0638 * 20 / (1 + 0.0131 * 20) + 0.638;
    assertThat(Cmc.PERCEPTIBILITY.deltaE(GREY, REDDISH)).isCloseTo(20 / 0.638, within(ROUNDING));
    assertThat(Cmc.PERCEPTIBILITY.deltaE(REDDISH, GREY)).isCloseTo(20 / sC, within(ROUNDING));
  }

  @Test
  void cmcOfDarkColoursHasAConstantLightnessWeight() {
    assertThat(Cmc.withTolerances(2, 1).deltaE(Lab.ofD65(10, 0, 0), Lab.ofD65(11, 0, 0)))
        .isCloseTo(1 / (2 * 0.511), within(ROUNDING));
    // From L* = 16 on the other rule holds, which is a little more there (BS 6923).
    double sL = 0.040975 * 16 / (1 + 0.01765 * 16);
    assertThat(Cmc.withTolerances(2, 1).deltaE(Lab.ofD65(16, 0, 0), Lab.ofD65(17, 0, 0)))
        .isCloseTo(1 / (2 * sL), within(ROUNDING));
  }

  @Test
  void identicalColoursDifferByNothing() {
    Lab colour = Lab.ofD65(41.3, -7.1, 23.9);
    assertThat(Cie76.deltaE(colour, colour)).isZero();
    assertThat(Cie94.GRAPHIC_ARTS.deltaE(colour, colour)).isZero();
    assertThat(Cmc.ACCEPTABILITY.deltaE(colour, colour)).isZero();
    assertThat(Cmc.ACCEPTABILITY.deltaE(GREY, GREY)).isZero();
  }

  @Test
  void differentWhitesAreRefusedByAll() {
    Lab other = new Lab(50, 0, 0, WhitePoint.D50);
    assertThatThrownBy(() -> Cie76.deltaE(GREY, other))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Cie94.TEXTILES.deltaE(GREY, other))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Cmc.PERCEPTIBILITY.deltaE(GREY, other))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void tolerancesMustBeAboveZero() {
    assertThatThrownBy(() -> Cmc.withTolerances(0, 1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith("l is 0.0");
  }
}
