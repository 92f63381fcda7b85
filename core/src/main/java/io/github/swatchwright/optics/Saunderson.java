package io.github.swatchwright.optics;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.spectrum.SurfaceMap;

/**
 * The surface between paint and air (Saunderson 1942): some light is reflected on the way in, and
 * most of what comes from below is thrown back in.
 *
 * <p>Seen, specular light included: Rm = k1 + (1 − k1)(1 − k2)·Ri / (1 − k2·Ri).
 *
 * @param k1 share of the incoming light that the surface reflects, 0 to below 1; about 0.04
 * @param k2 share of the light from inside that the surface throws back, 0 to below 1; 0.596 for a
 *     refractive index of 1.5, less in practice
 */
public record Saunderson(double k1, double k2) implements SurfaceMap {

  /** No surface at all: what is inside is seen. */
  public static final Saunderson NONE = new Saunderson(0, 0);

  /** Refuses values outside 0 to below 1. */
  public Saunderson {
    Require.within("k1", k1, 0, Math.nextDown(1.0));
    Require.within("k2", k2, 0, Math.nextDown(1.0));
  }

  /** Seen reflectance, specular light included, of an internal reflectance of 0 to 1. */
  @Override
  public double seen(double internal) {
    return k1 + (1 - k1) * (1 - k2) * internal / (1 - k2 * internal);
  }

  /** Seen reflectance when the instrument leaves out the specular light. */
  public double seenWithoutGloss(double internal) {
    return seen(internal) - k1;
  }

  /** dRm/dRi = (1 − k1)(1 − k2) / (1 − k2·Ri)². */
  @Override
  public double slope(double internal) {
    double through = 1 - k2 * internal;
    return (1 - k1) * (1 - k2) / (through * through);
  }

  /** d²Rm/dRi² = 2·k2·(1 − k1)(1 − k2) / (1 − k2·Ri)³. */
  @Override
  public double curvature(double internal) {
    return 2 * k2 / (1 - k2 * internal) * slope(internal);
  }

  /**
   * Internal reflectance of a seen one, specular light included: 0 at k1, 1 at 1.
   *
   * @param seen reflectance, k1 to 1
   */
  public double internal(double seen) {
    Require.within("seen", seen, k1, 1);
    double above = seen - k1;
    return above / ((1 - k1) * (1 - k2) + k2 * above);
  }
}
