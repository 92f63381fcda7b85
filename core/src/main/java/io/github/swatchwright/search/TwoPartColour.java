package io.github.swatchwright.search;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.Xyz;
import io.github.swatchwright.optics.Viewing;
import io.github.swatchwright.spectrum.Bands;

/** The colour of two stated amounts, again and again. Not for use from several threads. */
final class TwoPartColour {
  private final Viewing viewing;
  private final double[] x;
  private final double[] y;
  private final double[] z;
  private final double[] seen = new double[Bands.COUNT];

  TwoPartColour(Viewing viewing) {
    this.viewing = viewing;
    x = viewing.weights().x();
    y = viewing.weights().y();
    z = viewing.weights().z();
  }

  /** What drops absorb and scatter, in all bands. */
  static final class Amount {
    private final double[] k = new double[Bands.COUNT];
    private final double[] s = new double[Bands.COUNT];

    /** So many drops, of which one brings this much. */
    static Amount of(double[] kDrop, double[] sDrop, int drops) {
      return new Amount().plus(kDrop, sDrop, drops);
    }

    /** Adds so many drops to it. */
    Amount plus(double[] kDrop, double[] sDrop, int drops) {
      for (int band = 0; band < Bands.COUNT; band++) {
        k[band] += drops * kDrop[band];
        s[band] += drops * sDrop[band];
      }
      return this;
    }
  }

  /** The colour of some of both, by the formula that {@link MixColour} explains. */
  Lab lab(Amount first, double timesFirst, Amount second, double timesSecond) {
    double k1 = viewing.surface().k1();
    double k2 = viewing.surface().k2();
    double through = (1 - k1) * (1 - k2);
    for (int band = 0; band < Bands.COUNT; band++) {
      double k = timesFirst * first.k[band] + timesSecond * second.k[band];
      double s = timesFirst * first.s[band] + timesSecond * second.s[band];
      double d = k + s + Math.sqrt(k * (k + 2 * s));
      seen[band] = k1 + through * s / (d - k2 * s);
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
