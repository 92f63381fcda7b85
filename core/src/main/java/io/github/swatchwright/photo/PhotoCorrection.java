package io.github.swatchwright.photo;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.LinearRgb;
import io.github.swatchwright.mix.ColourSpread;
import java.util.List;

/** What turns a photo's colours into those that the things in it have under daylight. */
public sealed interface PhotoCorrection
    permits NoReference, GreyCorrection, ChartCorrection, BesideCorrection {

  /**
   * None: the file's colours are taken as they are. Hue and chroma have a wide error, and lightness
   * is unknown, because brightness of light and of paint look the same.
   */
  static PhotoCorrection ofNothing() {
    return new NoReference();
  }

  /**
   * By neutral patches in the picture, such as a grey card.
   *
   * @param patches one or more
   */
  static PhotoCorrection ofGreys(List<NeutralPatch> patches) {
    return GreyCorrection.of(patches);
  }

  /**
   * By a colour chart in the picture.
   *
   * @param chart its patches, {@value ChartCorrection#FEWEST_PATCHES} or more
   * @throws IllegalArgumentException when the patches are too few or too alike, or the corrected
   *     chart is no nearer to its known colours than the photo as it is
   */
  static PhotoCorrection ofChart(List<ChartPatch> chart) {
    return ChartCorrection.of(chart);
  }

  /**
   * By another correction and a known colour beside the one that is wanted.
   *
   * @param base what else in the photo tells its light; a known patch beside it makes up for its
   *     errors
   * @param patch the known patch
   * @throws IllegalArgumentException when the patch is seen so far off that it must be another one
   */
  static PhotoCorrection ofBeside(PhotoCorrection base, KnownPatch patch) {
    return BesideCorrection.of(base, patch);
  }

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
