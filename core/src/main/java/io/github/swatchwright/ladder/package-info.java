/**
 * Ladders: shades in even steps from one end to another, mixed in one pot or each by itself, and
 * how much of an area each pass of them covers.
 *
 * <pre>{@code
 * LadderPlanner planner = LadderPlanner.of(ShelfOptics.estimate(shelf), TristimulusWeights.D65);
 * Shade dark = new Shade.OfColour(new Swatch.OfSrgb(Srgb.parse("#3B2A22")));
 * Shade fresh = new Shade.OfColour(new Swatch.OfSrgb(Srgb.parse("#B5622E")));
 * Ladder ladder = planner.plan(LadderRequest.between(dark, fresh, 4));
 * }</pre>
 */
@NullMarked
package io.github.swatchwright.ladder;

import org.jspecify.annotations.NullMarked;
