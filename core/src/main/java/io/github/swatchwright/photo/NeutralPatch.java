package io.github.swatchwright.photo;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.colour.GamutPolicy;
import io.github.swatchwright.colour.LinearRgb;

/**
 * A grey or white thing in the photo, of known lightness.
 *
 * @param sample where it is
 * @param luminance its Y, 0 to 100: 18 for a grey card, about 85 for white paper
 */
public record NeutralPatch(RegionSample sample, double luminance) {

  /** The largest share of clipped pixels: beyond it the mean of the rest is too dark. */
  static final double MOST_CLIPPED = 0.05;

  /** Refuses a patch that is clipped or coloured, and a luminance that no neutral surface has. */
  public NeutralPatch {
    Require.within("luminance of the grey patch in %", luminance, 1, 100);
    String where = "the grey patch " + sample.region().toText();
    double clipped = sample.shares().clipped();
    if (clipped > MOST_CLIPPED) {
      throw new IllegalArgumentException(
          where + " is clipped in " + Math.round(100 * clipped) + " % of its pixels: too bright");
    }
    LinearRgb mean = sample.mean();
    if (mean.red() <= 0 || mean.green() <= 0 || mean.blue() <= 0) {
      throw new IllegalArgumentException(where + " is coloured, must be grey or white");
    }
    if (!LightLocus.holds(mean.toXyz())) {
      throw new IllegalArgumentException(
          where
              + " is coloured: it is seen as "
              + mean.encode().fit(GamutPolicy.REDUCE_CHROMA).toHex()
              + ", and no usual lamp or daylight makes grey look like that");
    }
  }
}
