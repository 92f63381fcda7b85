package io.github.swatchwright.estimate;

import io.github.swatchwright.optics.OpticalConstants;
import io.github.swatchwright.spectrum.Bands;

/**
 * How the values measured on a painted patch change with the paints in it. The internal reflectance
 * R of a band depends on the mix's K and S alone, so every slope is ∂value/∂R · (∂R/∂K · dK + ∂R/∂S
 * · dS), and only dK and dS differ from one unknown to the next.
 */
final class PatchSlopes {
  private final OpticalConstants mixed;
  private final double[][] byInternal;
  private final double[] byK;
  private final double[] byS;

  /**
   * The slopes of a patch.
   *
   * @param mixed K and S of the mix
   * @param byInternal ∂value/∂R: a row for each measured value, a column for each band
   * @param byK ∂R/∂K of each band
   * @param byS ∂R/∂S of each band
   */
  PatchSlopes(OpticalConstants mixed, double[][] byInternal, double[] byK, double[] byS) {
    this.mixed = mixed;
    this.byInternal = byInternal;
    this.byK = byK;
    this.byS = byS;
  }

  /**
   * By a paint's own z and u. From q = (1 − R)²/2R follows dK/dz = −K·(1 + R) and dS/dz = 0, where
   * R is the paint's masstone; dK/du = K and dS/du = S, since u = ln S at the same q.
   *
   * @param own the paint's K and S
   * @param masstone its internal reflectance at full hiding
   * @param share its share of the mix, by volume
   */
  double[][] byPaint(OpticalConstants own, double[] masstone, double share) {
    double[][] slopes = new double[byInternal.length][OpticsState.SIZE];
    for (int band = 0; band < Bands.COUNT; band++) {
      double k = own.k(band);
      double s = own.s(band);
      double byZ = -share * k * (1 + masstone[band]) * byK[band];
      double byU = share * (k * byK[band] + s * byS[band]);
      for (int row = 0; row < byInternal.length; row++) {
        slopes[row][band] = byInternal[row][band] * byZ;
        slopes[row][Bands.COUNT + band] = byInternal[row][band] * byU;
      }
    }
    return slopes;
  }

  /**
   * What one standard deviation of a paint's amount does: more of it brings its own K and S, and
   * makes everything else a smaller share.
   *
   * @param amountError one standard deviation of the amount, as a share of it
   */
  double[] byAmount(OpticalConstants own, double share, double amountError) {
    double[] shift = new double[byInternal.length];
    for (int band = 0; band < Bands.COUNT; band++) {
      double byShare =
          share
              * ((own.k(band) - mixed.k(band)) * byK[band]
                  + (own.s(band) - mixed.s(band)) * byS[band])
              * amountError;
      for (int row = 0; row < shift.length; row++) {
        shift[row] += byInternal[row][band] * byShare;
      }
    }
    return shift;
  }

  /**
   * What one standard deviation of a film's thickness does. A thicker film is one with more K and
   * more S, in proportion.
   *
   * @param thicknessError one standard deviation of ln X
   */
  double[] byThickness(double thicknessError) {
    double[] shift = new double[byInternal.length];
    for (int row = 0; row < shift.length; row++) {
      for (int band = 0; band < Bands.COUNT; band++) {
        double byLogX = mixed.k(band) * byK[band] + mixed.s(band) * byS[band];
        shift[row] += byInternal[row][band] * byLogX * thicknessError;
      }
    }
    return shift;
  }

  /** By a strength, which multiplies S in all bands at the same q: the sum over u. */
  static double[][] byStrength(double[][] byPaint) {
    double[][] slopes = new double[byPaint.length][1];
    for (int row = 0; row < slopes.length; row++) {
      for (int band = 0; band < Bands.COUNT; band++) {
        slopes[row][0] += byPaint[row][Bands.COUNT + band];
      }
    }
    return slopes;
  }
}
