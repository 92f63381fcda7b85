package io.github.swatchwright.photo;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.LinearRgb;
import io.github.swatchwright.mix.ColourSpread;

/**
 * A photo in which nothing is known: the file's colours are taken as they are. Hue and chroma have
 * a wide error, and lightness is unknown, because brightness of light and of paint look the same.
 */
record NoReference() implements PhotoCorrection {
  /** Share of the variance that is the light's colour, and so common to the whole photo. */
  private static final double SHARED_LIGHT = 0.68;

  /** Errors that are left once a known patch tells how bright the light was. */
  static final ErrorModel ONCE_EXPOSED =
      new ErrorModel(2, 3.8, SHARED_LIGHT, ErrorModel.CAMERA_REACH);

  private static final ErrorModel ERROR =
      new ErrorModel(7.5, 3.8, SHARED_LIGHT, ErrorModel.CAMERA_REACH);

  @Override
  public LinearRgb apply(LinearRgb seen) {
    return seen;
  }

  @Override
  public ColourSpread spread(Lab corrected, boolean crushed) {
    return ERROR.about(corrected, crushed);
  }

  @Override
  public boolean knowsLightness() {
    return false;
  }

  @Override
  public String reference() {
    return "none";
  }
}
