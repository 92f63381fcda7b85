package io.github.swatchwright.photo;

import io.github.swatchwright.colour.LinearRgb;

/** What a chart correction multiplies by its matrix to get XYZ. */
enum ChartTerms {
  /** Red, green and blue: a 3 × 3 matrix. */
  LINEAR(3) {
    @Override
    double[] of(LinearRgb c) {
      return new double[] {c.red(), c.green(), c.blue()};
    }
  },

  /**
   * The root polynomial of degree 2 (Finlayson, Mackiewicz and Hurlbert, "Color Correction Using
   * Root-Polynomial Regression", IEEE Transactions on Image Processing 24, 2015): r, g, b, √rg,
   * √gb, √rb. Every term scales with exposure, unlike squares.
   */
  ROOT_POLYNOMIAL(6) {
    @Override
    double[] of(LinearRgb c) {
      return new double[] {
        c.red(),
        c.green(),
        c.blue(),
        root(c.red(), c.green()),
        root(c.green(), c.blue()),
        root(c.red(), c.blue())
      };
    }
  };

  final int count;

  ChartTerms(int count) {
    this.count = count;
  }

  abstract double[] of(LinearRgb colour);

  private static double root(double one, double other) {
    return Math.sqrt(Math.max(0, one) * Math.max(0, other));
  }
}
