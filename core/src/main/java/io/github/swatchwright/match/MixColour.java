package io.github.swatchwright.match;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.WhitePoint;
import io.github.swatchwright.colour.Xyz;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.spectrum.Bands;
import io.github.swatchwright.spectrum.TristimulusWeights;

/**
 * The colour of a mix that is put together paint by paint, and its difference from a target,
 * without an object per mix. Not for use from several threads.
 *
 * <p>With D = K + S + √(K² + 2KS) the opaque film reflects R = S/D inside, and Saunderson's
 * correction of it is k1 + (1 − k1)(1 − k2)·S/(D − k2·S): one division a band.
 */
final class MixColour {
  private final double[][] absorption;
  private final double[][] scattering;
  private final double[][] k;
  private final double[][] s;
  private final double[] wx = new double[Bands.COUNT];
  private final double[] wy = new double[Bands.COUNT];
  private final double[] wz = new double[Bands.COUNT];
  private final WhitePoint white;
  private final Saunderson surface;
  private final Lab target;

  MixColour(SearchSpace space, Lab target, int paints) {
    absorption = space.absorptionPerDrop();
    scattering = space.scatteringPerDrop();
    k = new double[paints + 1][Bands.COUNT];
    s = new double[paints + 1][Bands.COUNT];
    TristimulusWeights weights = space.viewing().weights();
    for (int i = 0; i < Bands.COUNT; i++) {
      wx[i] = weights.x(i);
      wy[i] = weights.y(i);
      wz[i] = weights.z(i);
    }
    white = weights.whitePoint();
    surface = space.viewing().surface();
    this.target = target;
  }

  /** Puts so many drops of a paint on top of what the earlier places hold. */
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

  /** ΔE00 of the whole mix from the target. */
  double deltaE00() {
    double[] mixK = k[k.length - 1];
    double[] mixS = s[s.length - 1];
    double k1 = surface.k1();
    double k2 = surface.k2();
    double through = (1 - k1) * (1 - k2);
    double x = 0;
    double y = 0;
    double z = 0;
    for (int i = 0; i < Bands.COUNT; i++) {
      double d = mixK[i] + mixS[i] + Math.sqrt(mixK[i] * (mixK[i] + 2 * mixS[i]));
      double seen = k1 + through * mixS[i] / (d - k2 * mixS[i]);
      x += wx[i] * seen;
      y += wy[i] * seen;
      z += wz[i] * seen;
    }
    return Ciede2000.deltaE(target, new Xyz(x, y, z, white).toLab());
  }
}
