package io.github.swatchwright.argument;

/** Text from outside, made fit to be shown. */
public final class Printable {
  private static final int LONGEST_QUOTATION = 200;

  private Printable() {}

  /**
   * The text with a space for each control, format and unpaired surrogate character and line break:
   * nothing in it is hidden, or turns the writing direction of what follows.
   */
  public static String oneLine(String text) {
    StringBuilder line = new StringBuilder(text.length());
    text.codePoints().map(Printable::printable).forEach(line::appendCodePoint);
    return line.toString();
  }

  /** The same, with … in place of what is longer than so many characters. */
  public static String oneLine(String text, int longest) {
    return text.codePointCount(0, text.length()) <= longest
        ? oneLine(text)
        : oneLine(text.substring(0, text.offsetByCodePoints(0, longest))) + "…";
  }

  /** What was given, in quotation marks and on one line, cut off when it is long. */
  public static String quoted(String text) {
    return "'" + oneLine(text, LONGEST_QUOTATION) + "'";
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
