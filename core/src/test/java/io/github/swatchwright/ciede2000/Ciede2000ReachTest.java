package io.github.swatchwright.ciede2000;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.swatchwright.colour.Lab;
import java.util.Random;
import org.junit.jupiter.api.Test;

class Ciede2000ReachTest {
  private static final int DRAWS = 100_000;

  @Test
  void everyColourWithinTheLimitLiesWithinReach() {
    Random random = new Random(2);
    double furthest = 0;
    for (int i = 0; i < DRAWS; i++) {
      BoxDraw draw = BoxDraw.of(random);
      Lab colour = draw.colour();
      Lab corner = draw.corner();
      Ciede2000Reach reach = Ciede2000Reach.of(colour, draw.cornerDeltaE());
      double share =
          Math.max(
              Math.abs(corner.l() - colour.l()) / reach.l(),
              Math.max(
                  Math.abs(corner.a() - colour.a()) / reach.a(),
                  Math.abs(corner.b() - colour.b()) / reach.b()));
      assertThat(share).as("%s", draw).isLessThanOrEqualTo(1);
      furthest = Math.max(furthest, share);
    }
    // The reach isn't wider than need be in every direction: some colour comes close to its edge.
    assertThat(furthest).isGreaterThan(0.95);
  }

  @Test
  void aGreyKeepsItsReachSmall() {
    Ciede2000Reach reach = Ciede2000Reach.of(Lab.ofD65(50, 0, 0), 1);
    // S_L = S_C = S_H = 1 and G = ½ there: 1, 1/1.5 and 1, and a little more for the way to its
    // edge.
    assertThat(reach.l()).isBetween(1.0, 1.01);
    assertThat(reach.a()).isBetween(1 / 1.5, 0.70);
    assertThat(reach.b()).isBetween(1.0, 1.05);
  }

  /** On the b* axis hue is a*, chroma is b*, and G doesn't change with the hue. */
  @Test
  void onTheYellowAxisTheReachIsThatOfTheScales() {
    for (double l = 20; l <= 80; l += 15) {
      for (double c = 10; c <= 80; c += 10) {
        // Equations 4, 5, 15 and 18 to 20 of Sharma, Wu and Dalal 2005, at a hue of 90°.
        double c7 = Math.pow(c, 7);
        double stretch = 1.5 - 0.5 * Math.sqrt(c7 / (c7 + Math.pow(25, 7)));
        double t =
            1
                - 0.17 * Math.cos(Math.toRadians(60))
                + 0.24 * Math.cos(Math.toRadians(180))
                + 0.32 * Math.cos(Math.toRadians(276))
                - 0.20 * Math.cos(Math.toRadians(360 - 63));
        double sL = 1 + 0.015 * (l - 50) * (l - 50) / Math.sqrt(20 + (l - 50) * (l - 50));
        double limit = 0.001;
        Ciede2000Reach reach = Ciede2000Reach.of(Lab.ofD65(l, 0, c), limit);
        // Across so small a limit nothing changes by more than 0.1 %; T by some more.
        assertThat(reach.l() / (limit * sL)).isBetween(1.0, 1.001);
        assertThat(reach.a() / (limit * (1 + 0.015 * c * t) / stretch)).isBetween(1.0, 1.005);
        assertThat(reach.b() / (limit * (1 + 0.045 * c))).isBetween(1.0, 1.001);
      }
    }
  }

  @Test
  void noLimitMeansNoEnd() {
    assertThat(Ciede2000Reach.of(Lab.ofD65(40, 20, -30), Double.POSITIVE_INFINITY).a())
        .isInfinite();
  }

  @Test
  void aNegativeLimitIsRefused() {
    assertThatThrownBy(() -> Ciede2000Reach.of(Lab.ofD65(40, 20, -30), -1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("limit");
  }
}
