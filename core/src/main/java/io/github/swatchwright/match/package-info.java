/**
 * From a wanted colour to recipes in whole drops.
 *
 * <p>{@link io.github.swatchwright.match.RecipeSearch} finds the recipes nearest in ΔE00; {@link
 * io.github.swatchwright.match.Matcher} ranks them by what the painter may expect to get, and says
 * what is missing when none is near.
 */
@NullMarked
package io.github.swatchwright.match;

import org.jspecify.annotations.NullMarked;
