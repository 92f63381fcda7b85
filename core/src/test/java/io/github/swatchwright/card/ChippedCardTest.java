package io.github.swatchwright.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.coat.Base;
import io.github.swatchwright.coat.Chipping;
import io.github.swatchwright.coat.Coat;
import io.github.swatchwright.coat.CoatPlan;
import io.github.swatchwright.coat.CoatPredictor;
import io.github.swatchwright.coat.Coats;
import io.github.swatchwright.coat.SeenPatch;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.spectrum.TristimulusWeights;
import io.github.swatchwright.testdata.DemoShelf;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class ChippedCardTest {
  private static final Shelf SHELF = ShelfJson.parse(DemoShelf.text(), "demo shelf");

  private static CoatPlan plan() {
    List<Coat> coats = Coats.parse("Red oxide:2 over 80%, Deckhouse cream:2 over 60%", SHELF);
    Chipping chipping = Chipping.ofTopmost(coats, 0.15);
    return CoatPlan.of(
            CoatPredictor.of(ShelfOptics.estimate(SHELF), TristimulusWeights.D65),
            new Base.OfMix(Mix.parse("Dredger grey", SHELF)),
            chipping.of(coats))
        .withChipping(chipping);
  }

  // Upper .6 · (1 − .15) = .51, of which the cream over red .8 · .51 = .408 and over grey .102; red
  // .8 · .49 = .392; bare .2 · .49 = .098. By hand. The largest is the ground of the picture, and
  // the others are drawn on it. Twice the tolerance of shares, since curves are drawn through
  // cells.
  @Test
  void thePictureShowsEachPatchInItsShare() {
    List<SeenPatch> patches = plan().steps().get(1).patches();
    assertThat(patches.stream().map(SeenPatch::share))
        .usingElementComparator((one, other) -> Math.abs(one - other) < 1e-12 ? 0 : 1)
        .containsExactly(0.408, 0.392, 0.102, 0.098);

    Speckle speckle = Speckle.ofPatches(patches, Landing.CHIPPED, 7);
    SvgPicture drawn = SvgPicture.of(speckle.toSvg());
    Map<String, Double> shares = new TreeMap<>();
    for (SeenPatch patch : patches) {
      shares.merge(new ScreenColour(patch.colour()).hex(), patch.share(), Double::sum);
    }
    shares.forEach(
        (hex, share) ->
            assertThat(drawn.share(hex)).isCloseTo(share, within(2 * Speckle.TOLERANCE)));
  }

  @Test
  void theCardHasThePictureAndTheSteps() {
    Card card = Card.of(plan(), 7);
    CardPart.Section step = (CardPart.Section) card.parts().get(2);
    CardPart.Picture picture =
        step.parts().stream()
            .filter(CardPart.Picture.class::isInstance)
            .map(CardPart.Picture.class::cast)
            .findFirst()
            .orElseThrow();

    double[] shares = picture.speckle().shares();
    List<SeenPatch> patches = plan().steps().get(1).patches();
    for (int i = 0; i < patches.size(); i++) {
      assertThat(shares[i]).isCloseTo(patches.get(i).share(), within(Speckle.TOLERANCE));
    }
    assertThat(card.toHtml())
        .contains("Spray or brush on chipping medium", "damp stiff brush", "51.0 %", "39.2 %");
  }
}
