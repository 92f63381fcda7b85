package io.github.swatchwright.photo;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.mix.ColourSpread;

/**
 * How far colours read from a photo are off. Errors of a* and b* grow with chroma as CIEDE2000's
 * S_C does, so that they count the same everywhere.
 *
 * <p>Two patches of one photo share most of their error: the light and the exposure move all
 * colours, and a camera sees like colours alike wrongly. So the errors of two colours correlate by
 * {@code common + (1 − common)·exp(−(d/reach)^1.85)}, d their ΔE00. What a reading has for itself
 * is the noise of its pixels and what JPEG does to them.
 *
 * @param lightness sd of L*
 * @param neutral sd of a* and of b* of a grey
 * @param common share of the variance that all colours of the photo have in common, 0 to 1
 * @param reach how far apart, in ΔE00, colours still err alike
 */
record ErrorModel(double lightness, double neutral, double common, double reach) {
  /** S_C of CIEDE2000. */
  private static final double CHROMA_WEIGHT = 0.045;

  /** What a colour that the file can't hold adds to the sds of a* and b*, before growing. */
  private static final double CRUSHED = 5.5;

  /** How far apart colours are that a camera still sees wrongly alike, ΔE00. */
  static final double CAMERA_REACH = 33;

  /** How fast the likeness of errors falls; 2 would be too smooth for cameras under lamps. */
  private static final double POWER = 1.85;

  /** What a reading's own noise is, sds of L* and of a grey's a* and b*. */
  private static final double OWN_LIGHTNESS = 0.14;

  private static final double OWN_NEUTRAL = 0.2;

  /** The errors of two patches beside each other, corrected so. */
  static ErrorModel of(PhotoCorrection correction) {
    if (correction instanceof ChartCorrection chart) {
      return chart.error();
    }
    if (correction instanceof BesideCorrection beside) {
      return beside.errors();
    }
    return correction.knowsLightness() ? GreyCorrection.ERROR : NoReference.ONCE_EXPOSED;
  }

  /** How the errors of two colours that are so far apart correlate, reading noise left out. */
  double correlation(double deltaE00) {
    return common + (1 - common) * Math.exp(-Math.pow(deltaE00 / reach, POWER));
  }

  /** Sds of L*, a* and b*. */
  double[] deviations(Lab colour, boolean crushed) {
    double ab = scale(colour) * Math.hypot(neutral, crushed ? CRUSHED : 0);
    return new double[] {Math.hypot(lightness, crushed ? CRUSHED / 2 : 0), ab, ab};
  }

  /** What of these sds can be shared with other colours: all but the reading's own noise. */
  double[] shareable(Lab colour) {
    double ab = scale(colour) * without(neutral, OWN_NEUTRAL);
    return new double[] {without(lightness, OWN_LIGHTNESS), ab, ab};
  }

  private static double without(double all, double own) {
    return Math.sqrt(Math.max(0, all * all - own * own));
  }

  ColourSpread about(Lab colour, boolean crushed) {
    double[] sd = deviations(colour, crushed);
    return ColourSpread.of(
        colour,
        new double[][] {{sd[0] * sd[0], 0, 0}, {0, sd[1] * sd[1], 0}, {0, 0, sd[2] * sd[2]}});
  }

  /** How much larger a step of a* or b* is here than the same difference beside a grey. */
  static double scale(Lab colour) {
    return 1 + CHROMA_WEIGHT * colour.chroma();
  }
}
