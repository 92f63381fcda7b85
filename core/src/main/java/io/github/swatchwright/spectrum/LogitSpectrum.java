package io.github.swatchwright.spectrum;

/**
 * A reflectance by z = logit(Ri) of its internal values: always strictly between 0 and 1. Holds
 * what is seen of it, with derivatives by z, and the colour as ratios X/Xn, Y/Yn, Z/Zn. A workspace
 * of one thread.
 */
final class LogitSpectrum {
  private final double[][] shares;
  private final SurfaceMap surface;

  /** What is seen at each band. */
  final double[] seen = new double[Bands.COUNT];

  /** First derivative of {@link #seen} by z. */
  final double[] first = new double[Bands.COUNT];

  /** Second derivative of {@link #seen} by z. */
  final double[] second = new double[Bands.COUNT];

  /** X/Xn, Y/Yn, Z/Zn. */
  final double[] ratios = new double[3];

  /**
   * A workspace.
   *
   * @param shares weights of X, Y and Z, each divided by the white, so that it sums to 1
   */
  LogitSpectrum(double[][] shares, SurfaceMap surface) {
    this.shares = shares;
    this.surface = surface;
  }

  static double internal(double z) {
    return 1 / (1 + Math.exp(-z));
  }

  static double logit(double internal) {
    return Math.log(internal / (1 - internal));
  }

  void moveTo(double[] z) {
    for (int band = 0; band < Bands.COUNT; band++) {
      double e = Math.exp(-Math.abs(z[band]));
      double tail = e / (1 + e);
      double r = z[band] > 0 ? 1 - tail : tail;
      double slope = tail * (1 - tail);
      double turn = slope * (z[band] > 0 ? 2 * tail - 1 : 1 - 2 * tail);
      double surfaceSlope = surface.slope(r);
      seen[band] = surface.seen(r);
      first[band] = surfaceSlope * slope;
      second[band] = surface.curvature(r) * slope * slope + surfaceSlope * turn;
    }
    for (int channel = 0; channel < 3; channel++) {
      ratios[channel] = dot(shares[channel], seen);
    }
  }

  /** The derivative of a channel's ratio by z at a band. */
  double ratioSlope(int channel, int band) {
    return shares[channel][band] * first[band];
  }

  /** Σ over channels of factor × weight at a band. */
  double weigh(double[] factors, int band) {
    return factors[0] * shares[0][band]
        + factors[1] * shares[1][band]
        + factors[2] * shares[2][band];
  }

  static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
