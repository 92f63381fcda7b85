package io.github.swatchwright.match;

import java.util.Locale;

/** A way from one colour to another. */
public enum Direction {
  /** Up in L*. */
  LIGHTER,
  /** Down in L*. */
  DARKER,
  /** Up in chroma. */
  MORE_CHROMATIC,
  /** Down in chroma. */
  GREYER,
  /** Round the hue circle towards red. */
  REDDER,
  /** Round the hue circle towards yellow. */
  YELLOWER,
  /** Round the hue circle towards green. */
  GREENER,
  /** Round the hue circle towards blue. */
  BLUER,
  /** From a grey, which has no hue, to a colour. */
  OF_A_HUE;

  /** The words for it, such as {@code more chromatic}. */
  public String words() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
