package io.github.swatchwright.mix;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.spectrum.Reflectance;

/**
 * What a mix will look like at full hiding.
 *
 * @param reflectance as seen, surface included
 * @param spread the colour under the chosen light, relative to its white, and how well it is known
 */
public record Prediction(Reflectance reflectance, ColourSpread spread) {

  /** The probability that {@link #intervalDeltaE00} stands for. */
  public static final double INTERVAL_PROBABILITY = 0.8;

  /** The most probable colour under the chosen light. */
  public Lab lab() {
    return spread.centre();
  }

  /** The same as sRGB, adapted to D65; not displayable when the display can't show it. */
  public Srgb srgb() {
    return lab().toSrgb();
  }

  /** The ΔE00 about {@link #lab} that holds the painted colour with 80 % probability. */
  public double intervalDeltaE00() {
    return spread.radius(INTERVAL_PROBABILITY);
  }
}
