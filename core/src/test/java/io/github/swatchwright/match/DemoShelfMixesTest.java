package io.github.swatchwright.match;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.Lch;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.spectrum.TristimulusWeights;
import io.github.swatchwright.testdata.DemoShelf;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What every painter knows about mixing (common practice, without a source), on the demo shelf. */
class DemoShelfMixesTest {
  private static final Shelf SHELF = ShelfJson.parse(DemoShelf.text(), "demo shelf");
  private static final MixPredictor PREDICTOR =
      MixPredictor.of(ShelfOptics.estimate(SHELF), TristimulusWeights.D65);

  private static Lab colour(String mix) {
    return PREDICTOR.predict(Mix.parse(mix, SHELF)).lab();
  }

  private static Lch lch(String mix) {
    return colour(mix).toLch();
  }

  private static double hue(String mix) {
    return lch(mix).hueDegrees().orElseThrow();
  }

  @Test
  @DisplayName("blue and yellow make green")
  void blueAndYellowMakeGreen() {
    assertThat(hue("Phthalo blue:1, Arylide yellow:4")).isBetween(110.0, 180.0);
    assertThat(lch("Phthalo blue:1, Arylide yellow:4").c()).isGreaterThan(12);
    assertThat(hue("Ultramarine blue:1, Arylide yellow:2")).isBetween(100.0, 190.0);
  }

  @Test
  @DisplayName("black and yellow make an olive green")
  void blackAndYellowMakeOlive() {
    Lch olive = lch("Lamp black:1, Arylide yellow:8");
    assertThat(olive.hueDegrees().orElseThrow()).isBetween(100.0, 135.0);
    assertThat(olive.l()).isBetween(25.0, 60.0);
  }

  @Test
  @DisplayName("orange and blue make a dull brown or grey")
  void orangeAndBlueMakeADullBrown() {
    Lch dull = lch("Bright orange:2, Ultramarine blue:1");
    assertThat(dull.c()).isLessThan(0.4 * lch("Bright orange").c());
    assertThat(dull.l()).isLessThan(lch("Bright orange").l());
  }

  @Test
  @DisplayName("white cools and greys a red")
  void whiteCoolsAndGreysARed() {
    // Cooler: the hue turns towards blue, that is to smaller angles from a red's 30 degrees or so.
    assertThat(lch("Signal red:1, Titanium white:6").c()).isLessThan(lch("Signal red").c());
    assertThat(hue("Signal red:1, Titanium white:6")).isLessThan(hue("Signal red") - 2);
  }

  @Test
  @DisplayName("grey made from black and white is bluish")
  void greyFromBlackAndWhiteIsBluish() {
    Lab white = colour("Titanium white");
    assertThat(colour("Titanium white:12, Lamp black:1").b()).isLessThan(white.b() - 1);
  }

  @Test
  @DisplayName("a little black moves white far more than a little white moves black")
  void blackIsStrongerThanWhite() {
    double darkened = lch("Titanium white").l() - lch("Titanium white:15, Lamp black:1").l();
    double lightened = lch("Lamp black:15, Titanium white:1").l() - lch("Lamp black").l();
    assertThat(darkened).isGreaterThan(5 * lightened);
  }
}
