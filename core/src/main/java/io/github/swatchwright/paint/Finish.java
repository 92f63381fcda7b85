package io.github.swatchwright.paint;

import java.util.Locale;

/** How a paint's dry surface shines. */
public enum Finish {
  /** No shine; dries lighter than the same paint in gloss. */
  MATT,
  /** Between matt and gloss. */
  SATIN,
  /** Mirror-like shine. */
  GLOSS;

  /** The word for it in files and text, such as {@code matt}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
