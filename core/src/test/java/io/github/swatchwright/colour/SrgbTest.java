package io.github.swatchwright.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SrgbTest {

  @Test
  void hexIsReadInEitherCaseAndWrittenInUpper() {
    assertThat(Srgb.parse(" #c48a2c ").toHex()).isEqualTo("#C48A2C");
    assertThat(Srgb.parse("#C48A2C")).isEqualTo(Srgb.of8Bit(0xC4, 0x8A, 0x2C));
    assertThat(Srgb.ofPacked(0xFFC48A2C)).isEqualTo(Srgb.of8Bit(0xC4, 0x8A, 0x2C));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "#", "#12345", "#1234567", "#12345G", "123456", "#-12345", "#١٢٣٤٥٦"})
  void anythingElseIsNoHexOfAFile(String text) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Srgb.parseHex(text))
        .withMessage("'" + text + "' is not a colour of the form #RRGGBB with six digits 0 to F");
  }

  @Test
  void channelsOutsideEightBitsAreRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Srgb.of8Bit(0, 256, 0))
        .withMessage("green is 256, must be within [0, 255]");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Srgb(0, 0, Double.NaN))
        .withMessage("blue is NaN, must be a finite number");
  }

  @Test
  void everyChannelValueSurvivesTheWayThroughLab() {
    for (int value = 0; value < 256; value++) {
      int rgb = value << 16 | (255 - value) << 8 | (value * 7 & 0xFF);
      assertThat(Srgb.ofPacked(rgb).toLab().toSrgb().toPacked()).isEqualTo(rgb);
    }
  }

  @Test
  void displayableUpToATwentiethOfAnEightBitStep() {
    assertThat(new Srgb(1.0002, -0.0002, 0.5).isDisplayable()).isTrue();
    assertThat(new Srgb(1.0003, 0, 0.5).isDisplayable()).isFalse();
    assertThat(new Srgb(0, -0.0003, 0.5).isDisplayable()).isFalse();
    assertThat(new Srgb(1.0002, -0.0002, 0.5).toHex()).isEqualTo("#FF0080");
  }

  @Test
  void eightBitsOfAnUndisplayableColourAreRefused() {
    Srgb beyond = new Srgb(1.25, 0, 0);
    assertThatIllegalArgumentException()
        .isThrownBy(beyond::toHex)
        .withMessage(
            "Srgb[red=1.25, green=0.0, blue=0.0] is outside the sRGB range 0 to 1; fit it first");
  }

  @Test
  void turkishAndArabicLocalesChangeNothing() {
    Locale before = Locale.getDefault();
    try {
      for (String tag : new String[] {"tr-TR", "ar-EG-u-nu-arab", "de-DE"}) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertThat(Srgb.parse("#0099FF").toHex()).isEqualTo("#0099FF");
        assertThat(Lab.parse("LAB(41.5, 20, 30)").toText()).isEqualTo("lab(41.50, 20.00, 30.00)");
      }
    } finally {
      Locale.setDefault(before);
    }
  }
}
