package io.github.swatchwright.difference;

import io.github.swatchwright.argument.Require;

/**
 * A CIEDE2000 colour difference and what it is made of. ΔL′, ΔC′ and ΔH′ are the standard's, in
 * CIELAB units before weighting, so that they can be read as "lighter by 3"; all are sample minus
 * reference.
 *
 * @param deltaE ΔE00, at least 0
 * @param deltaL ΔL′, positive when the sample is lighter
 * @param deltaC ΔC′, positive when the sample has more chroma
 * @param deltaH ΔH′, positive when the sample's hue is counter-clockwise of the reference's (from
 *     red to yellow, yellow to green …); 0 when either is neutral
 */
public record ColourDifference(double deltaE, double deltaL, double deltaC, double deltaH) {

  /** Refuses values that are not finite, and a negative ΔE00. */
  public ColourDifference {
    Require.nonNegative("deltaE", deltaE);
    Require.finite("deltaL", deltaL);
    Require.finite("deltaC", deltaC);
    Require.finite("deltaH", deltaH);
  }

  /** The difference in plain words. */
  public Verdict verdict() {
    return Verdict.of(deltaE);
  }
}
