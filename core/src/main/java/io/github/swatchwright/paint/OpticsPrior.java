package io.github.swatchwright.paint;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.spectrum.Bands;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * What is believed of a paint before any evidence: smooth spectra.
 *
 * <p>z ~ N(0, 0.2·(DᵀD + 0.005·I)⁻¹) with D the first differences; u ~ N(μ, sd²·11ᵀ +
 * 0.65²·exp(−|Δλ|/60 nm)), with a level (μ, sd) by make and lightness. The numbers were found on
 * measured artists' paints.
 */
final class OpticsPrior {
  private static final double Z_SCALE = 0.2;
  private static final double Z_PULL = 0.005;
  private static final double U_SHAPE_SD = 0.65;
  private static final double U_SHAPE_NM = 60;

  private static final double WHITE_LIGHTNESS = 90;
  private static final double WHITE_CHROMA = 8;

  private static final double[][] Z_COVARIANCE = zCovariance();

  private OpticsPrior() {}

  /**
   * A belief about the level of ln S.
   *
   * @param mean its mean
   * @param sd its standard deviation
   */
  record Level(double mean, double sd) {

    /** The level to expect from the make and the masstone's colour (D65). */
    static Level of(Make make, Lab masstone) {
      return switch (make) {
        case READY_MIXED -> new Level(0, 0.2);
        case UNSTATED -> new Level(0, 0.6);
        case SINGLE_PIGMENT ->
            isWhite(masstone) ? new Level(0, 0.2) : new Level(-4.4 + 0.031 * masstone.l(), 0.9);
      };
    }

    private static boolean isWhite(Lab masstone) {
      return masstone.l() >= WHITE_LIGHTNESS && masstone.chroma() <= WHITE_CHROMA;
    }
  }

  /** The belief about all 72 unknowns of a paint. */
  static GaussianBelief with(Level level) {
    double[] mean = new double[OpticsState.SIZE];
    double[][] covariance = new double[OpticsState.SIZE][OpticsState.SIZE];
    for (int i = 0; i < Bands.COUNT; i++) {
      mean[Bands.COUNT + i] = level.mean();
      for (int j = 0; j < Bands.COUNT; j++) {
        covariance[i][j] = Z_COVARIANCE[i][j];
        covariance[Bands.COUNT + i][Bands.COUNT + j] =
            level.sd() * level.sd() + shapeCovariance(i, j);
      }
    }
    return GaussianBelief.of(mean, covariance);
  }

  private static double shapeCovariance(int i, int j) {
    double distanceNm = Math.abs(Bands.wavelengthNm(i) - Bands.wavelengthNm(j));
    return U_SHAPE_SD * U_SHAPE_SD * Math.exp(-distanceNm / U_SHAPE_NM);
  }

  private static double[][] zCovariance() {
    RealMatrix precision = new Array2DRowRealMatrix(Bands.COUNT, Bands.COUNT);
    for (int i = 0; i < Bands.COUNT; i++) {
      precision.addToEntry(i, i, Z_PULL);
      if (i > 0) {
        precision.addToEntry(i, i, 1);
        precision.addToEntry(i - 1, i - 1, 1);
        precision.addToEntry(i, i - 1, -1);
        precision.addToEntry(i - 1, i, -1);
      }
    }
    return new LUDecomposition(precision)
        .getSolver()
        .getInverse()
        .scalarMultiply(Z_SCALE)
        .getData();
  }
}
