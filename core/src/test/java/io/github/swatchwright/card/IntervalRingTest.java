package io.github.swatchwright.card;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.mix.ColourSpread;
import org.junit.jupiter.api.Test;

class IntervalRingTest {
  private static final double[][] SPREAD = {{4, 0, 0}, {0, 1, 0}, {0, 0, 0.1}};

  @Test
  void neighboursLieAroundTheColourLightestOnTop() {
    Page.Figure ring =
        new IntervalRing(ColourSpread.of(Lab.ofD65(50, 0, 0), SPREAD)).figure(0, 0, 120);
    assertThat(ring.shapes()).hasSize(17);
    // L* 50 ± 2·√4.642, the square root of the 80 % point of χ² with three degrees of freedom.
    assertThat(ring.description())
        .isEqualTo(
            "Ring of colours that may come out instead of #777777: from "
                + new ScreenColour(Lab.ofD65(54.309, 0, 0)).hex()
                + " on top to "
                + new ScreenColour(Lab.ofD65(45.691, 0, 0)).hex()
                + " at the bottom");
  }

  @Test
  void aColourKnownExactlyHasARingOfItself() {
    Page.Figure ring =
        new IntervalRing(ColourSpread.of(Lab.ofD65(50, 0, 0), new double[3][3])).figure(0, 0, 120);
    assertThat(ring.shapes())
        .allSatisfy(shape -> assertThat(((Page.Disc) shape).ink().hex()).isEqualTo("#777777"));
  }

  @Test
  void saysWhenNeighboursAreTooStrongForAScreen() {
    Lab strong = Lab.ofD65(50, -60, -40);
    Page.Figure ring = new IntervalRing(ColourSpread.of(strong, SPREAD)).figure(0, 0, 120);
    assertThat(ring.description()).endsWith("; some are " + ScreenColour.TOO_STRONG);
  }
}
