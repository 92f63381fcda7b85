/**
 * From a wanted colour to recipes in whole drops.
 *
 * <p>The search finds the recipes nearest in ΔE00; {@link io.github.swatchwright.match.Matcher}
 * ranks them by what the painter may expect to get, and says what is missing when none is near.
 *
 * <pre>{@code
 * Matcher matcher = Matcher.of(ShelfOptics.estimate(shelf), TristimulusWeights.D65);
 * Swatch target = new Swatch.OfSrgb(Srgb.parse("#8A4B2A"));
 * RankedRecipe best = matcher.match(MatchRequest.of(target)).recipes().get(0);
 * String drops = best.recipe().toMix().toText();
 * }</pre>
 */
@NullMarked
package io.github.swatchwright.match;

import org.jspecify.annotations.NullMarked;
