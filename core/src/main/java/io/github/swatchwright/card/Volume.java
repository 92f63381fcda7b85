package io.github.swatchwright.card;

import io.github.swatchwright.mix.PaintAmount;
import java.util.Locale;

/** Volumes in words. */
final class Volume {
  private Volume() {}

  /** Such as {@code 0.14 ml}. */
  static String words(double millilitres) {
    return String.format(Locale.ROOT, millilitres < 10 ? "%.2f ml" : "%.0f ml", millilitres);
  }

  /** Such as {@code 0.14 ml and 0.56 ml thinner}. */
  static String words(PaintAmount amount) {
    return words(amount, "thinner");
  }

  /** Such as {@code 0.14 ml and 0.56 ml white spirit}. */
  static String words(PaintAmount amount, String thinner) {
    String paint = words(amount.paintMillilitres());
    return amount.thinnerMillilitres() == 0
        ? paint
        : paint + " and " + words(amount.thinnerMillilitres()) + " " + thinner;
  }
}
