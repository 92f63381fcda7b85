package io.github.swatchwright.photo;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.LinearRgb;
import io.github.swatchwright.mix.ColourSpread;

/**
 * A photo in which nothing is known: the file's colours are taken as they are. Hue and chroma have
 * a wide error, and lightness is unknown, because brightness of light and of paint look the same.
 */
public record NoReference() implements Correction {
  private static final ErrorModel ERROR = new ErrorModel(7.5, 3.8);

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
