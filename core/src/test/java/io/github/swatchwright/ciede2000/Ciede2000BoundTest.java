package io.github.swatchwright.ciede2000;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.Lab;
import java.util.Random;
import org.junit.jupiter.api.Test;

class Ciede2000BoundTest {
  private static final int DRAWS = 100_000;

  @Test
  void noPointOfABoxIsNearerThanItsBound() {
    Random random = new Random(1);
    int sharp = 0;
    for (int i = 0; i < DRAWS; i++) {
      BoxDraw draw = BoxDraw.of(random);
      double bound = draw.bound();
      assertThat(bound).as("%s", draw).isLessThanOrEqualTo(draw.sampledMinimum(random, 8));
      if (bound > 0) {
        sharp++;
      }
    }
    // Else a bound of 0 would pass.
    assertThat(sharp).isGreaterThan(DRAWS / 2);
  }

  @Test
  void theBoundOfAPointIsTheDifferenceItself() {
    Random random = new Random(3);
    for (int i = 0; i < DRAWS; i++) {
      BoxDraw draw = BoxDraw.of(random);
      Lab point = draw.corner();
      double deltaE = draw.cornerDeltaE();
      // Only the rounding that the bound allows for is between them.
      assertThat(
              Ciede2000Bound.of(draw.colour())
                  .ofBox(point.l(), point.l(), point.a(), point.a(), point.b(), point.b()))
          .as("%s", draw)
          .isLessThanOrEqualTo(deltaE)
          .isCloseTo(deltaE, within(1e-5 + 1e-8 * deltaE));
    }
  }

  @Test
  void aBoxThatHoldsTheColourIsAtZero() {
    Ciede2000Bound bound = Ciede2000Bound.of(Lab.ofD65(40, 20, -30));
    assertThat(bound.ofBox(39, 41, 10, 30, -40, -20)).isZero();
    assertThat(bound.ofBox(0, 100, -1e300, 1e300, -1e300, 1e300)).isZero();
  }
}
