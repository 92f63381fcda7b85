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
import io.github.swatchwright.spectrum.Illuminant;
import io.github.swatchwright.spectrum.TristimulusWeights;
import io.github.swatchwright.testdata.DemoShelf;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class ChippedCardTest {
  private static final Shelf SHELF = ShelfJson.parse(DemoShelf.text(), "demo shelf");
  private static final int CELLS = 120 * 30;

  private static CoatPlan plan() {
    List<Coat> coats = Coats.parse("Red oxide:2 over 80%, Deckhouse cream:2 over 60%", SHELF);
    Chipping chipping = Chipping.ofTopmost(coats, 0.15);
    return CoatPlan.of(
            CoatPredictor.of(ShelfOptics.estimate(SHELF), TristimulusWeights.D65),
            new Base.OfMix(Mix.parse("Dredger grey", SHELF)),
            chipping.of(coats))
        .withChipping(chipping);
  }

  /** Cells of the picture that have this colour. */
  private static int drawn(String svg, String hex) {
    Matcher path = Pattern.compile("stroke=\"" + hex + "\"[^>]* d=\"([^\"]*)\"").matcher(svg);
    int cells = 0;
    while (path.find()) {
      Matcher run = Pattern.compile("h([0-9]+)").matcher(path.group(1));
      while (run.find()) {
        cells += Integer.parseInt(run.group(1));
      }
    }
    return cells;
  }

  // Upper .6 · (1 − .15) = .51, of which the cream over red .8 · .51 = .408 and over grey .102; red
  // .8 · .49 = .392; bare .2 · .49 = .098. By hand. The largest is the ground of the picture, and
  // the others are drawn on it. 0.005 is half a percent of the picture: 18 cells of 3,600.
  @Test
  void thePictureShowsEachPatchInItsShare() {
    List<SeenPatch> patches = plan().steps().get(1).patches();
    assertThat(patches.stream().map(SeenPatch::share))
        .usingElementComparator((one, other) -> Math.abs(one - other) < 1e-12 ? 0 : 1)
        .containsExactly(0.408, 0.392, 0.102, 0.098);

    String svg = Speckle.ofPatches(patches, 7).toSvg();
    int others = 0;
    for (SeenPatch patch : patches.subList(1, patches.size())) {
      int cells = drawn(svg, new ScreenColour(patch.colour()).hex());
      others += cells;
      assertThat((double) cells / CELLS).isCloseTo(patch.share(), within(0.005));
    }
    assertThat(1 - (double) others / CELLS).isCloseTo(0.408, within(0.005));
  }

  @Test
  void theCardHasThePictureAndTheSteps() {
    String card = CoatCard.of(plan(), 7, Illuminant.D65).toHtml();

    for (SeenPatch patch : plan().steps().get(1).patches().subList(1, 4)) {
      double share = (double) drawn(card, new ScreenColour(patch.colour()).hex()) / CELLS;
      // Red oxide over grey is drawn once more, in the first step's own picture.
      assertThat(share).isGreaterThan(patch.share() - 0.005);
    }
    assertThat(card)
        .contains("Spray or brush on chipping medium", "damp stiff brush", "51.0 %", "39.2 %");
  }
}
