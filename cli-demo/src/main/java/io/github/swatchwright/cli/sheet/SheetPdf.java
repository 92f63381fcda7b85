package io.github.swatchwright.cli.sheet;

import io.github.swatchwright.sheet.Area;
import io.github.swatchwright.sheet.SheetDrawing;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;

/** A sheet as a PDF document of true size, in grey alone. Every PDF reader has its font. */
public final class SheetPdf {
  /**
   * PDFBox warns when the machine has no Helvetica of its own; viewers have one, so it's no news.
   */
  private static final Logger LIBRARY = Logger.getLogger("org.apache.pdfbox");

  static {
    LIBRARY.setLevel(Level.SEVERE);
  }

  private static final double POINTS = 72 / 25.4;

  /** Where circles' Bézier curves have their control points: 4(√2 − 1)/3 of the radius. */
  private static final double ROUND = 0.5522847498;

  private static final double THOUSAND = 1000;

  private SheetPdf() {}

  /** The document, a page for each drawing. */
  public static byte[] of(List<SheetDrawing> pages) {
    PDFont font = new PDType1Font(Standard14Fonts.FontName.HELVETICA);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (PDDocument document = new PDDocument()) {
      for (SheetDrawing drawing : pages) {
        PDPage page =
            new PDPage(
                new PDRectangle(
                    (float) (POINTS * drawing.width()), (float) (POINTS * drawing.height())));
        document.addPage(page);
        try (PDPageContentStream content = new PDPageContentStream(document, page)) {
          for (SheetDrawing.Shape shape : drawing.shapes()) {
            draw(content, shape, drawing.height(), font);
          }
        }
      }
      document.save(bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  private static void draw(
      PDPageContentStream content, SheetDrawing.Shape shape, double height, PDFont font)
      throws IOException {
    if (shape instanceof SheetDrawing.Fill fill) {
      Area area = fill.area();
      content.setNonStrokingColor((float) fill.grey());
      content.addRect(
          points(area.left()),
          points(height - area.bottom()),
          points(area.width()),
          points(area.height()));
      content.fill();
    } else if (shape instanceof SheetDrawing.Disc disc) {
      disc(content, disc, height);
    } else if (shape instanceof SheetDrawing.Words words) {
      words(content, words, height, font);
    }
  }

  private static void disc(PDPageContentStream content, SheetDrawing.Disc disc, double height)
      throws IOException {
    float x = points(disc.centre().x());
    float y = points(height - disc.centre().y());
    float r = points(disc.radius());
    float c = (float) (ROUND * r);
    content.setNonStrokingColor((float) disc.grey());
    content.moveTo(x + r, y);
    content.curveTo(x + r, y + c, x + c, y + r, x, y + r);
    content.curveTo(x - c, y + r, x - r, y + c, x - r, y);
    content.curveTo(x - r, y - c, x - c, y - r, x, y - r);
    content.curveTo(x + c, y - r, x + r, y - c, x + r, y);
    content.fill();
  }

  private static void words(
      PDPageContentStream content, SheetDrawing.Words words, double height, PDFont font)
      throws IOException {
    String text = printable(words.text(), font);
    double size = POINTS * words.size();
    double wide = font.getStringWidth(text) / THOUSAND * size;
    double most = POINTS * words.most();
    content.setNonStrokingColor(0f);
    content.beginText();
    content.setFont(font, (float) (wide > most ? size * most / wide : size));
    content.newLineAtOffset(points(words.left()), points(height - words.baseline()));
    content.showText(text);
    content.endText();
  }

  /** Letters that the font lacks come as a question mark; the field's number and code remain. */
  private static String printable(String text, PDFont font) {
    StringBuilder known = new StringBuilder();
    text.codePoints()
        .mapToObj(Character::toString)
        .forEach(letter -> known.append(has(font, letter) ? letter : "?"));
    return known.toString();
  }

  private static boolean has(PDFont font, String letter) {
    try {
      font.encode(letter);
      return true;
    } catch (IOException | IllegalArgumentException e) {
      return false;
    }
  }

  private static float points(double millimetres) {
    return (float) (POINTS * millimetres);
  }
}
