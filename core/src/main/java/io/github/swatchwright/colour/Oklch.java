package io.github.swatchwright.colour;

import io.github.swatchwright.argument.Require;
import java.util.OptionalDouble;

/**
 * {@link Oklab} in cylindrical coordinates, for sliders of lightness, chroma and hue. A neutral
 * colour has no hue, and says so by an empty value.
 *
 * @param l lightness, 0 black to 1 the perfect diffuser
 * @param c chroma, at least 0; about 0.3 for the strongest colours of a display
 * @param hueDegrees hue angle in degrees, 0 to below 360; empty for a neutral colour, of chroma
 *     below {@value #NEUTRAL_CHROMA}
 */
public record Oklch(double l, double c, OptionalDouble hueDegrees) {
  /** Below this chroma a colour is neutral: a thousandth of what one can see. */
  public static final double NEUTRAL_CHROMA = 4e-6;

  /**
   * Refuses values that are not finite, a negative chroma, a hue outside 0 to below 360, and a
   * chroma that one could see without a hue.
   */
  public Oklch {
    Require.finite("l", l);
    Require.nonNegative("c", c);
    if (hueDegrees.isPresent()) {
      Require.within("hueDegrees", hueDegrees.getAsDouble(), 0, Math.nextDown(360.0));
    } else if (c >= NEUTRAL_CHROMA) {
      throw new IllegalArgumentException(
          "c is " + c + " without a hue, must be below " + NEUTRAL_CHROMA);
    }
  }

  static Oklch of(Oklab colour) {
    double chroma = Math.hypot(colour.a(), colour.b());
    if (chroma < NEUTRAL_CHROMA) {
      return new Oklch(colour.l(), chroma, OptionalDouble.empty());
    }
    double degrees = Math.toDegrees(Math.atan2(colour.b(), colour.a()));
    double positive = degrees < 0 ? degrees + 360 : degrees;
    return new Oklch(colour.l(), chroma, OptionalDouble.of(positive == 360 ? 0 : positive));
  }

  /** The same colour in rectangular coordinates; without a hue, a and b are 0. */
  public Oklab toOklab() {
    if (hueDegrees.isEmpty()) {
      return new Oklab(l, 0, 0);
    }
    double hue = Math.toRadians(hueDegrees.getAsDouble());
    return new Oklab(l, c * Math.cos(hue), c * Math.sin(hue));
  }
}
