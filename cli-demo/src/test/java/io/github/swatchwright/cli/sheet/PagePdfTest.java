package io.github.swatchwright.cli.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.card.SheetPrint;
import io.github.swatchwright.sheet.Paper;
import io.github.swatchwright.sheet.SheetDrawing;
import io.github.swatchwright.sheet.SheetLayout;
import io.github.swatchwright.sheet.SheetPage;
import io.github.swatchwright.sheet.Spot;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PagePdfTest {
  private static final double DPI = 254;

  /** Pixels of the rendering for a millimetre. */
  private static final double PER_MM = DPI / 25.4;

  @ParameterizedTest
  @EnumSource(Paper.class)
  void theSheetIsOfTrueSizeByItsNumbersAndWhenRendered(Paper paper) throws IOException {
    SheetPage page = SheetPage.of(paper, List.of("Yellow oxide", "Жёлтый", "=White:5, Red:1"));
    SheetLayout layout = SheetLayout.of(page);
    byte[] pdf =
        PagePdf.of(
            "Swatch sheet", List.of(SheetPrint.page(SheetDrawing.of(layout, SheetCodes.of(page)))));
    try (PDDocument document = Loader.loadPDF(pdf)) {
      double width = document.getPage(0).getMediaBox().getWidth() / 72 * 25.4;
      double height = document.getPage(0).getMediaBox().getHeight() / 72 * 25.4;
      assertThat(width).isBetween(paper.width() - 0.01, paper.width() + 0.01);
      assertThat(height).isBetween(paper.height() - 0.01, paper.height() + 0.01);
      assertThat(new PDFTextStripper().getText(document))
          .contains("Yellow oxide", "White:5, Red:1");
      BufferedImage image = new PDFRenderer(document).renderImageWithDPI(0, (float) DPI);
      for (Spot mark : layout.marks()) {
        double[] centre = darkCentre(image, mark, SheetLayout.MARK_DOT + 0.6);
        assertThat(Math.hypot(centre[0] - mark.x(), centre[1] - mark.y())).isLessThan(0.2);
      }
      double left = firstDark(image, layout.fields().get(0).black().top() + 1);
      assertThat(left)
          .isBetween(
              layout.fields().get(0).black().left() - 0.2,
              layout.fields().get(0).black().left() + 0.2);
    }
  }

  private static double[] darkCentre(BufferedImage image, Spot mark, double reach) {
    double sum = 0;
    double x = 0;
    double y = 0;
    for (int row = (int) ((mark.y() - reach) * PER_MM); row < (mark.y() + reach) * PER_MM; row++) {
      for (int column = (int) ((mark.x() - reach) * PER_MM);
          column < (mark.x() + reach) * PER_MM;
          column++) {
        double dark = 255 - (image.getRGB(column, row) & 0xFF);
        sum += dark;
        x += dark * (column + 0.5) / PER_MM;
        y += dark * (row + 0.5) / PER_MM;
      }
    }
    return new double[] {x / sum, y / sum};
  }

  /** Where the first dark pixel right of the marks is, mm. */
  private static double firstDark(BufferedImage image, double y) {
    int column = (int) (16 * PER_MM);
    while ((image.getRGB(column, (int) (y * PER_MM)) & 0xFF) > 128) {
      column++;
    }
    return column / PER_MM;
  }
}
