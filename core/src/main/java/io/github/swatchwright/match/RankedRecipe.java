package io.github.swatchwright.match;

import io.github.swatchwright.mix.Prediction;
import io.github.swatchwright.mix.Recipe;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A proposed recipe.
 *
 * @param recipe whole drops
 * @param prediction what it will look like
 * @param deltaE00 difference of the predicted colour from the target
 * @param expectedDeltaE00 mean difference to expect, with the paints' errors and the scatter of
 *     drops
 * @param contrastRatio how well one coat of the mix hides, 0 to 1
 * @param coatsToHide coats of the mix at which it hides, not whole, above 0
 * @param acrossLights how well it keeps matching when the light changes; known only when the
 *     reflectance of the target and of every paint in it was measured
 * @param pricePerMillilitre what a millilitre of it costs; known only when every paint's price is;
 *     a pot costs nothing any more
 * @param score what recipes are ranked by: the expected difference, and what the wishes add to it
 */
public record RankedRecipe(
    Recipe recipe,
    Prediction prediction,
    double deltaE00,
    double expectedDeltaE00,
    double contrastRatio,
    double coatsToHide,
    Optional<AcrossLights> acrossLights,
    OptionalDouble pricePerMillilitre,
    double score) {}
