package io.github.swatchwright.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class WhitePointTest {

  @Test
  void whiteIsLabWhiteOfItself() {
    for (WhitePoint white : new WhitePoint[] {WhitePoint.D65, WhitePoint.D50}) {
      assertThat(white.toXyz().toLab()).isEqualTo(new Lab(100, 0, 0, white));
    }
    assertThat(Srgb.parse("#FFFFFF").toLab().l()).isCloseTo(100, within(1e-12));
  }

  @Test
  void adaptationTakesWhiteToWhite() {
    Xyz adapted = WhitePoint.D65.toXyz().adaptTo(WhitePoint.D50);
    assertThat(adapted.x()).isCloseTo(WhitePoint.D50.xn(), within(1e-12));
    assertThat(adapted.y()).isCloseTo(100, within(1e-12));
    assertThat(adapted.z()).isCloseTo(WhitePoint.D50.zn(), within(1e-12));
    assertThat(adapted.white()).isEqualTo(WhitePoint.D50);
  }

  @Test
  void chromaticitiesGiveThePrintedWhites() {
    // CIE 15:2018, tables of illuminants: x and y to five decimals, X and Z to two.
    WhitePoint a = WhitePoint.ofChromaticity(0.44758, 0.40745);
    assertThat(a.xn()).isCloseTo(109.85, within(0.006));
    assertThat(a.yn()).isEqualTo(100);
    assertThat(a.zn()).isCloseTo(35.58, within(0.006));
    // The equal-energy point.
    WhitePoint e = WhitePoint.ofChromaticity(1 / 3.0, 1 / 3.0);
    assertThat(e.xn()).isCloseTo(100, within(1e-12));
    assertThat(e.zn()).isCloseTo(100, within(1e-12));
  }

  @Test
  void whitesThatNoLightHasAreRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new WhitePoint(95, 0, 108))
        .withMessage("yn is 0.0, must be a finite number above 0");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> WhitePoint.ofChromaticity(0.3, -0.1))
        .withMessage("y is -0.1, must be within [0.0, 1.0]");
    assertThatIllegalArgumentException().isThrownBy(() -> WhitePoint.ofChromaticity(0.3, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> WhitePoint.ofChromaticity(0.7, 0.5));
  }

  @Test
  void namedWhitesSayTheirName() {
    assertThat(WhitePoint.D65).hasToString("D65");
    assertThat(new WhitePoint(100, 100, 100)).hasToString("white(100.0, 100.0, 100.0)");
  }
}
