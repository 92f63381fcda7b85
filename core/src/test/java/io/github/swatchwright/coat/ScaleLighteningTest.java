package io.github.swatchwright.coat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.Bands;
import io.github.swatchwright.spectrum.TristimulusWeights;
import io.github.swatchwright.testdata.DemoShelf;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class ScaleLighteningTest {
  private static final Shelf SHELF = ShelfJson.parse(DemoShelf.text(), DemoShelf.SOURCE);
  private static final CoatPredictor PREDICTOR =
      CoatPredictor.of(ShelfOptics.estimate(SHELF), TristimulusWeights.D65);
  private static final Swatch GREY =
      new Swatch.OfReflectance(400, 40, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2);

  @Test
  @DisplayName("a grey of 20 % lightened by 15 % is one of 32 %: L* 51.8 becomes 63.3 (CIE 15)")
  void aGreyGainsTheShareOfWhite() {
    // .85 · .2 + .15 = .32; L* = 116·.2^⅓ − 16 = 51.84 and 116·.32^⅓ − 16 = 63.35.
    assertThat(ScaleLightening.of(GREY, 0, TristimulusWeights.D65).l()).isCloseTo(51.84, digits());
    assertThat(ScaleLightening.of(GREY, 0.15, TristimulusWeights.D65).l())
        .isCloseTo(63.34, digits());
  }

  private static Offset<Double> digits() {
    return within(0.01);
  }

  @Test
  void aBaseIsLightenedAsItIsSeenAndNotThePreHighlight() {
    CoatPredictor lightened = PREDICTOR.withScaleLightening(0.15);
    Base measured = new Base.OfSwatch(GREY);
    Base mixed = new Base.OfMix(Mix.parse("Red oxide:1, Titanium white:1", SHELF));
    List<Coat> coats = Coats.parse("Blue filter:2", SHELF);

    for (int band = 0; band < Bands.COUNT; band++) {
      assertThat(PREDICTOR.predict(measured).reflectance().at(band)).isCloseTo(0.2, exact());
      assertThat(lightened.predict(measured).reflectance().at(band)).isCloseTo(0.32, exact());
      double bare = PREDICTOR.predict(mixed).reflectance().at(band);
      assertThat(lightened.predict(mixed).reflectance().at(band))
          .isCloseTo(1 - 0.85 * (1 - bare), exact());
    }
    assertThat(lightened.predict(measured, coats).get(0).overDarkest())
        .isEqualTo(PREDICTOR.predict(measured, coats).get(0).overDarkest());
    assertThat(CoatPlan.of(lightened, measured, coats).scaleLightening()).isEqualTo(0.15);
  }

  // Into the surface and out of it again.
  private static Offset<Double> exact() {
    return within(1e-12);
  }

  @Test
  void aWantedColourIsLightenedToo() {
    Base base = new Base.OfSwatch(GREY);
    CoatGoal goal = CoatGoal.ofColour(GREY, 1);
    Lab now = PREDICTOR.predict(base).lab();

    assertThat(goal.target(now, PREDICTOR.withScaleLightening(0.15)).l())
        .isCloseTo(63.34, digits());
    assertThat(goal.target(now, PREDICTOR).l()).isCloseTo(51.84, digits());
  }

  @Test
  void aBaseIsLookedForAsItIsPainted() {
    List<Coat> coats = Coats.parse("Blue filter:2", SHELF);
    Swatch end = new Swatch.OfLab(PREDICTOR.last(new Base.OfSwatch(GREY), coats).lab());

    BaseColour found = BaseFinder.of(PREDICTOR.withScaleLightening(0.15)).colour(end, coats);

    assertThat(found.base().l()).isCloseTo(51.84, within(0.05));
  }
}
