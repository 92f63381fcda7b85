package io.github.swatchwright.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LabTest {

  @ParameterizedTest
  @ValueSource(
      strings = {"lab(41.5, -20, 3e1)", " LAB( 41.5 , -20.0 , +30. ) ", "lab(41.5,-20,30)"})
  void functionFormIsReadWithCommas(String text) {
    assertThat(Lab.parse(text)).isEqualTo(Lab.ofD65(41.5, -20, 30));
  }

  @ParameterizedTest
  @ValueSource(strings = {"lab()", "lab(1, 2)", "lab(1, 2, 3, 4)", "lab(1,,2,3)", "lab(1, 2, 3) x"})
  void otherFormsAreRefusedWithAnExample(String text) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Lab.parse(text))
        .withMessage(
            "'" + text + "' is not a colour of the form lab(L, a, b), such as lab(41.5, 20, 30)");
  }

  @ParameterizedTest
  @ValueSource(strings = {"x", "1d", "0x1p3", "NaN", "Infinity", "1e", "٤"})
  void whatIsNoPlainNumberIsNamed(String number) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Lab.parse("lab(" + number + ", 0, 0)"))
        .withMessage("'" + number + "' in 'lab(" + number + ", 0, 0)' is not a number");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "lab(101, 0, 0); L* in 'lab(101, 0, 0)' is 101.0, must be within [0.0, 100.0]",
        "lab(-1, 0, 0); L* in 'lab(-1, 0, 0)' is -1.0, must be within [0.0, 100.0]",
        "lab(50, 161, 0); a* in 'lab(50, 161, 0)' is 161.0, must be within [-160.0, 160.0]",
        "lab(50, 0, -1e9); b* in 'lab(50, 0, -1e9)' is -1.0E9, must be within [-160.0, 160.0]"
      })
  void outOfRangeIsRefusedWithValueAndRange(String text, String message) {
    assertThatIllegalArgumentException().isThrownBy(() -> Lab.parse(text)).withMessage(message);
  }

  @Test
  void coordinatesAreFinite() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Lab.ofD65(50, Double.NEGATIVE_INFINITY, 0))
        .withMessage("a is -Infinity, must be a finite number");
  }

  @Test
  void whiteIsPartOfTheColour() {
    Lab d65 = Lab.ofD65(50, 10, 10);
    Lab d50 = new Lab(50, 10, 10, WhitePoint.D50);
    assertThat(d65).isNotEqualTo(d50);
    assertThat(d50).hasToString("Lab[l=50.0, a=10.0, b=10.0, white=D50]");
    assertThat(d65.adaptTo(WhitePoint.D65)).isSameAs(d65);
  }

  @Test
  void greyStaysGreyUnderAnotherWhite() {
    Lab grey = Lab.ofD65(37, 0, 0).adaptTo(WhitePoint.D50);
    assertThat(grey.l()).isCloseTo(37, within(1e-12));
    assertThat(grey.chroma()).isLessThan(1e-12);
  }

  @Test
  void greysHaveNoHue() {
    for (int value = 0; value < 256; value++) {
      Lab grey = Srgb.of8Bit(value, value, value).toLab();
      assertThat(grey.hueDegrees()).as("%s", grey).isEmpty();
      assertThat(grey.adaptTo(WhitePoint.D50).hueDegrees()).as("%s", grey).isEmpty();
    }
  }

  @ParameterizedTest
  @CsvSource({"10, 0, 0", "0, 10, 90", "-10, 0, 180", "0, -10, 270", "10, -1e-300, 0"})
  void hueRunsFromZeroToBelow360(double a, double b, double hue) {
    assertThat(Lab.ofD65(50, a, b).hueDegrees().orElseThrow()).isEqualTo(hue);
  }

  @Test
  void whatIsRoundedToZeroHasNoSign() {
    assertThat(Lab.ofD65(29.51, -0.001, -0.006).toText()).isEqualTo("lab(29.51, 0.00, -0.01)");
  }
}
