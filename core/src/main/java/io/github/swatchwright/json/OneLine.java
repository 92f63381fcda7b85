package io.github.swatchwright.json;

/** Text from outside, made fit for one line of a message. */
final class OneLine {
  /** Quotations are cut off after so many characters. */
  private static final int LONGEST_QUOTATION = 60;

  private OneLine() {}

  /** The text with a space for each control character and line break. */
  static String of(String text) {
    StringBuilder line = new StringBuilder(text.length());
    text.codePoints().map(OneLine::printable).forEach(line::appendCodePoint);
    return line.toString();
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

  /** The text in quotation marks, cut off when it is long. */
  static String quote(String text) {
    int length = text.codePointCount(0, text.length());
    String shown =
        length <= LONGEST_QUOTATION
            ? text
            : text.substring(0, text.offsetByCodePoints(0, LONGEST_QUOTATION)) + "…";
    return "\"" + of(shown) + "\"";
  }
}
