/**
 * Mixes of paints: whole-drop recipes, mixes in any parts, and what they will look like.
 *
 * <p>A prediction is a reflectance, a colour and the spread that the paints' own errors and the
 * scatter of drops give to it.
 *
 * <pre>{@code
 * MixPredictor predictor = MixPredictor.of(ShelfOptics.estimate(shelf), TristimulusWeights.D65);
 * Prediction grey = predictor.predict(Mix.parse("Titanium white:3, Lamp black:1", shelf));
 * double within = grey.intervalDeltaE00();
 * }</pre>
 */
@NullMarked
package io.github.swatchwright.mix;

import org.jspecify.annotations.NullMarked;
