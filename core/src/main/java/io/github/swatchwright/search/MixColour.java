package io.github.swatchwright.search;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.WhitePoint;
import io.github.swatchwright.colour.Xyz;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.optics.OpaqueSurface;
import io.github.swatchwright.spectrum.Bands;
import io.github.swatchwright.spectrum.TristimulusWeights;

/**
 * The difference from a target of a mix that is put together paint by paint. A search asks for
 * millions of them, so that no object is made for any one mix. Not for use from several threads.
 */
final class MixColour {
  /** S_L = 1 + 0.015(L̄ − 50)²/√(20 + (L̄ − 50)²) at a mean lightness of 0 or 100, its largest. */
  static final double LARGEST_SL = 1 + 0.015 * 2500 / Math.sqrt(2520);

  private final double[][] absorption;
  private final double[][] scattering;
  private final double[][] k;
  private final double[][] s;
  private final double[] wx = new double[Bands.COUNT];
  private final double[] wy = new double[Bands.COUNT];
  private final double[] wz = new double[Bands.COUNT];
  private final WhitePoint white;
  private final OpaqueSurface surface;
  private Lab target;
  private final double[] seen = new double[Bands.COUNT];
  private double threshold = Double.POSITIVE_INFINITY;
  private double lowestY = Double.NEGATIVE_INFINITY;
  private double highestY = Double.POSITIVE_INFINITY;

  MixColour(SearchSpace space, Lab target, int paints) {
    this(space, space.absorptionPerDrop(), space.scatteringPerDrop(), target, paints);
  }

  /**
   * The same with the space's tables at hand.
   *
   * @param absorption {@link SearchSpace#absorptionPerDrop()}
   * @param scattering {@link SearchSpace#scatteringPerDrop()}
   */
  MixColour(
      SearchSpace space, double[][] absorption, double[][] scattering, Lab target, int paints) {
    this.absorption = absorption;
    this.scattering = scattering;
    k = new double[paints + 1][Bands.COUNT];
    s = new double[paints + 1][Bands.COUNT];
    TristimulusWeights weights = space.viewing().weights();
    for (int i = 0; i < Bands.COUNT; i++) {
      wx[i] = weights.x(i);
      wy[i] = weights.y(i);
      wz[i] = weights.z(i);
    }
    white = weights.whitePoint();
    surface = OpaqueSurface.of(space.viewing().surface());
    this.target = target;
  }

  /** Measures from another target. */
  void turnTo(Lab other) {
    target = other;
    threshold = Double.POSITIVE_INFINITY;
    lowestY = Double.NEGATIVE_INFINITY;
    highestY = Double.POSITIVE_INFINITY;
  }

  /** Adds drops of a paint to what the earlier places hold. */
  void add(int place, int paint, int drops) {
    double[] k0 = k[place];
    double[] s0 = s[place];
    double[] k1 = k[place + 1];
    double[] s1 = s[place + 1];
    double[] kDrop = absorption[paint];
    double[] sDrop = scattering[paint];
    for (int i = 0; i < Bands.COUNT; i++) {
      k1[i] = k0[i] + drops * kDrop[i];
      s1[i] = s0[i] + drops * sDrop[i];
    }
  }

  /**
   * ΔE00 of the whole mix from the target, or infinity when its Y alone says that it is above the
   * limit.
   */
  double deltaE00(double limit) {
    if (limit != threshold) {
      tighten(limit);
    }
    double[] mixK = k[k.length - 1];
    double[] mixS = s[s.length - 1];
    double y = 0;
    for (int i = 0; i < Bands.COUNT; i++) {
      seen[i] = surface.seen(mixK[i], mixS[i]);
      y += wy[i] * seen[i];
    }
    if (y < lowestY || y > highestY) {
      return Double.POSITIVE_INFINITY;
    }
    double x = 0;
    double z = 0;
    for (int i = 0; i < Bands.COUNT; i++) {
      x += wx[i] * seen[i];
      z += wz[i] * seen[i];
    }
    return Ciede2000.deltaE(target, new Xyz(x, y, z, white).toLab());
  }

  /**
   * Finds the Y that can still be within the limit. The chroma and hue terms of CIEDE2000 are never
   * negative together, since |R_T| is below 2, so ΔE00 ≥ |ΔL′|/S_L; a margin of a millionth is for
   * rounding.
   */
  private void tighten(double limit) {
    threshold = limit;
    double step = LARGEST_SL * limit * (1 + 1e-6) + 1e-6;
    lowestY = target.l() > step ? luminance(target.l() - step) : Double.NEGATIVE_INFINITY;
    highestY = step < 1e3 ? luminance(target.l() + step) : Double.POSITIVE_INFINITY;
  }

  private double luminance(double lightness) {
    return new Lab(lightness, 0, 0, white).toXyz().y();
  }
}
