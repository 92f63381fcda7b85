package io.github.swatchwright.photo;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.LinearRgb;
import io.github.swatchwright.mix.ColourSpread;
import java.util.List;

/** What turns a photo's colours into those that the things in it have under daylight. */
public sealed interface PhotoCorrection
    permits NoReference, GreyCorrection, ChartCorrection, BesideCorrection {

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
    return colour(sample.mean(), sample.pixels(), sample.shares());
  }

  /**
   * A colour with its error.
   *
   * @param mean as the photo has it
   * @param pixels what it is the mean of
   * @param shares of the region's pixels
   */
  default PhotoColour colour(LinearRgb mean, List<LinearRgb> pixels, PixelShares shares) {
    Lab lab = apply(mean).toXyz().toLab();
    List<Lab> corrected = pixels.stream().map(pixel -> apply(pixel).toXyz().toLab()).toList();
    return new PhotoColour(
        spread(lab, shares.isCrushed()),
        knowsLightness(),
        PhotoColour.pixelSpread(lab, corrected),
        shares,
        TwoColours.in(corrected));
  }
}
