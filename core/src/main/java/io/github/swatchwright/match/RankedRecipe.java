package io.github.swatchwright.match;

import io.github.swatchwright.mix.Prediction;
import io.github.swatchwright.mix.Recipe;

/**
 * A proposed recipe.
 *
 * @param recipe whole drops
 * @param prediction what it will look like
 * @param deltaE00 difference of the predicted colour from the target
 * @param expectedDeltaE00 mean difference to expect, with the paints' errors and the scatter of
 *     drops: what recipes are ranked by
 */
public record RankedRecipe(
    Recipe recipe, Prediction prediction, double deltaE00, double expectedDeltaE00) {}
