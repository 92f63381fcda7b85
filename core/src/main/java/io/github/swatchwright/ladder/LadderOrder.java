package io.github.swatchwright.ladder;

import java.util.Locale;

/** Which end a ladder starts at. */
public enum LadderOrder {
  /** At the first shade, as it was stated. */
  AS_GIVEN,
  /** At the darker end. */
  DARK_TO_LIGHT,
  /** At the lighter end: less paint is wasted, as a little dark paint moves a light one far. */
  LIGHT_TO_DARK;

  /** The words for it in files and text, such as {@code dark-to-light}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
