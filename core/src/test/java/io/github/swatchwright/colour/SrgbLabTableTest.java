package io.github.swatchwright.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SrgbLabTableTest {
  private static final int GREENS_AND_BLUES = 256 * 256;

  /**
   * 1000 times the 3e-14 of the cube roots, which a* = 500·(fx − fy) adds up at most; rounding is
   * less.
   */
  private static final double SERIES_CUT_OFF = 3e-11;

  @Test
  void all16777216ColoursAreThoseOfThePlainFormAndComeBackExactly() {
    long failures =
        IntStream.range(0, 256).parallel().mapToLong(SrgbLabTableTest::failuresWithRed).sum();
    assertThat(failures).isZero();
  }

  private static long failuresWithRed(int red) {
    int[] rgb = IntStream.range(0, GREENS_AND_BLUES).map(i -> red << 16 | i).toArray();
    double[] l = new double[rgb.length];
    double[] a = new double[rgb.length];
    double[] b = new double[rgb.length];
    SrgbLabTable.toLab(rgb, l, a, b);
    long failures = 0;
    for (int i = 0; i < rgb.length; i++) {
      Lab plain = Srgb.ofPacked(rgb[i]).toLab();
      Lab table = Lab.ofD65(l[i], a[i], b[i]);
      boolean agree =
          Math.abs(plain.l() - l[i]) <= SERIES_CUT_OFF
              && Math.abs(plain.a() - a[i]) <= SERIES_CUT_OFF
              && Math.abs(plain.b() - b[i]) <= SERIES_CUT_OFF;
      boolean back = plain.toSrgb().toPacked() == rgb[i] && table.toSrgb().toPacked() == rgb[i];
      if (!agree || !back) {
        failures++;
      }
    }
    return failures;
  }

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

  @Test
  void arraysOfOtherLengthsAreRefused() {
    assertThatThrownBy(
            () -> SrgbLabTable.toLab(new int[2], new double[2], new double[3], new double[2]))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a has length 3, must be as long as rgb: 2");
  }
}
