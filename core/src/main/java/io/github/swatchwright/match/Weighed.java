package io.github.swatchwright.match;

import io.github.swatchwright.mix.Prediction;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.optics.OpticalConstants;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What recipes are ranked by. A {@link RankedRecipe} says more, but many recipes are weighed for
 * each one that is shown.
 *
 * @param recipe whole drops
 * @param constants K(λ) and S(λ) of the mix
 * @param prediction what it will look like
 * @param deltaE00 difference of the predicted colour from the target
 * @param expectedDeltaE00 mean difference to expect
 * @param contrastRatio how well one coat of the mix hides, 0 to 1
 * @param acrossLights how well it keeps matching when the light changes, where that is known
 * @param pricePerMillilitre what a millilitre of it costs, where that is known
 * @param score what it is ranked by
 */
record Weighed(
    Recipe recipe,
    OpticalConstants constants,
    Prediction prediction,
    double deltaE00,
    double expectedDeltaE00,
    double contrastRatio,
    Optional<AcrossLights> acrossLights,
    OptionalDouble pricePerMillilitre,
    double score) {

  Weighed withScore(double newScore) {
    return new Weighed(
        recipe,
        constants,
        prediction,
        deltaE00,
        expectedDeltaE00,
        contrastRatio,
        acrossLights,
        pricePerMillilitre,
        newScore);
  }

  /** All that is shown of it. */
  RankedRecipe shown(double coatsToHide) {
    return new RankedRecipe(
        recipe,
        prediction,
        deltaE00,
        expectedDeltaE00,
        contrastRatio,
        coatsToHide,
        acrossLights,
        pricePerMillilitre,
        score);
  }
}
