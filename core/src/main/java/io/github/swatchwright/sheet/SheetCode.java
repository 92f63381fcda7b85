package io.github.swatchwright.sheet;

import io.github.swatchwright.argument.Printable;
import io.github.swatchwright.paint.Medium;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * A page of a sheet as the text of its printed code: a line of words, then a line for each field.
 *
 * <pre>{@code
 * SWATCHSHEET1 A4 3x6 1/2 5F3A9C - acrylic
 * Yellow oxide
 * =Titanium white:5, Red oxide:1
 * }</pre>
 *
 * <p>The words are the format with its version, the paper, columns and rows, page and number of
 * pages, the sheet, the shelf, and the medium; see {@link SheetPage}.
 */
public final class SheetCode {
  private static final String FORMAT = "SWATCHSHEET1";
  private static final int WORDS = 7;

  /** No QR code holds more. */
  private static final int LONGEST = 3000;

  private SheetCode() {}

  /** The text to print as a code. */
  public static String toText(SheetPage page) {
    String head =
        String.format(
            Locale.ROOT,
            "%s %s %dx%d %d/%d %s %s %s",
            FORMAT,
            page.paper(),
            page.columns(),
            page.rows(),
            page.page(),
            page.pages(),
            page.sheet(),
            page.shelf(),
            page.medium().word());
    return head + "\n" + String.join("\n", page.labels());
  }

  /**
   * Reads the text of a code.
   *
   * @throws IllegalArgumentException when it isn't a sheet's, or says what no sheet can have
   */
  public static SheetPage parse(String text) {
    if (text.length() > LONGEST || !text.startsWith("SWATCHSHEET")) {
      throw new IllegalArgumentException(
          "the code on it isn't a sheet's: it begins with "
              + Printable.quoted(text.substring(0, Math.min(20, text.length()))));
    }
    List<String> lines = Arrays.asList(text.split("\n", -1));
    String[] words = lines.get(0).split(" ", -1);
    if (words.length != WORDS || !words[0].equals(FORMAT)) {
      throw new IllegalArgumentException(
          "the code on it begins with "
              + Printable.quoted(words[0])
              + ", must begin with "
              + FORMAT
              + " and "
              + (WORDS - 1)
              + " words more");
    }
    try {
      int[] grid = pair(words[2], "x");
      int[] page = pair(words[3], "/");
      return new SheetPage(
          Paper.valueOf(words[1]),
          grid[0],
          grid[1],
          page[0],
          page[1],
          words[4],
          words[5],
          medium(words[6]),
          lines.subList(1, lines.size()));
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException(
          "the code on it says what no sheet has: " + Printable.quoted(lines.get(0)), e);
    }
  }

  private static int[] pair(String word, String between) {
    String[] numbers = word.split(between, -1);
    if (numbers.length != 2) {
      throw new IllegalArgumentException("not two numbers");
    }
    return new int[] {Integer.parseInt(numbers[0]), Integer.parseInt(numbers[1])};
  }

  private static Medium medium(String word) {
    return Arrays.stream(Medium.values())
        .filter(medium -> medium.word().equals(word))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no such medium"));
  }
}
