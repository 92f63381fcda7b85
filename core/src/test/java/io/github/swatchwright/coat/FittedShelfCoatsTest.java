package io.github.swatchwright.coat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.calibrate.Calibration;
import io.github.swatchwright.calibrate.CardErrors;
import io.github.swatchwright.calibrate.CardSet;
import io.github.swatchwright.calibrate.TestCard;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import io.github.swatchwright.testdata.DemoShelf;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Test cards tie the errors of paints to each other, and coats have to know it. */
class FittedShelfCoatsTest {
  private static final Shelf UNFITTED = ShelfJson.parse(DemoShelf.text(), DemoShelf.SOURCE);
  private static final Shelf FITTED = fitted();

  /** Cards that look as the shelf itself expects, so that only what is known of it changes. */
  private static Shelf fitted() {
    MixPredictor predictor =
        MixPredictor.of(ShelfOptics.estimate(UNFITTED), TristimulusWeights.D65);
    List<TestCard> cards =
        Stream.of(
                "Titanium white:5, Phthalo blue:1",
                "Titanium white:1, Phthalo blue:1",
                "Titanium white:1, Burnt umber:1",
                "Burnt umber:1, Phthalo blue:1")
            .map(text -> Mix.parse(text, UNFITTED))
            .map(mix -> TestCard.ofMix(mix, new Swatch.OfLab(predictor.predict(mix).lab())))
            .toList();
    return Calibration.of(UNFITTED, new CardSet(cards), CardErrors.USUAL).shelf();
  }

  private static CoatPredictor predictor(Shelf shelf) {
    return CoatPredictor.of(ShelfOptics.estimate(shelf), TristimulusWeights.D65).withCoatScatter(0);
  }

  private static Base base(Shelf shelf) {
    return new Base.OfMix(Mix.parse("Titanium white:5, Phthalo blue:1", shelf));
  }

  // MixPredictor works out the same spread by derivatives in closed form, from the covariance of
  // both paints together; steps of 1e-4 in the coats' derivatives leave four digits.
  @Test
  void aPaintedBaseIsKnownAsWellAsTheMix() {
    double[] mixed =
        MixPredictor.of(ShelfOptics.estimate(FITTED), TristimulusWeights.D65)
            .withDropScatter(0)
            .predict(Mix.parse("Titanium white:5, Phthalo blue:1", FITTED))
            .spread()
            .standardDeviations();

    double[] painted = predictor(FITTED).predict(base(FITTED)).spread().standardDeviations();

    for (int axis = 0; axis < 3; axis++) {
      assertThat(painted[axis]).isCloseTo(mixed[axis], within(1e-3 * mixed[axis]));
    }
  }

  // Each paint's own covariance doesn't know of the cards: with it alone, nothing would narrow.
  @Test
  void cardsNarrowTheIntervalOfCoats() {
    String coats = "Burnt umber:1@1:3, Phthalo blue:1@1:8";
    double before = last(UNFITTED, coats);
    double after = last(FITTED, coats);

    assertThat(after).isLessThan(0.8 * before);
  }

  private static double last(Shelf shelf, String coats) {
    List<CoatStep> steps = predictor(shelf).predict(base(shelf), Coats.parse(coats, shelf));
    return steps.get(steps.size() - 1).prediction().intervalDeltaE00();
  }
}
