package io.github.swatchwright.colour;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The table of 8-bit colours against the plain form, all of it. */
@Tag("statistics")
class EverySrgbColourTest {
  private static final int GREENS_AND_BLUES = 256 * 256;

  /**
   * 1000 times the 3e-14 of the cube roots, which a* = 500·(fx − fy) adds up at most; rounding is
   * less.
   */
  private static final double SERIES_CUT_OFF = 3e-11;

  @Test
  void all16777216ColoursAreThoseOfThePlainFormAndComeBackExactly() {
    long failures =
        IntStream.range(0, 256).parallel().mapToLong(EverySrgbColourTest::failuresWithRed).sum();
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
}
