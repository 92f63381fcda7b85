package io.github.swatchwright.estimate;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.paint.Make;
import io.github.swatchwright.spectrum.Bands;
import java.util.Arrays;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * What is believed of a paint before any evidence: smooth spectra.
 *
 * <p>z ~ N(0, 0.2·(DᵀD + 0.005·I)⁻¹) with D the first differences; u ~ N(μ, sd²·11ᵀ +
 * shapeSd²·exp(−|Δλ|/60 nm)), with a level (μ, sd) by make and lightness. The levels were found on
 * measured artists' paints; how widely the shape of u spreads was then narrowed until eight in ten
 * predictions lay in their 80 % interval ({@code CardLadderTest}). Paints on a white base vary
 * less: white scatters much the same at all wavelengths, so what it carries does too.
 *
 * <p>A black is strong by what it absorbs: its K, not its S, is much the same from one to the next,
 * and far above what the lightness of a masstone would tell. Carbon black has K = 7.1 and S = 0.70
 * at 550 nm where white has S = 1 (Okumura 2005, thesis, RIT), and is the strongest of the common
 * blacks (common practice; no figures), so that K = 5 is expected, within the factor that any
 * single pigment is allowed.
 */
final class OpticsPrior {
  private static final double Z_SCALE = 0.2;
  private static final double Z_PULL = 0.005;
  private static final double U_SHAPE_NM = 60;

  private static final double WHITE_LIGHTNESS = 90;
  private static final double WHITE_CHROMA = 8;
  private static final double BLACK_LIGHTNESS = 35;
  private static final double BLACK_CHROMA = 5;
  private static final double BLACK_ABSORPTION = 5;

  private static final double[][] Z_COVARIANCE = zCovariance();

  private OpticsPrior() {}

  /**
   * A belief about scattering: ln S is a level, the same in all bands, plus a smooth shape.
   *
   * @param mean mean of the level
   * @param sd standard deviation of the level
   * @param shapeSd standard deviation of the shape in each band
   */
  record Scattering(double mean, double sd, double shapeSd) {
    private static final Scattering WHITE_BASE = new Scattering(0, 0.2, 0.2);

    /** A paint that nobody has seen unmixed: any make. */
    private static final Scattering UNSEEN = new Scattering(-2, 1.3, 0.65);

    /**
     * What to expect from the make and the masstone.
     *
     * @param make single pigment or not
     * @param masstone its colour (D65)
     * @param reflectance the belief about z
     */
    static Scattering of(Make make, Lab masstone, GaussianBelief reflectance) {
      return switch (make) {
        case READY_MIXED -> WHITE_BASE;
        case UNSTATED -> new Scattering(0, 0.6, 0.45);
        case SINGLE_PIGMENT -> ofPigment(masstone, reflectance);
      };
    }

    private static Scattering ofPigment(Lab masstone, GaussianBelief reflectance) {
      if (isWhite(masstone)) {
        return WHITE_BASE;
      }
      double level =
          isBlack(masstone)
              ? Math.log(BLACK_ABSORPTION) - meanLogQ(reflectance)
              : -4.4 + 0.031 * masstone.l();
      return new Scattering(level, 0.9, 0.45);
    }

    /** Mean of ln q = ln K/S over all bands. */
    private static double meanLogQ(GaussianBelief reflectance) {
      return Arrays.stream(OpticsState.masstone(reflectance.mean()))
          .map(r -> Math.log((1 - r) * (1 - r) / (2 * r)))
          .average()
          .orElseThrow();
    }

    /** The same shape about another level. */
    Scattering withLevel(double newMean, double newSd) {
      return new Scattering(newMean, newSd, shapeSd);
    }

    private static boolean isBlack(Lab masstone) {
      return masstone.l() <= BLACK_LIGHTNESS && masstone.chroma() <= BLACK_CHROMA;
    }

    private static boolean isWhite(Lab masstone) {
      return masstone.l() >= WHITE_LIGHTNESS && masstone.chroma() <= WHITE_CHROMA;
    }
  }

  /** The belief about all 72 unknowns of a paint that nobody has seen. */
  static GaussianBelief unseen() {
    return GaussianBelief.independent(masstone(), scattering(Scattering.UNSEEN));
  }

  /** The belief about z in all bands. */
  static GaussianBelief masstone() {
    return GaussianBelief.of(new double[Bands.COUNT], Z_COVARIANCE);
  }

  /** The belief about u in all bands. */
  static GaussianBelief scattering(Scattering scattering) {
    double[] mean = new double[Bands.COUNT];
    double[][] covariance = new double[Bands.COUNT][Bands.COUNT];
    for (int i = 0; i < Bands.COUNT; i++) {
      mean[i] = scattering.mean();
      for (int j = 0; j < Bands.COUNT; j++) {
        covariance[i][j] =
            scattering.sd() * scattering.sd() + shapeCovariance(scattering.shapeSd(), i, j);
      }
    }
    return GaussianBelief.of(mean, covariance);
  }

  private static double shapeCovariance(double sd, int i, int j) {
    double distanceNm = Math.abs(Bands.wavelengthNm(i) - Bands.wavelengthNm(j));
    return sd * sd * Math.exp(-distanceNm / U_SHAPE_NM);
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
