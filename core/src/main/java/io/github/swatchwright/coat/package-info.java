/**
 * Coats, washes and filters over what is already there: what they will look like, how many it
 * takes, in which order media go, and how much paint it needs.
 *
 * <pre>{@code
 * CoatPredictor predictor = CoatPredictor.of(ShelfOptics.estimate(shelf), TristimulusWeights.D65);
 * List<Coat> coats = Coats.parse("Whitewash wash:2, Blue filter:3", shelf);
 * List<CoatStep> steps = predictor.predict(new Base.OfMix(Mix.parse("Dredger grey", shelf)), coats);
 * }</pre>
 */
@NullMarked
package io.github.swatchwright.coat;

import org.jspecify.annotations.NullMarked;
