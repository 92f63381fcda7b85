package io.github.swatchwright.search;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import java.util.Random;
import org.junit.jupiter.api.Test;

class TargetMapTest {
  private final Random random = new Random(7);

  private Lab colour(double chroma) {
    return Lab.ofD65(
        100 * random.nextDouble(),
        2 * chroma * (random.nextDouble() - 0.5),
        2 * chroma * (random.nextDouble() - 0.5));
  }

  @Test
  void noColourOfABoxIsNearerThanTheMapSays() {
    double share = 0;
    int draws = 0;
    TargetMap map = new TargetMap(colour(100));
    for (int target = 0; target < 50; target++) {
      map.turnTo(colour(target < 25 ? 100 : 200));
      for (int i = 0; i < 2000; i++) {
        // Some boxes cross the edge of the map, at 128.
        Lab middle = colour(150);
        double half = 20 * Math.pow(random.nextDouble(), 3);
        double bound =
            map.ofBox(
                middle.l() - half,
                middle.l() + half,
                middle.a() - half,
                middle.a() + half,
                middle.b() - half,
                middle.b() + half);
        double deltaE =
            Ciede2000.deltaE(
                map.target().l(),
                map.target().a(),
                map.target().b(),
                middle.l() + half * (2 * random.nextDouble() - 1),
                middle.a() + half * (2 * random.nextDouble() - 1),
                middle.b() + half * (2 * random.nextDouble() - 1));
        assertThat(Math.sqrt(bound))
            .as("%s, %s ± %s", map.target(), middle, half)
            .isLessThanOrEqualTo(deltaE);
        if (half < 0.5) {
          share += Math.sqrt(bound) / deltaE;
          draws++;
        }
      }
    }
    // Else a map of zeros would pass: small boxes are bounded well.
    assertThat(share / draws).isGreaterThan(0.9);
  }
}
