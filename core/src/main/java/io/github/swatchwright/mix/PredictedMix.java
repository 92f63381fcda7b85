package io.github.swatchwright.mix;

/**
 * A mix and what it will look like.
 *
 * @param mix the mix
 * @param prediction its colour and spread
 */
public record PredictedMix(Mix mix, Prediction prediction) {}
