package io.github.swatchwright.photo;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.LinearRgb;
import io.github.swatchwright.mix.ColourSpread;

/** What turns a photo's colours into those that the things in it have under daylight. */
public sealed interface Correction permits NoReference, GreyCorrection, ChartCorrection {

  /** The corrected colour, in linear light. */
  LinearRgb apply(LinearRgb seen);

  /**
   * How well a corrected colour is known.
   *
   * @param corrected the colour
   * @param crushed whether it is stronger than the file can hold
   */
  ColourSpread spread(Lab corrected, boolean crushed);

  /** Whether lightness is known: not without a reference. */
  boolean knowsLightness();

  /** What it is made from, in words. */
  String reference();

  /** The colour of a region, with its error. */
  default PhotoColour colour(RegionSample sample) {
    Lab lab = apply(sample.mean()).toXyz().toLab();
    return new PhotoColour(
        spread(lab, sample.shares().isCrushed()),
        knowsLightness(),
        PhotoColour.pixelSpread(this, sample),
        sample.shares());
  }
}
