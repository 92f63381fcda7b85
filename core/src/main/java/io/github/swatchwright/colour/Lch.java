package io.github.swatchwright.colour;

import io.github.swatchwright.argument.Require;
import java.util.OptionalDouble;

/**
 * CIELAB in cylindrical coordinates. A neutral colour has no hue, and says so by an empty value.
 *
 * @param l lightness L*
 * @param c chroma C*ab, at least 0
 * @param hueDegrees hue angle h_ab in degrees, 0 to below 360; empty for a neutral colour, of
 *     chroma below 1e-6
 * @param white the white it is relative to
 */
public record Lch(double l, double c, OptionalDouble hueDegrees, WhitePoint white) {

  /**
   * Refuses values that are not finite, a negative chroma, a hue outside 0 to below 360, and a
   * chroma that one could see without a hue.
   */
  public Lch {
    Require.finite("l", l);
    Require.nonNegative("c", c);
    if (hueDegrees.isPresent()) {
      double hue = hueDegrees.getAsDouble();
      Require.within("hueDegrees", hue, 0, Math.nextDown(360.0));
    } else if (c >= Lab.NEUTRAL_CHROMA) {
      throw new IllegalArgumentException(
          "c is " + c + " without a hue, must be below " + Lab.NEUTRAL_CHROMA);
    }
  }

  /** The same colour in rectangular coordinates; without a hue, a* and b* are 0. */
  public Lab toLab() {
    if (hueDegrees.isEmpty()) {
      return new Lab(l, 0, 0, white);
    }
    double hue = Math.toRadians(hueDegrees.getAsDouble());
    return new Lab(l, c * Math.cos(hue), c * Math.sin(hue), white);
  }

  /**
   * The same lightness and hue at another chroma.
   *
   * @throws IllegalArgumentException when this colour is neutral, and so has no hue to keep
   */
  public Lch withChroma(double chroma) {
    return new Lch(l, chroma, hueDegrees, white);
  }
}
