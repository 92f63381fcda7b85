package io.github.swatchwright.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.Lab;
import org.junit.jupiter.api.Test;

class DropDotsTest {
  private static final ScreenColour RUST = new ScreenColour(Lab.ofD65(40, 25, 30));

  private static Figure dots(double drops) {
    return new DropDots(drops, RUST).figure();
  }

  @Test
  void aDotIsADrop() {
    assertThat(dots(7).shapes()).hasSize(7);
    assertThat(dots(7).description()).isEqualTo("7 drops");
    assertThat(dots(1).description()).isEqualTo("1 drop");
  }

  @Test
  void tenAreARow() {
    assertThat(dots(11).height()).isCloseTo(2 * dots(10).height(), within(1e-12));
  }

  @Test
  void halfADropIsHalfADot() {
    assertThat(dots(1.5).shapes()).hasSize(2);
    assertThat(dots(1.5).shapes().get(1))
        .hasToString(
            "<path class=\"dot\" d=\"M30 10L30 1.5A8.5 8.5 0 0 1 30 18.5Z\" fill=\"#8F4D2E\"></path>");
    assertThat(dots(1.5).description()).isEqualTo("1.5 drops");
  }

  @Test
  void refusesMoreThanCanBeCounted() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> dots(41))
        .withMessage("drops is 41.0, must be within [0.0, 40.0]");
  }
}
