package io.github.swatchwright.cli.sheet;

import io.github.swatchwright.card.Ink;
import io.github.swatchwright.card.Page;
import io.github.swatchwright.sheet.Spot;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** Pages of cards and sheets as a PDF document of true size. Every PDF reader has its fonts. */
public final class PagePdf {
  /**
   * PDFBox warns when the machine has no Helvetica of its own; viewers have one, so it's no news.
   */
  private static final Logger LIBRARY = Logger.getLogger("org.apache.pdfbox");

  static {
    LIBRARY.setLevel(Level.SEVERE);
  }

  private static final double POINTS = 72 / 25.4;

  /** Sectors of a disc are drawn in arcs of at most so much of a turn. */
  private static final double ARC = 0.125;

  private static final float HUNDREDTHS = 100;

  private final PDPageContentStream content;
  private final double height;

  private PagePdf(PDPageContentStream content, double height) {
    this.content = content;
    this.height = height;
  }

  /**
   * The document.
   *
   * @param title what it is called in a reader's window
   * @param pages its pages
   */
  public static byte[] of(String title, List<Page> pages) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (PDDocument document = new PDDocument()) {
      PDDocumentInformation information = new PDDocumentInformation();
      information.setTitle(title);
      document.setDocumentInformation(information);
      for (Page page : pages) {
        PDPage paper =
            new PDPage(
                new PDRectangle((float) (POINTS * page.width()), (float) (POINTS * page.height())));
        document.addPage(paper);
        try (PDPageContentStream content = new PDPageContentStream(document, paper)) {
          new PagePdf(content, page.height()).draw(page.shapes());
        }
      }
      document.save(bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  private void draw(List<Page.Shape> shapes) throws IOException {
    for (Page.Shape shape : shapes) {
      if (shape instanceof Page.Box box) {
        ink(box.ink());
        content.addRect(
            x(box.left()), y(box.top() + box.height()), points(box.width()), points(box.height()));
        content.fill();
      } else if (shape instanceof Page.Disc disc) {
        disc(disc);
      } else if (shape instanceof Page.Curves curves) {
        curves(curves);
      } else if (shape instanceof Page.Words words) {
        ink(words.ink());
        new PdfWords(content, POINTS).write(words, x(words.left()), y(words.baseline()));
      } else if (shape instanceof Page.Figure figure) {
        figure(figure);
      }
    }
  }

  /** A figure is cut off at its edges. */
  private void figure(Page.Figure figure) throws IOException {
    content.saveGraphicsState();
    content.addRect(
        x(figure.left()),
        y(figure.top() + figure.height()),
        points(figure.width()),
        points(figure.height()));
    content.clip();
    draw(figure.shapes());
    content.restoreGraphicsState();
  }

  private void ink(Ink ink) throws IOException {
    int rgb = Integer.parseInt(ink.hex().substring(1), 16);
    int red = rgb >> 16;
    int green = rgb >> 8 & 0xFF;
    int blue = rgb & 0xFF;
    if (red == green && green == blue) {
      content.setNonStrokingColor(red / 255f); // As grey, so that black-and-white printers do.
    } else {
      content.setNonStrokingColor(red / 255f, green / 255f, blue / 255f);
    }
  }

  private void disc(Page.Disc disc) throws IOException {
    ink(disc.ink());
    double turn = disc.to() - disc.from();
    int arcs = (int) Math.ceil(turn / ARC - 1e-9);
    if (!disc.isWhole()) {
      content.moveTo(x(disc.x()), y(disc.y()));
      lineTo(rim(disc, disc.from()));
    } else {
      Spot top = rim(disc, disc.from());
      content.moveTo(x(top.x()), y(top.y()));
    }
    for (int i = 0; i < arcs; i++) {
      arc(disc, disc.from() + turn * i / arcs, disc.from() + turn * (i + 1) / arcs);
    }
    content.closePath();
    content.fill();
  }

  /**
   * An arc as a cubic curve, whose control points lie 4/3·tan(angle/4) radii along its tangents.
   */
  private void arc(Page.Disc disc, double from, double to) throws IOException {
    double along = 4.0 / 3 * Math.tan(2 * Math.PI * (to - from) / 4);
    Spot start = rim(disc, from);
    Spot end = rim(disc, to);
    double[] radiusThere = {start.x() - disc.x(), start.y() - disc.y()};
    double[] radiusHere = {end.x() - disc.x(), end.y() - disc.y()};
    content.curveTo(
        x(start.x() - along * radiusThere[1]),
        y(start.y() + along * radiusThere[0]),
        x(end.x() + along * radiusHere[1]),
        y(end.y() - along * radiusHere[0]),
        x(end.x()),
        y(end.y()));
  }

  private static Spot rim(Page.Disc disc, double turns) {
    double angle = 2 * Math.PI * turns;
    return new Spot(
        disc.x() + disc.radius() * Math.sin(angle), disc.y() - disc.radius() * Math.cos(angle));
  }

  private void lineTo(Spot spot) throws IOException {
    content.lineTo(x(spot.x()), y(spot.y()));
  }

  private void curves(Page.Curves curves) throws IOException {
    ink(curves.ink());
    for (List<Spot> curve : curves.curves()) {
      Spot before = middle(curves, curve.get(curve.size() - 1), curve.get(0));
      content.moveTo(x(before.x()), y(before.y()));
      for (int i = 0; i < curve.size(); i++) {
        Spot control = middle(curves, curve.get(i), curve.get(i));
        Spot end = middle(curves, curve.get(i), curve.get((i + 1) % curve.size()));
        quadratic(before, control, end);
        before = end;
      }
      content.closePath();
    }
    content.fill();
  }

  private static Spot middle(Page.Curves curves, Spot one, Spot other) {
    return new Spot(
        curves.left() + curves.scale() * (one.x() + other.x()) / 2,
        curves.top() + curves.scale() * (one.y() + other.y()) / 2);
  }

  /** A quadratic curve as the same cubic one. */
  private void quadratic(Spot from, Spot control, Spot to) throws IOException {
    content.curveTo(
        x((from.x() + 2 * control.x()) / 3),
        y((from.y() + 2 * control.y()) / 3),
        x((to.x() + 2 * control.x()) / 3),
        y((to.y() + 2 * control.y()) / 3),
        x(to.x()),
        y(to.y()));
  }

  private static float x(double millimetres) {
    return points(millimetres);
  }

  private float y(double millimetres) {
    return points(height - millimetres);
  }

  /** To a hundredth of a point, which keeps files small. */
  private static float points(double millimetres) {
    return Math.round(HUNDREDTHS * POINTS * millimetres) / HUNDREDTHS;
  }
}
