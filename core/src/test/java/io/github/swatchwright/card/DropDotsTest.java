package io.github.swatchwright.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.Lab;
import java.util.List;
import org.junit.jupiter.api.Test;

class DropDotsTest {
  private static final Lab RUST = Lab.ofD65(40, 25, 30);

  private static Page.Figure figure(double drops) {
    return new DropDots(drops, RUST).figure(0, 0, 20);
  }

  /** Without their rims. */
  private static List<Page.Disc> dots(double drops) {
    return figure(drops).shapes().stream()
        .map(Page.Disc.class::cast)
        .filter(disc -> disc.ink().isPaint())
        .toList();
  }

  @Test
  void aDotIsADrop() {
    assertThat(dots(7)).hasSize(7).allMatch(dot -> dot.ink().hex().equals("#8F4D2E"));
    assertThat(figure(7).description()).isEqualTo("7 drops");
    assertThat(figure(1).description()).isEqualTo("1 drop");
  }

  @Test
  void tenAreARow() {
    assertThat(figure(11).height()).isCloseTo(2 * figure(10).height(), within(1e-12));
    assertThat(dots(11).get(10).x()).isEqualTo(dots(11).get(0).x());
  }

  @Test
  void fivesStandApart() {
    double within = dots(6).get(4).x() - dots(6).get(3).x();
    assertThat(dots(6).get(5).x() - dots(6).get(4).x()).isGreaterThan(1.3 * within);
  }

  @Test
  void halfADropIsHalfADot() {
    assertThat(dots(1.5)).hasSize(2);
    assertThat(dots(1.5).get(0).isWhole()).isTrue();
    assertThat(dots(1.5).get(1).to() - dots(1.5).get(1).from()).isEqualTo(0.5);
    assertThat(figure(1.5).description()).isEqualTo("1.5 drops");
  }

  @Test
  void refusesMoreThanCanBeCounted() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> dots(41))
        .withMessage("drops is 41.0, must be within [0.0, 40.0]");
  }
}
