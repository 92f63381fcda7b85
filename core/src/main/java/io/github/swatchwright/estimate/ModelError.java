package io.github.swatchwright.estimate;

import io.github.swatchwright.optics.Viewing;
import io.github.swatchwright.spectrum.Bands;

/**
 * How far real mixes stray from Kubelka and Munk's model: by ΔE00 0.3 to 0.5, and smoothly over the
 * bands, so that 31 measured bands are not 31 independent truths.
 *
 * <p>The error is taken in units of L* at each band, e = 116·∛R: its sd is {@value #SHARE} of the
 * mean ΔE00, and two bands err alike by exp(−½(Δλ/{@value #LENGTH_NM} nm)²). Colour cards carry it
 * too, as what such an error does to L*, a* and b*.
 */
final class ModelError {
  private static final double SHARE = 0.8;
  private static final double LENGTH_NM = 80;

  /**
   * The share of its variance that differs from band to band: two strokes of one paint repeat so.
   */
  private static final double ROUGH = 0.35;

  private static final double[][] CORRELATION = correlation();

  private ModelError() {}

  private static double[][] correlation() {
    double[][] correlation = new double[Bands.COUNT][Bands.COUNT];
    for (int i = 0; i < Bands.COUNT; i++) {
      for (int j = 0; j < Bands.COUNT; j++) {
        double distance = (i - j) * Bands.STEP_NM / LENGTH_NM;
        correlation[i][j] = (1 - ROUGH) * Math.exp(-distance * distance / 2) + (i == j ? ROUGH : 0);
      }
    }
    return correlation;
  }

  /**
   * Its covariance in measured values.
   *
   * @param deltaE00 how far mixes stray, as mean ΔE00
   * @param internal internal reflectance, all bands
   * @param slopes derivatives of the values by it: a row for each value
   * @return as many rows and columns as there are values
   */
  static double[][] of(double deltaE00, double[] internal, double[][] slopes, Viewing viewing) {
    double[] unit = new double[Bands.COUNT];
    for (int band = 0; band < unit.length; band++) {
      double seen = viewing.surface().seen(internal[band]);
      unit[band] =
          SHARE
              * deltaE00
              * 3.0
              / 116
              * StrictMath.cbrt(seen * seen)
              / viewing.surface().slope(internal[band]);
    }
    double[][] scaled = new double[slopes.length][Bands.COUNT];
    double[][] spread = new double[slopes.length][Bands.COUNT];
    for (int row = 0; row < slopes.length; row++) {
      for (int band = 0; band < unit.length; band++) {
        scaled[row][band] = slopes[row][band] * unit[band];
      }
      for (int band = 0; band < unit.length; band++) {
        spread[row][band] = LowerTriangle.dot(scaled[row], CORRELATION[band]);
      }
    }
    double[][] covariance = new double[slopes.length][slopes.length];
    for (int i = 0; i < slopes.length; i++) {
      for (int j = 0; j < slopes.length; j++) {
        covariance[i][j] = LowerTriangle.dot(spread[i], scaled[j]);
      }
    }
    return covariance;
  }
}
