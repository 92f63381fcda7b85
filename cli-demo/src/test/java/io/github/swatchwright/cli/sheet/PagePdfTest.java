package io.github.swatchwright.cli.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.card.Card;
import io.github.swatchwright.card.Ink;
import io.github.swatchwright.card.Page;
import io.github.swatchwright.card.SheetPrint;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.mix.PredictedMix;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.sheet.Paper;
import io.github.swatchwright.sheet.SheetDrawing;
import io.github.swatchwright.sheet.SheetLayout;
import io.github.swatchwright.sheet.SheetPage;
import io.github.swatchwright.sheet.Spot;
import io.github.swatchwright.spectrum.Illuminant;
import io.github.swatchwright.spectrum.TristimulusWeights;
import io.github.swatchwright.testdata.DemoShelf;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
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

  private static Card card() {
    Shelf shelf = ShelfJson.parse(DemoShelf.text(), "demo shelf");
    MixPredictor predictor = MixPredictor.of(ShelfOptics.estimate(shelf), TristimulusWeights.D65);
    Mix mix = Mix.parse("Titanium white:6, Red oxide:1.5, Yellow oxide:2", shelf);
    return Card.ofPredictions(
        List.of(new PredictedMix(mix, predictor.predict(mix))), Illuminant.D65);
  }

  // Adobe's metrics as PDFBox has them. Lines are laid out by Helvetica's widths, and bold ones by
  // those and 8 % more; a line that is wider all the same would be printed smaller than its
  // neighbours.
  @Test
  void linesFitByTheMetricsOfTheirFont() throws IOException {
    for (Page.Shape shape : card().pages().get(0).shapes()) {
      if (shape instanceof Page.Words words) {
        PDFont font =
            new PDType1Font(
                words.isBold()
                    ? Standard14Fonts.FontName.HELVETICA_BOLD
                    : Standard14Fonts.FontName.HELVETICA);
        String known = words.text().replace('\u0394', 'D').replace('\u2212', '-');
        assertThat(font.getStringWidth(known) / 1000 * words.size())
            .as(words.text())
            .isLessThanOrEqualTo(words.most());
      }
    }
  }

  // Both renderings are of 8 bits; PDFBox fills without smoothing in the middle of an area.
  @Test
  void swatchesAreExactAndTextIsText() throws IOException {
    Card card = card();
    byte[] pdf = PagePdf.of("Prediction", card.pages());
    try (PDDocument document = Loader.loadPDF(pdf)) {
      assertThat(document.getNumberOfPages()).isEqualTo(1);
      assertThat(document.getDocumentInformation().getTitle()).isEqualTo("Prediction");
      assertThat(new PDFTextStripper().getText(document))
          .contains("Titanium white", "Red oxide", "Lamp", "Ring", "Print isn't colour-true");
      BufferedImage image = new PDFRenderer(document).renderImageWithDPI(0, (float) DPI);
      int found = 0;
      for (Page.Shape shape : card.pages().get(0).shapes()) {
        if (shape instanceof Page.Figure figure) {
          for (Page.Shape inner : figure.shapes()) {
            if (inner instanceof Page.Box box && box.ink().style().equals("swatch")) {
              int x = (int) ((box.left() + box.width() / 2) * PER_MM);
              int y = (int) ((box.top() + box.height() / 2) * PER_MM);
              assertThat(String.format(Locale.ROOT, "#%06X", image.getRGB(x, y) & 0xFFFFFF))
                  .isEqualTo(box.ink().hex());
              found++;
            }
          }
        }
      }
      assertThat(found).isEqualTo(1);
    }
  }

  @Test
  void anyLetterCanBePrinted() throws IOException {
    Page page =
        new Page(
            148,
            210,
            List.of(
                new Page.Words(
                    10, 20, 3, false, "ΔE00 1.2, L′ −3 Жёлтый 🎨 Grün", 120, Ink.BLACK)));
    try (PDDocument document = Loader.loadPDF(PagePdf.of("Letters", List.of(page)))) {
      assertThat(new PDFTextStripper().getText(document)).contains("E00 1.2, L", "Grün");
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
