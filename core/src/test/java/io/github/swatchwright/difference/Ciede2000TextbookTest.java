package io.github.swatchwright.difference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
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
}
