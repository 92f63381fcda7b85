package io.github.swatchwright.metamorphic;

import static io.github.swatchwright.metamorphic.Cases.DEAR;
import static io.github.swatchwright.metamorphic.Cases.apart;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.calibrate.Calibration;
import io.github.swatchwright.calibrate.CardSet;
import io.github.swatchwright.calibrate.Correction;
import io.github.swatchwright.calibrate.Corrector;
import io.github.swatchwright.calibrate.TestCard;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What test cards teach, and what is added to a pot, where the answer is known beforehand. */
@Tag("statistics")
class CardsAskedOtherwiseTest {
  private static Lab predicted(Shelf shelf, Mix mix) {
    return MixPredictor.of(ShelfOptics.estimate(shelf), TristimulusWeights.D65).predict(mix).lab();
  }

  private static Mix on(Shelf shelf, Mix mix) {
    return new Mix(
        mix.parts().stream()
            .map(part -> new Mix.Part(shelf.paint(part.paint().name()), part.drops()))
            .toList());
  }

  private static List<TestCard> cards(Random random, Shelf shelf, double error) {
    List<TestCard> cards = new ArrayList<>();
    for (int i = 0; i < 2; i++) {
      Mix mix = Cases.mix(random, shelf.paints());
      Lab lab = predicted(shelf, mix);
      cards.add(
          TestCard.ofMix(
              mix,
              new Swatch.OfLab(
                  Lab.ofD65(
                      lab.l() + error * random.nextGaussian(),
                      lab.a() + error * random.nextGaussian(),
                      lab.b() + error * random.nextGaussian()))));
    }
    return cards;
  }

  /**
   * A card that shows exactly what was foretold moves no mean. 1e-3 of L*: what an iteration ends
   * with.
   */
  @Test
  void cardsThatShowWhatWasForetoldTeachNothing() {
    Cases.each(
        DEAR,
        random -> {
          Shelf shelf = Cases.shelf(random, 2);
          Calibration calibration = Calibration.of(shelf, new CardSet(cards(random, shelf, 0)));
          Mix other = Cases.mix(random, shelf.paints());
          Shelf learnt = calibration.shelf();
          assertThat(apart(predicted(learnt, on(learnt, other)), predicted(shelf, other)))
              .isLessThan(1e-3);
          assertThat(calibration.contradictions()).isEmpty();
        });
  }

  @Test
  void theOrderOfTheCards() {
    Cases.each(
        DEAR,
        random -> {
          Shelf shelf = Cases.shelf(random, 2);
          List<TestCard> cards = cards(random, shelf, 1);
          List<TestCard> turned = new ArrayList<>(cards);
          Collections.reverse(turned);
          Shelf one = Calibration.of(shelf, new CardSet(cards)).shelf();
          Shelf other = Calibration.of(shelf, new CardSet(turned)).shelf();
          Mix mix = Cases.mix(random, shelf.paints());
          assertThat(apart(predicted(one, on(one, mix)), predicted(other, on(other, mix))))
              .isLessThan(1e-3);
        });
  }

  @Test
  void aCalibratedShelfThatIsWrittenAndReadBack() {
    Cases.each(
        DEAR,
        random -> {
          Shelf shelf = Cases.shelf(random, 2);
          Shelf learnt = Calibration.of(shelf, new CardSet(cards(random, shelf, 1))).shelf();
          Shelf read = ShelfJson.parse(ShelfJson.toText(learnt), "written");
          Mix mix = Cases.mix(random, shelf.paints());
          assertThat(predicted(read, on(read, mix))).isEqualTo(predicted(learnt, on(learnt, mix)));
        });
  }

  @Test
  void aPotThatIsRightNeedsNothing() {
    Cases.each(
        DEAR,
        random -> {
          Shelf shelf = Cases.shelf(random, 2);
          ShelfOptics optics = ShelfOptics.estimate(shelf);
          Mix pot = Cases.mix(random, shelf.paints());
          Swatch measured =
              random.nextBoolean() ? new Swatch.OfLab(predicted(shelf, pot)) : Cases.swatch(random);
          Correction correction =
              Corrector.of(optics, TristimulusWeights.D65).correct(pot, measured, 0.5, measured);
          assertThat(correction.additions()).isEmpty();
          assertThat(correction.now()).isZero();
        });
  }
}
