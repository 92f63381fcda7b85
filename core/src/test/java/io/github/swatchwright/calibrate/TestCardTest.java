package io.github.swatchwright.calibrate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.paint.Swatch;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class TestCardTest {
  private static final Swatch GREY = new Swatch.OfSrgb(Srgb.parse("#808080"));

  private static TestCard card(List<TestCard.Part> parts, OptionalDouble coats) {
    return new TestCard(parts, PartsBy.VOLUME, GREY, Optional.empty(), coats);
  }

  @Test
  void refusesAPaintThatIsNamedTwice() {
    TestCard.Part white = new TestCard.Part("White", 1);

    assertThatIllegalArgumentException()
        .isThrownBy(() -> card(List.of(white, white), OptionalDouble.empty()))
        .withMessage("the card names 'White' twice");
  }

  @Test
  void refusesNumbersOutOfRange() {
    List<TestCard.Part> parts = List.of(new TestCard.Part("White", 1));

    assertThatIllegalArgumentException()
        .isThrownBy(() -> card(parts, OptionalDouble.of(Double.NaN)))
        .withMessageContaining("coats is NaN");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> card(List.of(), OptionalDouble.empty()))
        .withMessage("number of parts is 0, must be within [1, 100]");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new TestCard.Part("White", 1e7))
        .withMessageContaining("1000000.0");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new TestCard.Part(" ", 1))
        .withMessageContaining("blank");
  }

  @Test
  void keepsItsPartsWhateverBecomesOfTheList() {
    List<TestCard.Part> parts = new ArrayList<>(List.of(new TestCard.Part("White", 1)));
    TestCard card = card(parts, OptionalDouble.of(1));

    parts.clear();

    assertThat(card.parts()).hasSize(1);
  }

  @Test
  void aDayAndAnErrorAreAddedToWhatIsThere() {
    TestCard card = card(List.of(new TestCard.Part("White", 1)), OptionalDouble.of(2));
    LocalDate day = LocalDate.of(2026, 11, 20);

    TestCard changed = card.withPainted(day).withMeasuredError(0.3);

    assertThat(changed.painted()).contains(day);
    assertThat(changed.measuredError()).hasValue(0.3);
    assertThat(changed.parts()).isEqualTo(card.parts());
    assertThat(changed.coats()).hasValue(2);
    assertThat(PartsBy.MASS.word()).isEqualTo("mass");
  }
}
