package io.github.swatchwright.photo;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.mix.ColourSpread;

/**
 * How far colours read from a photo are off. Errors of a* and b* grow with chroma as CIEDE2000's
 * S_C does, so that they count the same everywhere.
 *
 * @param lightness sd of L*
 * @param neutral sd of a* and of b* of a grey
 */
record ErrorModel(double lightness, double neutral) {
  /** S_C of CIEDE2000. */
  private static final double CHROMA_WEIGHT = 0.045;

  /** What a colour that the file can't hold adds to the sds of a* and b*, before growing. */
  private static final double CRUSHED = 5.5;

  ColourSpread about(Lab colour, boolean crushed) {
    double ab = scale(colour) * Math.hypot(neutral, crushed ? CRUSHED : 0);
    double l = Math.hypot(lightness, crushed ? CRUSHED / 2 : 0);
    return ColourSpread.of(
        colour, new double[][] {{l * l, 0, 0}, {0, ab * ab, 0}, {0, 0, ab * ab}});
  }

  /** How much larger a step of a* or b* is here than the same difference beside a grey. */
  static double scale(Lab colour) {
    return 1 + CHROMA_WEIGHT * colour.chroma();
  }
}
