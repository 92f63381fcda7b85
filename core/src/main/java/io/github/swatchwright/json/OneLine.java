package io.github.swatchwright.json;

import io.github.swatchwright.argument.Printable;

/** Text from outside, made fit for one line of a message. */
final class OneLine {
  /** The most characters of a quotation; longer ones are cut off. */
  private static final int LONGEST_QUOTATION = 60;

  private OneLine() {}

  /** The text with a space for each control character and line break. */
  static String of(String text) {
    return Printable.oneLine(text);
  }

  /** The text in quotation marks, cut off when it is long. */
  static String quote(String text) {
    return "\"" + Printable.oneLine(text, LONGEST_QUOTATION) + "\"";
  }
}
