package io.github.swatchwright.card;

import io.github.swatchwright.argument.Printable;

/** Names from outside, made fit for a card: one line, no hidden characters, not endless. */
final class Label {
  /** The most characters of a name; longer ones are cut off. */
  static final int LONGEST = 80;

  private Label() {}

  /**
   * The most characters of a sentence, which may hold many names; no sentence of ours is longer.
   */
  private static final int LONGEST_SENTENCE = 1200;

  /** A sentence with names in it, whole. */
  static String sentence(String text) {
    return Printable.oneLine(text, LONGEST_SENTENCE);
  }

  /** The name as one line, cut off when it is long. */
  static String of(String name) {
    return Printable.oneLine(name, LONGEST);
  }
}
