package io.github.swatchwright.estimate;

import io.github.swatchwright.spectrum.Bands;
import java.util.Arrays;

/**
 * What is believed of a paint's spectra before any evidence: that they are smooth.
 *
 * <p>z ~ N(0, 0.1·(DᵀD + 0.005·I)⁻¹) with D the first differences; u ~ N(μ, sd²·11ᵀ +
 * shapeSd²·exp(−|Δλ|/60 nm)), with a level by make and lightness ({@link Scattering}). Both
 * matrices are worked out once and shared by all paints.
 */
final class OpticsPrior {
  private static final double Z_SCALE = 0.1;

  /** The same for a paint whose colour isn't stated, so that its edges aren't known either. */
  private static final double UNSEEN_Z_SCALE = 0.2;

  private static final double Z_PULL = 0.005;
  private static final double U_SHAPE_NM = 60;

  private static final double[][] SMOOTH = zCovariance();
  private static final GaussianBelief MASSTONE = smooth(Z_SCALE);
  private static final GaussianBelief UNSEEN_MASSTONE = smooth(UNSEEN_Z_SCALE);

  private static final double[][] U_SHAPE = uShape();

  private OpticsPrior() {}

  /** The belief about all 72 unknowns of a paint that nobody has seen. */
  static GaussianBelief unseen() {
    return GaussianBelief.independent(UNSEEN_MASSTONE, scattering(Scattering.UNSEEN));
  }

  /** The belief about z in all bands of a paint whose colour isn't stated. */
  static GaussianBelief unseenMasstone() {
    return UNSEEN_MASSTONE;
  }

  private static GaussianBelief smooth(double scale) {
    return GaussianBelief.of(new double[Bands.COUNT], Covariance.of(SMOOTH, scale));
  }

  /**
   * The belief about z in all bands of a paint whose colour is stated. The smoothest spectrum of
   * that colour already has its edges, so that the true one strays from it by less.
   */
  static GaussianBelief masstone() {
    return MASSTONE;
  }

  /** The belief about u in all bands. */
  static GaussianBelief scattering(Scattering scattering) {
    return GaussianBelief.of(
        flat(scattering.mean()), shape(scattering.shapeSd()).plus(flat(scattering.sd())));
  }

  /** The covariance of u in all bands when its level is known. */
  static Covariance shape(double sd) {
    return Covariance.of(U_SHAPE, sd * sd);
  }

  /** The same value in all bands. */
  static double[] flat(double value) {
    double[] bands = new double[Bands.COUNT];
    Arrays.fill(bands, value);
    return bands;
  }

  private static double[][] uShape() {
    double[][] shape = new double[Bands.COUNT][Bands.COUNT];
    for (int i = 0; i < Bands.COUNT; i++) {
      for (int j = 0; j < Bands.COUNT; j++) {
        double distanceNm = Math.abs(Bands.wavelengthNm(i) - Bands.wavelengthNm(j));
        shape[i][j] = Math.exp(-distanceNm / U_SHAPE_NM);
      }
    }
    return shape;
  }

  /** (DᵀD + 0.005·I)⁻¹. */
  private static double[][] zCovariance() {
    double[][] precision = new double[Bands.COUNT][];
    for (int i = 0; i < Bands.COUNT; i++) {
      precision[i] = new double[i + 1];
      boolean isEnd = i == 0 || i == Bands.COUNT - 1;
      precision[i][i] = Z_PULL + (isEnd ? 1 : 2);
      if (i > 0) {
        precision[i][i - 1] = -1;
      }
    }
    return LowerTriangle.factor(precision).inverseBlock(0, Bands.COUNT);
  }
}
