package io.github.swatchwright.calibrate;

import io.github.swatchwright.mix.Recipe;

/**
 * A test card that is worth painting.
 *
 * @param recipe whole drops
 * @param expectedDeltaE00 the mean error to be expected of the wanted mixes once it has been
 *     painted and measured, and those before it
 */
public record NextCard(Recipe recipe, double expectedDeltaE00) {}
