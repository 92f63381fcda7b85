package io.github.swatchwright.calibrate;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.estimate.Dependence;
import io.github.swatchwright.estimate.PlannedPatch;
import io.github.swatchwright.mix.ColourSpread;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.mix.Prediction;
import io.github.swatchwright.mix.Recipe;

/**
 * A mix whose error counts, and how well it is known.
 *
 * @param recipe the mix
 * @param target the colour that it is for
 * @param spread what is to be expected of it
 * @param dependence how it depends on its paints
 */
record WantedMix(Recipe recipe, Lab target, ColourSpread spread, Dependence dependence) {

  /** A recipe for a target. */
  static WantedMix of(Recipe recipe, Lab target, MixPredictor predictor) {
    return new WantedMix(
        recipe, target, predictor.predict(recipe).spread(), predictor.dependence(recipe.toMix()));
  }

  /** A recipe that is wanted for what it is predicted to be. */
  static WantedMix of(Recipe recipe, MixPredictor predictor) {
    Prediction prediction = predictor.predict(recipe);
    return of(recipe, prediction.lab(), predictor);
  }

  double expectedDeltaE00() {
    return spread.expectedDeltaE00(target);
  }

  /** The same after a card. */
  WantedMix given(PlannedPatch card) {
    return new WantedMix(
        recipe, target, spread.less(card.takesOff(dependence)), card.given(dependence));
  }

  /** What of the error would be left after a card. */
  double expectedAfter(PlannedPatch card) {
    return spread.less(card.takesOff(dependence)).expectedDeltaE00(target);
  }

  /** About the same, for choosing among many cards. */
  double roughlyExpectedAfter(PlannedPatch card) {
    return spread.less(card.takesOff(dependence)).roughlyExpectedDeltaE00(target);
  }
}
