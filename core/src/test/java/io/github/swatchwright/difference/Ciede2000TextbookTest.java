package io.github.swatchwright.difference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The form without angles against the textbook's, where implementations go wrong. */
class Ciede2000TextbookTest {
  private static final int PAIRS_PER_KIND = 20_000;

  /**
   * The textbook form's own rounding: its angles near 360° are known to 6e-14°, which a chroma of
   * 120 and the slope of R_T turn into some 1e-13 to 1e-12. A wrong branch misses by 1e-7 and more.
   */
  private static final double ROUNDING = 1e-11;

  @ParameterizedTest(name = "pairs of kind {0} agree with the textbook form")
  @EnumSource
  void pairsAgreeWithTheTextbookForm(PairKind kind) {
    SplittableRandom random = new SplittableRandom(kind.name().hashCode());
    for (int i = 0; i < PAIRS_PER_KIND; i++) {
      double[] p = kind.next(random);
      double expected = TextbookCiede2000.deltaE(p[0], p[1], p[2], p[3], p[4], p[5]);
      double actual = Ciede2000.deltaE(p[0], p[1], p[2], p[3], p[4], p[5]);
      assertThat(actual).as("%s", Arrays.toString(p)).isCloseTo(expected, within(ROUNDING));
      assertThat(Ciede2000.deltaE(p[3], p[4], p[5], p[0], p[1], p[2])).isEqualTo(actual);
    }
  }

  /**
   * For tiny steps the difference is proportional to the step, up to terms of the step's own size:
   * what a step of 2⁻²⁴ gives, one of 2⁻⁴⁰ (9e-13) must give too. Coordinates and steps are whole
   * multiples of 2⁻⁴⁰, so that adding them rounds nothing; the textbook form keeps two digits here.
   */
  @Test
  void tinyDifferencesKeepTheirDigits() {
    SplittableRandom random = new SplittableRandom(24);
    for (int i = 0; i < PAIRS_PER_KIND; i++) {
      double l = random.nextInt(0, 100 * 64) / 64.0;
      double a = random.nextInt(-80 * 64, 80 * 64) / 64.0;
      double b = random.nextInt(-80 * 64, 80 * 64) / 64.0;
      double[] step = {random.nextInt(-3, 4), random.nextInt(-3, 4), random.nextInt(-3, 4)};
      double coarse = stepped(l, a, b, step, 0x1p-24) / 0x1p-24;
      double fine = stepped(l, a, b, step, 0x1p-40) / 0x1p-40;
      // The step's relative effect on the weights, tens of times 6e-8.
      assertThat(fine).as("%s %s %s", l, a, b).isCloseTo(coarse, within(1e-5));
    }
  }

  private static double stepped(double l, double a, double b, double[] step, double size) {
    return Ciede2000.deltaE(l, a, b, l + step[0] * size, a + step[1] * size, b + step[2] * size);
  }
}
