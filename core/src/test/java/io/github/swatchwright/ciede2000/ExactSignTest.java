package io.github.swatchwright.ciede2000;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class ExactSignTest {

  @Test
  void theSignIsThatOfIntegersWhereRoundingCancels() {
    SplittableRandom random = new SplittableRandom(1);
    int cancelled = 0;
    for (int i = 0; i < 20_000; i++) {
      // 53-bit integers, whose products need 106 bits; the second pair is next to the first.
      long p = (1L << 52) + random.nextInt(1 << 20);
      long q = (1L << 52) + random.nextInt(1 << 20);
      long r = -(p + random.nextInt(-2, 3));
      long s = q + (p - -r) + random.nextInt(-1, 2);
      BigInteger exact =
          BigInteger.valueOf(p)
              .multiply(BigInteger.valueOf(q))
              .add(BigInteger.valueOf(r).multiply(BigInteger.valueOf(s)));
      double sum = (double) p * q + (double) r * s;
      assertThat(ExactSign.ofSum((double) p, (double) q, (double) r, (double) s))
          .isEqualTo(exact.signum());
      if (sum == 0 && exact.signum() != 0) {
        cancelled++;
      }
    }
    assertThat(cancelled).isGreaterThan(100);
  }

  @Test
  void nothingHasNoSign() {
    assertThat(ExactSign.ofSum(0, 3, 0, 5)).isZero();
    assertThat(ExactSign.ofSum(3, 5, -5, 3)).isZero();
  }
}
