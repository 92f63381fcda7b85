package io.github.swatchwright.match;

import java.util.Locale;

/** What a painter may like in a recipe beside its colour; {@link Ranking} says what it weighs. */
public enum Preference {
  /** Few paints. */
  FEWER_PAINTS,
  /** Few drops. */
  FEWER_DROPS,
  /** A low price by the millilitre, of the paints whose price the shelf states. */
  CHEAPER,
  /** A colour that keeps matching the target under daylight, tungsten and a white LED. */
  ACROSS_LIGHTS;

  /** The word for it on the command line and in files, such as {@code fewer-paints}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
