package io.github.swatchwright.exchange;

import io.github.swatchwright.argument.Printable;
import io.github.swatchwright.colour.Srgb;

/**
 * A colour of a palette.
 *
 * @param name what it is called, in one line
 * @param srgb the colour, displayable
 */
public record NamedColour(String name, Srgb srgb) {
  /** Makes one line of the name; refuses a colour that a display can't show. */
  public NamedColour {
    name = Printable.oneLine(name);
    if (!srgb.isDisplayable()) {
      throw new IllegalArgumentException("srgb is " + srgb + ", must be within 0 to 1");
    }
  }
}
