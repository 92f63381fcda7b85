package io.github.swatchwright.photo;

import io.github.swatchwright.argument.Require;

/**
 * One of the colours that a region consists of.
 *
 * @param colour the colour, with the texture within it and the shares of the region's pixels
 * @param share its part of the region's area, among pixels that tell a colour; above 0 to 1
 */
public record RegionShade(PhotoColour colour, double share) {
  /** Refuses a share outside 0 to 1. */
  public RegionShade {
    Require.within("share", share, 0, 1);
  }
}
