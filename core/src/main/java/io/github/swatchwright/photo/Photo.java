package io.github.swatchwright.photo;

import io.github.swatchwright.colour.RgbSpace;

/** An upright picture whose pixels can be asked for region by region. */
public interface Photo {

  /** Columns. */
  int width();

  /** Rows. */
  int height();

  /** The colour space of its pixels. */
  RgbSpace space();

  /**
   * Hands over all pixels of a region, row by row.
   *
   * @throws IllegalArgumentException when the region isn't wholly inside the picture; {@link
   *     Region#clippedTo} gives the part that is
   */
  void read(Region region, PixelRows rows);
}
