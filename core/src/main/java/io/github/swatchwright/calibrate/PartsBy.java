package io.github.swatchwright.calibrate;

import java.util.Locale;

/** How the parts of a test card were measured out. */
public enum PartsBy {
  /** In a syringe, or by drops of one size. */
  VOLUME,
  /** On a scale. */
  MASS;

  /** The word for it in files and text, such as {@code volume}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
