package io.github.swatchwright.difference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

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
  void everyColourWithinTheLimitLiesWithinReach() {
    Random random = new Random(2);
    double furthest = 0;
    for (int i = 0; i < DRAWS; i++) {
      BoxDraw draw = BoxDraw.of(random);
      Lab colour = draw.colour();
      double l = draw.lowL();
      double a = draw.lowA();
      double b = draw.lowB();
      double deltaE = Ciede2000.deltaE(colour.l(), colour.a(), colour.b(), l, a, b);
      Ciede2000Bound bound = Ciede2000Bound.of(colour, deltaE);
      double share =
          Math.max(
              Math.abs(l - colour.l()) / bound.reachL(),
              Math.max(
                  Math.abs(a - colour.a()) / bound.reachA(),
                  Math.abs(b - colour.b()) / bound.reachB()));
      assertThat(share).as("%s", draw).isLessThanOrEqualTo(1);
      furthest = Math.max(furthest, share);
    }
    // The reach isn't wider than need be in every direction: some colour comes close to its edge.
    assertThat(furthest).isGreaterThan(0.95);
  }

  @Test
  void aGreyKeepsItsReachSmall() {
    Ciede2000Bound bound = Ciede2000Bound.of(Lab.ofD65(50, 0, 0), 1);
    // S_L = S_C = S_H = 1 and G = ½ there: 1, 1/1.5 and 1, and a little more for the way to its
    // edge.
    assertThat(bound.reachL()).isBetween(1.0, 1.01);
    assertThat(bound.reachA()).isBetween(1 / 1.5, 0.70);
    assertThat(bound.reachB()).isBetween(1.0, 1.05);
  }

  @Test
  void aBoxThatHoldsTheColourIsAtZeroAndAFarOneAtTheLimit() {
    Ciede2000Bound bound = Ciede2000Bound.of(Lab.ofD65(40, 20, -30), 5);
    assertThat(bound.ofBox(39, 41, 10, 30, -40, -20)).isZero();
    assertThat(bound.ofBox(90, 95, 10, 30, -40, -20)).isEqualTo(5);
    assertThat(Ciede2000Bound.of(Lab.ofD65(40, 20, -30), Double.POSITIVE_INFINITY).reachA())
        .isInfinite();
  }

  @Test
  void aNegativeLimitIsRefused() {
    assertThatThrownBy(() -> Ciede2000Bound.of(Lab.ofD65(40, 20, -30), -1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("limit");
  }
}
