package io.github.swatchwright.spectrum;

/** Gathers the 5 nm products of light and observer into the 10 nm bands of a reflectance. */
final class WeightTable {
  /** Lagrange's cubic half-way between the middle two of four equally spaced points. */
  private static final double[] CUBIC_MIDDLE = {-1 / 16.0, 9 / 16.0, 9 / 16.0, -1 / 16.0};

  /** Lagrange's quadratic half-way between the first two of three equally spaced points. */
  private static final double[] QUADRATIC_START = {3 / 8.0, 6 / 8.0, -1 / 8.0};

  private WeightTable() {}

  /** Weights of X, Y and Z by band, scaled so that those of Y sum to 100. */
  static double[][] fiveNanometre(Illuminant illuminant, Observer observer) {
    double[] power = illuminant.power();
    double[][] matching = observer.matchingFunctions();
    double k = 100 / dot(power, matching[1]);
    double[][] weights = new double[3][];
    for (int channel = 0; channel < 3; channel++) {
      weights[channel] = gather(power, matching[channel], k);
    }
    return weights;
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  private static double[] gather(double[] power, double[] matching, double k) {
    double[] weights = new double[Bands.COUNT];
    int last = Bands.COUNT - 1;
    for (int row = 0; row < power.length; row++) {
      double product = k * power[row] * matching[row];
      int band = row / 2;
      if (band >= last) {
        weights[last] += product;
      } else if (row % 2 == 0) {
        weights[band] += product;
      } else if (band == 0) {
        spread(weights, product, 0, 1, QUADRATIC_START);
      } else if (band == last - 1) {
        spread(weights, product, last, -1, QUADRATIC_START);
      } else {
        spread(weights, product, band - 1, 1, CUBIC_MIDDLE);
      }
    }
    return weights;
  }

  private static void spread(
      double[] weights, double product, int start, int step, double[] shares) {
    for (int i = 0; i < shares.length; i++) {
      weights[start + step * i] += product * shares[i];
    }
  }
}
