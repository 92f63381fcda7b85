package io.github.swatchwright.match;

import io.github.swatchwright.colour.Lab;

/**
 * A plain name for a region of colours, such as {@code dark green}. The limits between hues are
 * half-way between the hue angles of named Munsell hues, rounded (from memory); those of lightness
 * are thirds.
 */
final class ColourName {
  private static final double GREY_CHROMA = 10;
  private static final double[] HUE_ENDS = {20, 55, 82, 105, 150, 215, 285, 325, 360};
  private static final String[] HUES = {
    "pink and red",
    "red and orange",
    "orange and ochre",
    "yellow",
    "yellow-green",
    "green and teal",
    "blue",
    "violet",
    "purple and pink"
  };

  private ColourName() {}

  /** The name of the region that a colour lies in. */
  static String of(Lab lab) {
    String lightness = lab.l() < 38 ? "dark" : lab.l() < 67 ? "middle" : "light";
    if (lab.chroma() < GREY_CHROMA) {
      return lightness + " grey";
    }
    double hue = lab.hueDegrees().orElse(0);
    int i = 0;
    while (i < HUE_ENDS.length - 1 && hue >= HUE_ENDS[i]) {
      i++;
    }
    return lightness + " " + HUES[i];
  }
}
