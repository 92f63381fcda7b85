package io.github.swatchwright.search;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.Xyz;
import io.github.swatchwright.optics.OpaqueSurface;
import io.github.swatchwright.optics.Viewing;
import io.github.swatchwright.spectrum.Bands;

/**
 * The colour of a mix of two amounts of paint, computed again and again for other ratios of them.
 * It reuses its arrays, so each thread needs one of its own.
 */
final class TwoPartColour {
  private final Viewing viewing;
  private final OpaqueSurface surface;
  private final double[] x;
  private final double[] y;
  private final double[] z;
  private final double[] seen = new double[Bands.COUNT];

  TwoPartColour(Viewing viewing) {
    this.viewing = viewing;
    surface = OpaqueSurface.of(viewing.surface());
    x = viewing.weights().x();
    y = viewing.weights().y();
    z = viewing.weights().z();
  }

  /** What drops absorb and scatter, in all bands. */
  static final class Amount {
    private final double[] k = new double[Bands.COUNT];
    private final double[] s = new double[Bands.COUNT];

    /** A number of drops of one paint, from the K and S of one drop. */
    static Amount of(double[] kDrop, double[] sDrop, int drops) {
      return new Amount().plus(kDrop, sDrop, drops);
    }

    /** Adds a number of drops of another paint. */
    Amount plus(double[] kDrop, double[] sDrop, int drops) {
      for (int band = 0; band < Bands.COUNT; band++) {
        k[band] += drops * kDrop[band];
        s[band] += drops * sDrop[band];
      }
      return this;
    }
  }

  /** The opaque colour of a mix of both, each amount taken this many times. */
  Lab lab(Amount first, double timesFirst, Amount second, double timesSecond) {
    for (int band = 0; band < Bands.COUNT; band++) {
      double k = timesFirst * first.k[band] + timesSecond * second.k[band];
      double s = timesFirst * first.s[band] + timesSecond * second.s[band];
      seen[band] = surface.seen(k, s);
    }
    double sumX = 0;
    double sumY = 0;
    double sumZ = 0;
    for (int band = 0; band < Bands.COUNT; band++) {
      sumX += x[band] * seen[band];
      sumY += y[band] * seen[band];
      sumZ += z[band] * seen[band];
    }
    return new Xyz(sumX, sumY, sumZ, viewing.weights().whitePoint()).toLab();
  }
}
