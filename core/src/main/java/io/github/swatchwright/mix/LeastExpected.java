package io.github.swatchwright.mix;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.estimate.LeastSpread;
import io.github.swatchwright.estimate.PaintOptics;
import io.github.swatchwright.optics.OpticalConstants;
import io.github.swatchwright.optics.Viewing;
import io.github.swatchwright.spectrum.Bands;
import java.util.List;

/**
 * What is to be expected of a mix at best: a bound below {@link ColourSpread#expectedDeltaE00} of
 * its {@link Prediction}, in a tenth of the time when the mix is far from the limit asked about and
 * in a third when it is near, for telling which of thousands of recipes are worth predicting.
 *
 * <p>Were ΔE00 a norm, its mean over a cloud would be at least the centre's, and grow with the
 * cloud. It is bent: hue counts less the further colours are apart. So each bound is a share:
 *
 * <ul>
 *   <li>{@value #OF_NEAR} of the centre's ΔE00 up to {@value #NEAR}, {@value #OF_REST} of the rest;
 *   <li>{@value #OF_ROUGH} of {@link ColourSpread#roughlyExpectedDeltaE00} of the cloud that {@link
 *       LeastSpread} leaves;
 *   <li>{@value #OF_LEAST} of its {@link ColourSpread#expectedDeltaE00}, {@value #OF_FAR} when its
 *       centre is further off than {@value #FAR}.
 * </ul>
 *
 * <p>Over a million and more random clouds with an sd of up to 16 each, the mean was never below
 * 0.997 of a centre's ΔE00 up to 5, 0.94 of one up to 15, 0.91 up to 30 and 0.778 of any; never
 * below 0.850 of the second; nor below 0.981 of that over a smaller cloud up to 20 away, and 0.874
 * of any.
 */
public final class LeastExpected {
  private static final double NEAR = 5;
  private static final double OF_NEAR = 0.98;
  private static final double OF_REST = 0.72;
  private static final double OF_ROUGH = 0.83;
  private static final double OF_LEAST = 0.98;
  private static final double FAR = 20;
  private static final double OF_FAR = 0.85;

  private static final int DIRECTIONS = LeastSpread.DIRECTIONS;

  private final Viewing viewing;
  private final double dropScatter;
  private final LeastSpread spread;
  private final Part[] parts;

  /** What one paint brings to a mix. */
  private static final class Part {
    private final int number;
    private final double millilitres;
    private final OpticalConstants constants;

    /** By band and direction: what moves q·S of the mix, and what moves S, by share. */
    private final double[][] absorption = new double[Bands.COUNT][DIRECTIONS];

    private final double[][] scattering = new double[Bands.COUNT][DIRECTIONS];

    private Part(PaintOptics paint, LeastSpread spread) {
      number = spread.number(paint.paint().name());
      millilitres = paint.paint().dropMillilitres();
      constants = paint.constants();
      double[][] directions = spread.directions(number);
      double[] masstone = paint.masstone();
      for (int band = 0; band < Bands.COUNT; band++) {
        for (int m = 0; m < DIRECTIONS; m++) {
          double z = directions[m][band];
          double u = directions[m][Bands.COUNT + band];
          absorption[band][m] = constants.k(band) * (u - (1 + masstone[band]) * z);
          scattering[band][m] = constants.s(band) * u;
        }
      }
    }
  }

  LeastExpected(Viewing viewing, double dropScatter, LeastSpread spread, List<PaintOptics> paints) {
    this.viewing = viewing;
    this.dropScatter = dropScatter;
    this.spread = spread;
    parts = paints.stream().map(paint -> new Part(paint, spread)).toArray(Part[]::new);
  }

  /** A bound of the ΔE00 to be expected of a mix whose predicted colour has that ΔE00. */
  public static double ofCentre(double deltaE00) {
    return OF_NEAR * Math.min(deltaE00, NEAR) + OF_REST * Math.max(0, deltaE00 - NEAR);
  }

  /** The closer bound, of the cloud that a mix has at least; fast. */
  public static double roughly(ColourSpread cloud, Lab target) {
    return OF_ROUGH * cloud.roughlyExpectedDeltaE00(target);
  }

  /** The closest bound. */
  public static double closely(ColourSpread cloud, Lab target) {
    boolean far = Ciede2000.deltaE(target, cloud.centre()) > FAR;
    return (far ? OF_FAR : OF_LEAST) * cloud.expectedDeltaE00(target);
  }

  /**
   * The cloud that a mix has at least, about its predicted colour.
   *
   * @param paints numbers of the paints in the list that this was made for
   * @param drops of each, at least 1
   */
  public ColourSpread cloud(int[] paints, int[] drops) {
    double volume = 0;
    for (int i = 0; i < paints.length; i++) {
      volume += drops[i] * parts[paints[i]].millilitres;
    }
    double[] k = new double[Bands.COUNT];
    double[] s = new double[Bands.COUNT];
    for (int i = 0; i < paints.length; i++) {
      Part part = parts[paints[i]];
      double share = drops[i] * part.millilitres / volume;
      for (int band = 0; band < Bands.COUNT; band++) {
        k[band] += share * part.constants.k(band);
        s[band] += share * part.constants.s(band);
      }
    }
    OpticalConstants mixed = OpticalConstants.of(k, s);
    double[] internal = mixed.opaque();
    Lab lab = viewing.lab(internal);
    double[][] byK = viewing.labSlope(internal);
    double[] q = new double[Bands.COUNT];
    for (int band = 0; band < Bands.COUNT; band++) {
      double r = internal[band];
      double byQ = -2 * r * r / ((1 - r) * (1 + r));
      for (double[] row : byK) {
        row[band] *= byQ / s[band];
      }
      q[band] = k[band] / s[band];
    }
    return ColourSpread.of(lab, covariance(paints, drops, volume, byK, q));
  }

  /** The ΔE00 beyond which {@link #ofCentre} says that no mix can be expected to come so near. */
  public static double reach(double expectedDeltaE00) {
    double near = OF_NEAR * NEAR;
    return expectedDeltaE00 <= near
        ? expectedDeltaE00 / OF_NEAR
        : NEAR + (expectedDeltaE00 - near) / OF_REST;
  }

  /**
   * What directions and drops make of L*, a* and b*.
   *
   * @param byK how they depend on K of the mix, by band
   * @param q K/S of the mix, by band
   */
  private double[][] covariance(
      int[] paints, int[] drops, double volume, double[][] byK, double[] q) {
    int[] numbers = new int[paints.length];
    double[][][] slopes = new double[paints.length][byK.length][DIRECTIONS];
    double[][] shifts = new double[paints.length][byK.length];
    double[] along = new double[DIRECTIONS];
    for (int i = 0; i < paints.length; i++) {
      Part part = parts[paints[i]];
      numbers[i] = part.number;
      double share = drops[i] * part.millilitres / volume;
      double sdOfShare = dropScatter * part.millilitres * Math.sqrt(drops[i]) / volume;
      for (int band = 0; band < Bands.COUNT; band++) {
        double[] absorption = part.absorption[band];
        double[] scattering = part.scattering[band];
        for (int m = 0; m < DIRECTIONS; m++) {
          along[m] = share * (absorption[m] - q[band] * scattering[m]);
        }
        double shift = sdOfShare * (part.constants.k(band) - q[band] * part.constants.s(band));
        for (int row = 0; row < byK.length; row++) {
          double slope = byK[row][band];
          double[] ofRow = slopes[i][row];
          for (int m = 0; m < DIRECTIONS; m++) {
            ofRow[m] += slope * along[m];
          }
          shifts[i][row] += slope * shift;
        }
      }
    }
    double[][] covariance = spread.covarianceOf(numbers, slopes);
    for (double[] shift : shifts) {
      MixPredictor.addSquare(covariance, shift);
    }
    return covariance;
  }
}
