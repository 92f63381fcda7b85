package io.github.swatchwright.optics;

/**
 * What is seen of a paint at full hiding, straight from its K and S. Searches compare millions of
 * mixes: this takes one root and one division a band, and makes no objects.
 *
 * <p>With D = K + S + √(K² + 2KS) the film reflects R∞ = S/D inside ({@link KubelkaMunk}), and
 * {@link Saunderson}'s correction of it is k1 + (1 − k1)(1 − k2)·S/(D − k2·S).
 */
public final class OpaqueSurface {
  private final double k1;
  private final double k2;
  private final double through;

  private OpaqueSurface(Saunderson surface) {
    k1 = surface.k1();
    k2 = surface.k2();
    through = (1 - k1) * (1 - k2);
  }

  /** Opaque paint under this surface. */
  public static OpaqueSurface of(Saunderson surface) {
    return new OpaqueSurface(surface);
  }

  /**
   * The reflectance seen in one band.
   *
   * @param k absorption, at least 0; not checked, and neither is s
   * @param s scattering, above 0, in any unit that k has too
   */
  public double seen(double k, double s) {
    return k1 + through * s / (KubelkaMunk.divisor(k, s) - k2 * s);
  }
}
