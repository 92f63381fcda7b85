package io.github.swatchwright.coat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.testdata.DemoShelf;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ChippingTest {
  private static final Shelf SHELF = ShelfJson.parse(DemoShelf.text(), "demo shelf");

  // 60 % · (1 − 15 %) = 51 %, by hand; the varnish over it stays whole.
  @Test
  void theTopmostCoatOfPaintIsWornUnderItsVarnish() {
    List<Coat> coats =
        Coats.parse("Red oxide:2, Deckhouse cream:2 over 60%, Weathered-deck varnish:1", SHELF);

    Chipping chipping = Chipping.ofTopmost(coats, 0.15);

    assertThat(chipping.coat()).isEqualTo(2);
    List<Coat> worn = chipping.of(coats);
    assertThat(worn.get(0)).isEqualTo(coats.get(0));
    assertThat(worn.get(1).coverage()).isCloseTo(0.51, within(1e-12));
    assertThat(worn.get(2)).isEqualTo(coats.get(2));
  }

  /** Common practice, without a source. */
  @Test
  void anAcrylicIsLiftedWithWaterAndTheOthersAreSponged() {
    Chipping chipping = new Chipping(2, 0.15);

    List<String> acrylic = chipping.steps(Optional.of(Medium.LACQUER), Medium.ACRYLIC);
    assertThat(acrylic).hasSize(5);
    assertThat(acrylic.get(0)).contains("dry: 1 hour.");
    assertThat(acrylic.get(1)).contains("chipping medium");
    assertThat(acrylic.get(2)).contains("half an hour", "not overnight");
    assertThat(acrylic.get(3)).contains("Wet", "damp stiff brush", "15 %");
    assertThat(acrylic.get(4)).contains("seal it with varnish");
    for (Medium solvent : List.of(Medium.ENAMEL, Medium.LACQUER, Medium.OIL)) {
      List<String> sponged = chipping.steps(Optional.empty(), solvent);
      assertThat(sponged.get(1)).contains("sponge", "15 %", solvent.word());
      assertThat(sponged.get(sponged.size() - 1)).contains("seal it with varnish");
    }
  }

  @Test
  void varnishAloneCannotBeWornOff() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Chipping.ofTopmost(Coats.parse("Wet-hull varnish:1", SHELF), 0.1))
        .withMessage("there is no coat of paint to wear off");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Chipping(1, 1.2))
        .withMessage("worn share is 1.2, must be within [0.0, 1.0]");
  }
}
