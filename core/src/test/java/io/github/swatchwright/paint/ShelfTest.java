package io.github.swatchwright.paint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.swatchwright.colour.Srgb;
import java.util.List;
import org.junit.jupiter.api.Test;

class ShelfTest {
  private static final Paint RED = paint("Red oxide", "#7E3B2B");
  private static final Paint WHITE = paint("White", "#F4F3EE");
  private static final Shelf SHELF = Shelf.of("bench", List.of(RED, WHITE));

  private static Paint paint(String name, String colour) {
    return Paint.of(name, Medium.ACRYLIC, new Swatch.OfSrgb(Srgb.parse(colour)));
  }

  @Test
  void aNewPaintComesLastAndAKnownOneStaysWhereItWas() {
    Paint grey = paint("Grey", "#808080");
    Paint darker = paint("Red oxide", "#6E2B1B");
    assertThat(SHELF.with(grey).paints()).containsExactly(RED, WHITE, grey);
    assertThat(SHELF.with(darker).paints()).containsExactly(darker, WHITE);
    assertThat(SHELF.with(RED)).isEqualTo(SHELF);
  }

  @Test
  void aPaintIsTakenOffTheShelfByName() {
    assertThat(SHELF.without("white").paints()).containsExactly(RED);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SHELF.without("Whit"))
        .withMessageContaining("no paint 'Whit'");
  }
}
