package io.github.swatchwright.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.optics.OpticalConstants;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.spectrum.TristimulusWeights;
import io.github.swatchwright.testdata.DemoShelf;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;
import org.junit.jupiter.api.Test;

class PotTest {
  private static final Shelf SHELF = ShelfJson.parse(DemoShelf.text(), "demo shelf");
  private static final MixPredictor PREDICTOR =
      MixPredictor.of(ShelfOptics.estimate(SHELF), TristimulusWeights.D65);
  private static final Paint WHITE = SHELF.paint("Titanium white");

  private static Recipe recipe(int white, String pot, int drops) {
    return new Recipe(
        List.of(new Recipe.Drops(WHITE, white)),
        List.of(new Recipe.PotDrops(Pot.parse(pot, SHELF), drops)));
  }

  @Test
  void aPotSaysHowMuchItHolds() {
    Pot pot = Pot.parse("Red oxide:6, Titanium white:2.5", SHELF);
    assertThat(pot.drops()).isEqualTo(8.5);
    assertThat(pot.wholeDrops()).isEqualTo(8);
    // Both paints of the demo shelf drop 0.045 ml.
    assertThat(pot.dropMillilitres()).isCloseTo(0.045, within(1e-15));
    assertThat(pot.name()).isEqualTo("pot of Red oxide:6, Titanium white:2.5");
    assertThat(pot.medium()).isEqualTo(WHITE.medium());
  }

  @Test
  void aRecipeOfAPotLooksLikeTheMixOfWhatIsInIt() {
    Recipe recipe = recipe(3, "Red oxide:6, Titanium white:2", 4);
    assertThat(recipe.toMix()).isEqualTo(Mix.parse("Titanium white:4, Red oxide:3", SHELF));
    assertThat(PREDICTOR.predict(recipe).lab()).isEqualTo(PREDICTOR.predict(recipe.toMix()).lab());
    assertThat(recipe.total()).isEqualTo(7);
    assertThat(recipe.names())
        .containsExactlyInAnyOrder("Titanium white", "pot of Red oxide:6, Titanium white:2");
  }

  @Test
  void dropsOfPotsAreReducedWithThoseOfPaints() {
    assertThat(recipe(6, "Red oxide:20, Titanium white:6", 9).reduced())
        .isEqualTo(recipe(2, "Red oxide:20, Titanium white:6", 3));
  }

  @Test
  void aPotAloneIsItsOwnColourAndOnlyItsOwnDropsScatter() {
    Pot pot = Pot.parse("Red oxide:6, Titanium white:2", SHELF);
    Recipe alone = new Recipe(List.of(), List.of(new Recipe.PotDrops(pot, 3)));
    Prediction ofPot = PREDICTOR.predict(alone);
    Prediction ofMix = PREDICTOR.predict(pot.contents());
    // The same sums in another order: rounding.
    assertThat(Ciede2000.deltaE(ofPot.lab(), ofMix.lab())).isCloseTo(0, within(1e-9));
    // Drops of a pot change nothing when there is nothing else, so the spreads are the same too.
    assertThat(ofPot.intervalDeltaE00()).isCloseTo(ofMix.intervalDeltaE00(), within(1e-9));
  }

  /** A second way: pots and recipes mixed by chance, drop by drop, with the paints as estimated. */
  @Test
  void spreadFromDropsAgreesWithSimulatedPots() {
    Recipe recipe = recipe(3, "Red oxide:20, Titanium white:6", 4);
    double[] linear = scatterAlone(recipe);
    Random random = new Random(5);
    SummaryStatistics[] lab = {
      new SummaryStatistics(), new SummaryStatistics(), new SummaryStatistics()
    };
    for (int trial = 0; trial < 4000; trial++) {
      double red = drops(20, random);
      double white = drops(6, random);
      double potShare = drops(4, random) / (red + white);
      OpticalConstants mixed =
          OpticalConstants.mix(
              new OpticalConstants[] {
                PREDICTOR.constants(Mix.of(WHITE)),
                PREDICTOR.constants(Mix.of(SHELF.paint("Red oxide")))
              },
              new double[] {drops(3, random) + white * potShare, red * potShare});
      Lab seen = PREDICTOR.viewing().lab(mixed.opaque());
      lab[0].addValue(seen.l());
      lab[1].addValue(seen.a());
      lab[2].addValue(seen.b());
    }
    for (int axis = 0; axis < 3; axis++) {
      // First order against 4,000 draws: the draws' own error is 1.1 % of an sd, curvature the
      // rest.
      assertThat(linear[axis])
          .isCloseTo(lab[axis].getStandardDeviation(), within(0.05 * linear[axis]));
    }
  }

  private static double drops(int count, Random random) {
    double volume = 0;
    for (int i = 0; i < count; i++) {
      volume += 1 + MixPredictor.USUAL_DROP_SCATTER * random.nextGaussian();
    }
    return volume;
  }

  /** Variances add: what the scatter of drops puts on top of the paints' own errors. */
  private static double[] scatterAlone(Recipe recipe) {
    double[] with = PREDICTOR.predict(recipe).spread().standardDeviations();
    double[] without = PREDICTOR.withDropScatter(0).predict(recipe).spread().standardDeviations();
    double[] alone = new double[3];
    for (int axis = 0; axis < 3; axis++) {
      alone[axis] = Math.sqrt(with[axis] * with[axis] - without[axis] * without[axis]);
    }
    return alone;
  }

  @Test
  void impossiblePotsAreRefused() {
    List<String> messages = new ArrayList<>();
    for (String text : List.of("Red oxide:0.5", "Red oxid:6", "Red oxide:1, Bucket-chain rust:1")) {
      assertThatIllegalArgumentException()
          .isThrownBy(() -> Pot.parse(text, SHELF))
          .satisfies(e -> messages.add(e.getMessage()));
    }
    assertThat(messages.get(0))
        .isEqualTo("drops in the pot is 0.5, must be within [1.0, 1000000.0]");
    assertThat(messages.get(1)).startsWith("no paint 'Red oxid' on the shelf");
    assertThat(messages.get(2)).startsWith("a pot holds one medium");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> recipe(1, "Red oxide:6, Titanium white:2", 9))
        .withMessage("drops of 'pot of Red oxide:6, Titanium white:2' is 9, must be within [1, 8]");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> recipe(1, "Bucket-chain rust:6", 2))
        .withMessageStartingWith("a pot holds one medium");
  }
}
