package io.github.swatchwright.search;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ScreeningTest {

  private static Lab colour(Random random, Lab near, double apart) {
    return Lab.ofD65(
        Math.min(100, Math.max(0, near.l() + apart * random.nextGaussian())),
        near.a() + apart * random.nextGaussian(),
        near.b() + apart * random.nextGaussian());
  }

  @Test
  void noColourIsCalledBeyondALimitThatItIsWithin() {
    Random random = new Random(11);
    int beyond = 0;
    for (int trial = 0; trial < 300_000; trial++) {
      Lab target = colour(random, Lab.ofD65(50, 0, 0), 35);
      Lab lab = colour(random, target, trial % 3 == 0 ? 1 : 10);
      double deltaE00 = Ciede2000.deltaE(target, lab);
      // A billionth is for rounding.
      assertThat(Screening.isBeyond(target, lab, deltaE00 * (1 + 1e-9))).isFalse();
      beyond += Screening.isBeyond(target, lab, deltaE00 / 3) ? 1 : 0;
    }
    // The bound is of use: it tells half of the colours at three times the limit.
    assertThat(beyond).isGreaterThan(150_000);
  }
}
