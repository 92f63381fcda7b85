package io.github.swatchwright.argument;

import java.util.Locale;

/**
 * Text from outside, made fit to be shown: the one place that says which characters a terminal, a
 * message, a picture and a page may hold.
 */
public final class Printable {
  private static final int LONGEST_QUOTATION = 200;
  private static final int NON_JOINER = 0x200C;
  private static final int JOINER = 0x200D;

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

  /**
   * The text as {@link #oneLine(String)} has it, cut off with … after {@code longest} characters.
   */
  public static String oneLine(String text, int longest) {
    return text.codePointCount(0, text.length()) <= longest
        ? oneLine(text)
        : oneLine(text.substring(0, text.offsetByCodePoints(0, longest))) + "…";
  }

  /** What was given, in quotation marks and on one line, cut off when it is long. */
  public static String quoted(String text) {
    return "'" + oneLine(text, LONGEST_QUOTATION) + "'";
  }

  /**
   * A JSON document with an escape for each character that can't be shown, so that it still has the
   * same content. Line feeds stay: in valid JSON they stand between values.
   */
  public static String json(String document) {
    StringBuilder shown = new StringBuilder(document.length());
    document
        .codePoints()
        .forEach(
            codePoint -> {
              if (codePoint == '\n' || isShown(codePoint)) {
                shown.appendCodePoint(codePoint);
              } else {
                for (char unit : Character.toChars(codePoint)) {
                  shown.append(String.format(Locale.ROOT, "\\u%04x", (int) unit));
                }
              }
            });
    return shown.toString();
  }

  private static int printable(int codePoint) {
    return isShown(codePoint) ? codePoint : ' ';
  }

  /**
   * Whether a character shows as itself and changes nothing around it: no control, no line break,
   * no half of a pair, and no format character such as those that turn the writing direction. The
   * two joiners, which several scripts and emoji are written with, are let through.
   */
  public static boolean isShown(int codePoint) {
    if (codePoint == NON_JOINER || codePoint == JOINER) {
      return true;
    }
    return switch (Character.getType(codePoint)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.SURROGATE ->
          false;
      default -> true;
    };
  }
}
