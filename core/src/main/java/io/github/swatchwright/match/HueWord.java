package io.github.swatchwright.match;

import io.github.swatchwright.colour.Lab;
import java.util.List;
import java.util.OptionalDouble;

/** What a turn of the hue circle is called, seen from a colour: towards the next of four hues. */
final class HueWord {
  private static final List<Direction> WAYS =
      List.of(Direction.REDDER, Direction.YELLOWER, Direction.GREENER, Direction.BLUER);

  /** CIELAB hue angles of red, yellow, green and blue (unique hues, rounded; from memory). */
  private static final double[] HUES = {25, 90, 165, 245};

  private HueWord() {}

  /** What a turn from the colour's hue is called; a neutral colour lacks a hue. */
  static Direction towards(Lab from, boolean counterClockwise) {
    OptionalDouble hue = from.hueDegrees();
    if (hue.isEmpty()) {
      return Direction.OF_A_HUE;
    }
    int ahead = 0;
    while (ahead < HUES.length && hue.getAsDouble() >= HUES[ahead]) {
      ahead++;
    }
    int behind = ahead + HUES.length - 1;
    return WAYS.get((counterClockwise ? ahead : behind) % HUES.length);
  }
}
