package io.github.swatchwright.card;

import java.util.Locale;

/** Volumes in words. */
final class Volume {
  private Volume() {}

  /** Such as {@code 0.14 ml}. */
  static String words(double millilitres) {
    return String.format(Locale.ROOT, millilitres < 10 ? "%.2f ml" : "%.0f ml", millilitres);
  }
}
