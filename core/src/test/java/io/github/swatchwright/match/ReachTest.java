package io.github.swatchwright.match;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.Lch;
import io.github.swatchwright.colour.WhitePoint;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class ReachTest {

  private static Lab lch(double l, double c, double hue) {
    return new Lch(l, c, OptionalDouble.of(hue), WhitePoint.D65).toLab();
  }

  @Test
  void aCloseMixIsWithinReachAndLacksNothing() {
    Reach reach = Reach.of(lch(50, 30, 60), lch(50.5, 30, 60));
    assertThat(reach.withinReach()).isTrue();
    assertThat(reach.words()).isEmpty();
  }

  @Test
  void missingDirectionsAreNamedByTheirSize() {
    assertThat(Reach.of(lch(80, 20, 60), lch(95, 20, 60)).words()).containsExactly("lighter");
    assertThat(Reach.of(lch(30, 20, 60), lch(15, 20, 60)).words()).containsExactly("darker");
    assertThat(Reach.of(lch(50, 40, 60), lch(50, 80, 60)).words())
        .containsExactly("more chromatic");
    assertThat(Reach.of(lch(50, 40, 60), lch(50, 10, 60)).words()).containsExactly("greyer");
    assertThat(Reach.of(lch(50, 40, 60), lch(70, 70, 60)).words())
        .containsExactly("more chromatic", "lighter");
  }

  @Test
  void huesTurnTowardsTheNextOfFour() {
    assertThat(Reach.of(lch(50, 40, 50), lch(50, 40, 75)).words()).containsExactly("yellower");
    assertThat(Reach.of(lch(50, 40, 50), lch(50, 40, 25)).words()).containsExactly("redder");
    assertThat(Reach.of(lch(50, 40, 120), lch(50, 40, 95)).words()).containsExactly("yellower");
    assertThat(Reach.of(lch(50, 40, 120), lch(50, 40, 150)).words()).containsExactly("greener");
    assertThat(Reach.of(lch(50, 40, 200), lch(50, 40, 235)).words()).containsExactly("bluer");
    assertThat(Reach.of(lch(50, 40, 300), lch(50, 40, 330)).words()).containsExactly("redder");
    assertThat(Reach.of(lch(50, 40, 300), lch(50, 40, 275)).words()).containsExactly("bluer");
    assertThat(Reach.of(lch(50, 40, 350), lch(50, 40, 15)).words()).containsExactly("redder");
  }
}
