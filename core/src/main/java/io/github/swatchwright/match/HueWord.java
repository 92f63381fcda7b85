package io.github.swatchwright.match;

import io.github.swatchwright.colour.Lab;
import java.util.OptionalDouble;

/** What a turn of the hue circle is called, seen from a colour: towards the next of four hues. */
final class HueWord {
  private static final String[] WORDS = {"redder", "yellower", "greener", "bluer"};

  /** CIELAB hue angles of red, yellow, green and blue (unique hues, rounded; from memory). */
  private static final double[] HUES = {25, 90, 165, 245};

  private HueWord() {}

  /** The word for a turn from the colour's hue; a neutral colour is said to lack a hue. */
  static String towards(Lab from, boolean counterClockwise) {
    OptionalDouble hue = from.hueDegrees();
    if (hue.isEmpty()) {
      return "of a hue";
    }
    int ahead = 0;
    while (ahead < HUES.length && hue.getAsDouble() >= HUES[ahead]) {
      ahead++;
    }
    int behind = ahead + HUES.length - 1;
    return WORDS[(counterClockwise ? ahead : behind) % HUES.length];
  }
}
