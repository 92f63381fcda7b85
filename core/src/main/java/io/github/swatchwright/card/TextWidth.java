package io.github.swatchwright.card;

import java.util.ArrayList;
import java.util.List;

/**
 * How wide a text is in Helvetica and in fonts of the same widths, and where its lines break.
 * Widths in thousandths of the size are those of Adobe's metrics for the standard fonts of PDF;
 * letters outside of ASCII are taken as wide rather than narrow.
 */
final class TextWidth {
  private static final int[] ASCII = {
    278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556,
    556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667,
    611, 778, 722, 278, 500, 667, 556, 833, 722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667,
    667, 611, 278, 278, 278, 469, 556, 333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500,
    222, 833, 556, 556, 556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584
  };

  private static final int FIRST = ' ';
  private static final int NO_BREAK_SPACE = 0xA0;
  private static final int LATIN = 620;
  private static final int WIDE = 1000;

  /** Where letters of wide scripts begin. */
  private static final int WIDE_FROM = 0x2300;

  /** Bold letters are wider by at most so much on the mean of a text. */
  private static final double BOLD = 1.08;

  private TextWidth() {}

  /** The width in units of the size. */
  static double of(String text, boolean isBold) {
    double thousandths = text.codePoints().mapToDouble(TextWidth::of).sum();
    return thousandths / 1000 * (isBold ? BOLD : 1);
  }

  private static int of(int codePoint) {
    int place = codePoint - FIRST;
    if (place >= 0 && place < ASCII.length) {
      return ASCII[place];
    }
    if (codePoint == NO_BREAK_SPACE) {
      return ASCII[0];
    }
    return codePoint < WIDE_FROM ? LATIN : WIDE;
  }

  /** The text in lines of limited width; words that are wider than a line are broken. */
  static List<String> lines(String text, boolean isBold, double width) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.split(" ", -1)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (of(longer, isBold) <= width) {
        line = longer;
        continue;
      }
      if (!line.isEmpty()) {
        lines.add(line);
      }
      line = word;
      while (of(line, isBold) > width && line.codePointCount(0, line.length()) > 1) {
        int cut = fitting(line, isBold, width);
        lines.add(line.substring(0, cut));
        line = line.substring(cut);
      }
    }
    lines.add(line);
    return lines;
  }

  /** The end of as many letters as fit, one at least. */
  private static int fitting(String word, boolean isBold, double width) {
    int end = word.offsetByCodePoints(0, 1);
    while (end < word.length()) {
      int next = word.offsetByCodePoints(end, 1);
      if (of(word.substring(0, next), isBold) > width) {
        break;
      }
      end = next;
    }
    return end;
  }
}
