package io.github.swatchwright.photo;

import io.github.swatchwright.argument.Require;
import java.util.Optional;

/**
 * A colour that was read from a photo, and where: the whole of a region, or one of its shades.
 *
 * @param name what it is called, if anybody says
 * @param region where it was read
 * @param colour what was read
 * @param share share of the region's pixels that have the colour, 0 to 1
 */
public record RegionColour(Optional<String> name, Region region, PhotoColour colour, double share) {
  /** Refuses a share outside 0 to 1. */
  public RegionColour {
    Require.within("share", share, 0, 1);
  }

  /** A region that is taken for one colour: the share is that of the pixels in its mean. */
  public static RegionColour of(Region region, PhotoColour colour) {
    return new RegionColour(Optional.empty(), region, colour, colour.shares().used());
  }

  /** One shade of several in a region. */
  public static RegionColour of(Region region, RegionShade shade) {
    return new RegionColour(Optional.empty(), region, shade.colour(), shade.share());
  }

  /** This colour with a name. */
  public RegionColour withName(String called) {
    return new RegionColour(Optional.of(called), region, colour, share);
  }
}
