package io.github.swatchwright.coat;

import java.util.Locale;

/** What one medium does to another that it is painted over. */
public enum SolventVerdict {
  /** No trouble once the lower coat is dry. */
  SAFE,
  /** Goes well with care, as the remedy says. */
  CAREFUL,
  /** Lifts, wrinkles or cracks, sooner or later. */
  CLASH;

  /** The word for it in text and JSON, such as {@code careful}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
