package io.github.swatchwright.photo;

import io.github.swatchwright.colour.LinearRgb;
import java.util.List;

/**
 * A region of a photo as the camera's file has it, before any correction.
 *
 * @param region where it is
 * @param mean the robust mean, in linear light with the primaries of sRGB
 * @param shares which pixels are in the mean
 * @param pixels some of the pixels, evenly drawn, at least one
 */
public record RegionSample(
    Region region, LinearRgb mean, PixelShares shares, List<LinearRgb> pixels) {

  /** Fewer usable pixels than that tell no colour. */
  public static final int FEWEST_PIXELS = 4;

  /** A smaller share of usable pixels tells no colour. */
  public static final double LEAST_USED = 0.1;

  /** Copies the list, and refuses an empty one. */
  public RegionSample {
    pixels = List.copyOf(pixels);
    if (pixels.isEmpty()) {
      throw new IllegalArgumentException("pixels is empty, must hold at least one");
    }
  }
}
