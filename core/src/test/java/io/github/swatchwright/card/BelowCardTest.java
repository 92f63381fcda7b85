package io.github.swatchwright.card;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.coat.BaseFinder;
import io.github.swatchwright.coat.BasePlan;
import io.github.swatchwright.coat.Coat;
import io.github.swatchwright.coat.CoatPlan;
import io.github.swatchwright.coat.CoatPredictor;
import io.github.swatchwright.coat.Coats;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.paint.PaintChoice;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import io.github.swatchwright.testdata.DemoShelf;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class BelowCardTest {
  private static final Shelf SHELF = ShelfJson.parse(DemoShelf.text(), "demo shelf");
  private static final CoatPredictor PREDICTOR =
      CoatPredictor.of(ShelfOptics.estimate(SHELF), TristimulusWeights.D65);
  private static final PaintChoice GREYS =
      PaintChoice.ALL.withOnly(Set.of("Dredger grey", "Hull black", "Deckhouse cream"));

  private static String card(String end, String coats) {
    List<Coat> over = Coats.parse(coats, SHELF);
    BasePlan below =
        BasePlan.of(BaseFinder.of(PREDICTOR), new Swatch.OfSrgb(Srgb.parse(end)), over, GREYS, 5);
    CoatPlan plan = CoatPlan.of(PREDICTOR, below.base(), over).withBelow(below);
    return Card.of(plan, 1).toHtml();
  }

  @Test
  void theCardTellsPaintForTheBaseAndItsPreHighlight() {
    assertThat(card("#7C8188", "Whitewash wash:2"))
        .contains("What to paint below", "Base for it", "Dredger grey", "Expect in the end")
        .containsSubsequence("Base:", "Darkest part:", "Lightest part:");
  }

  @Test
  void theCardTellsWhyNoBaseDoesIt() {
    assertThat(card("#FFFFFF", "Harbour-dirt wash:3"))
        .contains("No base does it", "even over white, these coats end darker than that.");
    assertThat(card("#FFFFFF", "Red oxide:5"))
        .contains("hide what is below")
        .doesNotContain("Base:");
  }
}
