package io.github.swatchwright.photo;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.mix.ColourSpread;
import io.github.swatchwright.mix.Prediction;

/**
 * How two patches of one photo differ. What moves both, light and camera, cancels: of like colours,
 * their difference is known many times better than either colour.
 *
 * @param one the first patch's colour, corrected
 * @param other the second's
 * @param spread where the first would be if the second's colour were exact
 */
public record PatchDifference(Lab one, Lab other, ColourSpread spread) {
  /** An unknown exposure stretches or shrinks all differences alike, sd. */
  private static final double UNKNOWN_EXPOSURE = 0.11;

  /**
   * The difference of two patches.
   *
   * @param correction what corrects the photo
   * @param one a patch
   * @param other another of the same photo
   */
  public static PatchDifference of(
      PhotoCorrection correction, RegionSample one, RegionSample other) {
    Lab first = correction.colour(one).lab();
    Lab second = correction.colour(other).lab();
    ErrorModel errors = ErrorModel.of(correction);
    double[] sd = errors.deviations(first, one.shares().isCrushed());
    double[] otherSd = errors.deviations(second, other.shares().isCrushed());
    double[] shareable = errors.shareable(first);
    double[] otherShareable = errors.shareable(second);
    double correlation = errors.correlation(Ciede2000.deltaE(first, second));
    double stretch = correction.knowsLightness() ? 0 : UNKNOWN_EXPOSURE;
    double[] apart = {first.l() - second.l(), first.a() - second.a(), first.b() - second.b()};
    double[][] covariance = new double[3][3];
    for (int i = 0; i < 3; i++) {
      double common = correlation * shareable[i] * otherShareable[i];
      double stretched = stretch * apart[i];
      covariance[i][i] =
          Math.max(0, sd[i] * sd[i] + otherSd[i] * otherSd[i] - 2 * common) + stretched * stretched;
    }
    return new PatchDifference(first, second, ColourSpread.of(first, covariance));
  }

  /** How far apart they are. */
  public double deltaE00() {
    return Ciede2000.deltaE(one, other);
  }

  /** The ΔE00 that holds the error of the difference with 80 % probability. */
  public double intervalDeltaE00() {
    return spread.radius(Prediction.INTERVAL_PROBABILITY);
  }
}
