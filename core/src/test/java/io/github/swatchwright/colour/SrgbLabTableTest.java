package io.github.swatchwright.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SrgbLabTableTest {
  @Test
  void singleColoursAreThoseOfTheArrays() {
    int[] rgb = {0x000000, 0x010203, 0xC48A2C, 0xFFFFFF};
    double[] l = new double[4];
    double[] a = new double[4];
    double[] b = new double[4];
    SrgbLabTable.toLab(rgb, l, a, b);
    for (int i = 0; i < rgb.length; i++) {
      assertThat(SrgbLabTable.toLab(rgb[i])).isEqualTo(Lab.ofD65(l[i], a[i], b[i]));
    }
  }

  @Test
  void sampledColoursAreThoseOfThePlainForm() {
    for (int rgb = 0; rgb <= 0xFFFFFF; rgb += 2657) {
      Lab plain = Srgb.ofPacked(rgb).toLab();
      Lab table = SrgbLabTable.toLab(rgb);
      // As for all colours: EverySrgbColourTest tells why.
      assertThat(table.l()).isCloseTo(plain.l(), within(3e-11));
      assertThat(table.a()).isCloseTo(plain.a(), within(3e-11));
      assertThat(table.b()).isCloseTo(plain.b(), within(3e-11));
    }
  }

  @Test
  void redHasTheLabOfCssColor4() {
    // sRGB red in CIELAB D65, to the four decimals commonly printed; the white is (0.3127, 0.3290).
    Lab red = SrgbLabTable.toLab(0xFF0000);
    assertThat(red.l()).isCloseTo(53.2371, within(0.00005));
    assertThat(red.a()).isCloseTo(80.0901, within(0.00005));
    assertThat(red.b()).isCloseTo(67.2033, within(0.00005));
  }

  @Test
  void alphaBitsAreIgnored() {
    assertThat(SrgbLabTable.toLab(0xFFC48A2C)).isEqualTo(SrgbLabTable.toLab(0xC48A2C));
  }

  @ParameterizedTest(name = "arrays of {0}, {1} and {2} for two colours are refused")
  @CsvSource({"3, 2, 2, l", "2, 3, 2, a", "2, 2, 3, b"})
  void arraysOfOtherLengthsAreRefused(int l, int a, int b, String name) {
    assertThatThrownBy(
            () -> SrgbLabTable.toLab(new int[2], new double[l], new double[a], new double[b]))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(name + " has length 3, must be as long as rgb: 2");
  }
}
