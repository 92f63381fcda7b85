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
   * Hands over all pixels of a region, which lies inside the picture. They come in rows of the
   * picture as it is stored, which in a turned picture are columns.
   */
  void read(Region region, PixelRows rows);
}
