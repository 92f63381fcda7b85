package io.github.swatchwright.photo;

import io.github.swatchwright.argument.BadArgumentException;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.LinearRgb;
import io.github.swatchwright.colour.WhitePoint;

/**
 * A patch of a colour chart in the photo.
 *
 * @param seen its mean in the photo, linear light
 * @param known its colour, relative to D65
 */
public record ChartPatch(LinearRgb seen, Lab known) {
  /** Refuses a colour relative to another white than D65. */
  public ChartPatch {
    if (!known.white().equals(WhitePoint.D65)) {
      throw new BadArgumentException(
          "known", "is relative to " + known.white() + ", must be relative to D65");
    }
  }
}
