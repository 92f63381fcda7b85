package io.github.swatchwright.card;

/** Names from outside, made fit for a card: one line, no hidden characters, not endless. */
final class Label {
  /** Names are cut off after so many characters. */
  static final int LONGEST = 80;

  private Label() {}

  /**
   * The name with a space for each control, format and unpaired surrogate character (so that
   * nothing can turn the writing direction of what follows), cut off when it is long.
   */
  static String of(String name) {
    StringBuilder shown = new StringBuilder();
    name.codePoints().limit(LONGEST).map(Label::printable).forEach(shown::appendCodePoint);
    boolean isCut = name.codePointCount(0, name.length()) > LONGEST;
    return isCut ? shown + "…" : shown.toString();
  }

  private static int printable(int codePoint) {
    return switch (Character.getType(codePoint)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.SURROGATE ->
          ' ';
      default -> codePoint;
    };
  }
}
