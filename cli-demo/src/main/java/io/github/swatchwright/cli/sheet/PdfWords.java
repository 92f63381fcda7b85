package io.github.swatchwright.cli.sheet;

import io.github.swatchwright.card.Page;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;

/**
 * Lines of text in the standard fonts of PDF. Letters that Helvetica lacks, such as Δ, are taken
 * from Symbol; what neither has comes as a question mark.
 *
 * @param content where to write
 * @param points of a millimetre
 */
record PdfWords(PDPageContentStream content, double points) {
  private static final double THOUSAND = 1000;

  /** Letters that Symbol has under another sign: the Greek letter as the mathematical one. */
  private static final String DELTA = "\u0394";

  private static final String INCREMENT = "\u2206";

  /** A piece of a line that one font has. */
  private record Run(PDFont font, String text) {
    double width() throws IOException {
      return font.getStringWidth(text) / THOUSAND;
    }
  }

  /** Writes a line; it is made smaller where it is wider than it may be. */
  void write(Page.Words words, float left, float baseline) throws IOException {
    PDFont letters =
        new PDType1Font(
            words.isBold()
                ? Standard14Fonts.FontName.HELVETICA_BOLD
                : Standard14Fonts.FontName.HELVETICA);
    List<Run> runs = runs(words.text(), letters);
    double width = 0;
    for (Run run : runs) {
      width += run.width();
    }
    double size = points * words.size();
    double most = points * words.most();
    double fitting = width * size > most ? most / width : size;
    content.beginText();
    content.newLineAtOffset(left, baseline);
    for (Run run : runs) {
      content.setFont(run.font, (float) fitting);
      content.showText(run.text);
    }
    content.endText();
  }

  private static List<Run> runs(String text, PDFont letters) {
    PDFont symbols = new PDType1Font(Standard14Fonts.FontName.SYMBOL);
    List<Run> runs = new ArrayList<>();
    for (int at = 0; at < text.length(); at = text.offsetByCodePoints(at, 1)) {
      String letter = text.substring(at, text.offsetByCodePoints(at, 1));
      String symbol = letter.equals(DELTA) ? INCREMENT : letter;
      if (has(letters, letter)) {
        append(runs, letters, letter);
      } else if (has(symbols, symbol)) {
        append(runs, symbols, symbol);
      } else {
        append(runs, letters, "?");
      }
    }
    return runs;
  }

  private static void append(List<Run> runs, PDFont font, String letter) {
    int last = runs.size() - 1;
    if (last >= 0 && runs.get(last).font.equals(font)) {
      runs.set(last, new Run(font, runs.get(last).text + letter));
    } else {
      runs.add(new Run(font, letter));
    }
  }

  private static boolean has(PDFont font, String letter) {
    try {
      font.encode(letter);
      return true;
    } catch (IOException | IllegalArgumentException e) {
      return false;
    }
  }
}
