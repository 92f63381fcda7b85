package io.github.swatchwright.sheet;

import java.util.ArrayList;
import java.util.List;

/**
 * A page as shapes, in the order in which they are drawn, for whatever prints it. Everything is
 * grey, so that black-and-white printers do.
 *
 * @param width of the paper, mm
 * @param height of the paper, mm
 * @param shapes what to draw on white
 */
public record SheetDrawing(double width, double height, List<Shape> shapes) {
  /** Hairlines, mm. */
  private static final double LINE = 0.15;

  private static final double[] GREYS = {0, 0.2, 0.4, 0.6, 0.75, 0.9};

  /** Mean width of a letter by its size, for breaking lines. */
  private static final double LETTER = 0.5;

  private static final String TITLE = "Swatch sheet";

  private static final List<String> HOW_TO =
      List.of(
          "Print at 100 %, not fitted to the page.",
          "Paint: one even stroke per field, inside the dotted lines, over black and paper; two thin"
              + " strokes if you brush. Let dry. The same varnish on all, or none.",
          "Photograph: daylight or one lamp, no flash, no shadow, straight from above, the whole"
              + " sheet.");

  /** Something to draw. */
  public sealed interface Shape {}

  /**
   * A filled rectangle.
   *
   * @param area where
   * @param grey 0 black to 1 white
   */
  public record Fill(Area area, double grey) implements Shape {}

  /**
   * A filled disc.
   *
   * @param centre where
   * @param radius mm
   * @param grey 0 black to 1 white
   */
  public record Disc(Spot centre, double radius, double grey) implements Shape {}

  /**
   * A line of text.
   *
   * @param left where it begins, mm
   * @param baseline its base line, mm from the top
   * @param size of the letters, mm
   * @param text the text
   * @param most the width that it has to stay within, mm
   */
  public record Words(double left, double baseline, double size, String text, double most)
      implements Shape {}

  /** Copies the list. */
  public SheetDrawing {
    shapes = List.copyOf(shapes);
  }

  /**
   * Draws a page.
   *
   * @param layout the page
   * @param code the modules of its code, row by row, true for black; without a margin
   */
  public static SheetDrawing of(SheetLayout layout, boolean[][] code) {
    List<Shape> shapes = new ArrayList<>();
    for (Spot mark : layout.marks()) {
      shapes.add(new Disc(mark, SheetLayout.MARK_RADIUS, 0));
      shapes.add(new Disc(mark, SheetLayout.MARK_HOLE, 1));
      shapes.add(new Disc(mark, SheetLayout.MARK_DOT, 0));
    }
    code(shapes, layout.code(), code);
    dashes(shapes, layout.card(), 0.55);
    Area card = layout.card();
    shapes.add(
        new Words(
            card.left() + 3,
            card.top() + card.height() / 2,
            2.4,
            "Grey card or colour chart here",
            card.width() - 6));
    for (int i = 0; i < layout.greys().size(); i++) {
      shapes.add(new Fill(layout.greys().get(i), GREYS[Math.min(i, GREYS.length - 1)]));
    }
    words(shapes, layout);
    int number = 1;
    for (SheetField field : layout.fields()) {
      field(shapes, field, number++);
    }
    return new SheetDrawing(layout.width(), layout.height(), shapes);
  }

  private static void code(List<Shape> shapes, Area area, boolean[][] code) {
    double module = area.width() / code.length;
    for (int row = 0; row < code.length; row++) {
      int start = 0;
      while (start < code.length) {
        int end = start;
        while (end < code.length && code[row][end]) {
          end++;
        }
        if (end > start) {
          double high = Math.min(module * 1.01, area.bottom() - (area.top() + row * module));
          shapes.add(
              new Fill(
                  new Area(
                      area.left() + start * module,
                      area.top() + row * module,
                      (end - start) * module,
                      high),
                  0));
        }
        start = end + 1;
      }
    }
  }

  private static void words(List<Shape> shapes, SheetLayout layout) {
    SheetPage page = layout.page();
    double left = layout.code().right() + 3;
    double wide = layout.card().left() - left - 2;
    double y = layout.code().top() + 9;
    double size = wide < 30 ? 1.7 : 2.3;
    shapes.add(new Words(left, y, 1.5 * size, TITLE, wide));
    y += 1.6 * size;
    String which = "page " + page.page() + " of " + page.pages() + ", sheet " + page.sheet();
    shapes.add(new Words(left, y, size, which, wide));
    y += 0.4 * size;
    for (String paragraph : HOW_TO) {
      for (String line : lines(paragraph, wide, size)) {
        y += 1.25 * size;
        shapes.add(new Words(left, y, size, line, wide));
      }
      y += 0.3 * size;
    }
  }

  private static List<String> lines(String text, double wide, double size) {
    int most = (int) (wide / (LETTER * size));
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" ", -1)) {
      if (line.length() > 0 && line.length() + 1 + word.length() > most) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.length() == 0 ? "" : " ").append(word);
    }
    lines.add(line.toString());
    return lines;
  }

  private static void field(List<Shape> shapes, SheetField field, int number) {
    shapes.add(new Fill(field.black(), 0));
    double wide = field.paper().right() - field.black().left();
    String label = field.isMix() ? field.label().substring(1) : field.label();
    shapes.add(
        new Words(
            field.black().left(), field.black().top() - 2.4, 2.8, number + "  " + label, wide));
    Area stroke = field.stroke();
    double left = field.paper().left();
    for (double x = left + 1; x < stroke.right() - 0.6; x += 2) {
      shapes.add(new Fill(new Area(x, stroke.top() - LINE, 0.6, LINE), 0.5));
      shapes.add(new Fill(new Area(x, stroke.bottom(), 0.6, LINE), 0.5));
    }
    for (double x = stroke.left(); x < left - 0.6; x += 2) {
      shapes.add(new Fill(new Area(x, stroke.top() - LINE, 0.6, LINE), 0.7));
      shapes.add(new Fill(new Area(x, stroke.bottom(), 0.6, LINE), 0.7));
    }
  }

  private static void dashes(List<Shape> shapes, Area area, double grey) {
    for (double x = area.left(); x < area.right() - 1; x += 3) {
      shapes.add(new Fill(new Area(x, area.top(), 1, LINE), grey));
      shapes.add(new Fill(new Area(x, area.bottom(), 1, LINE), grey));
    }
    for (double y = area.top(); y < area.bottom() - 1; y += 3) {
      shapes.add(new Fill(new Area(area.left(), y, LINE, 1), grey));
      shapes.add(new Fill(new Area(area.right(), y, LINE, 1), grey));
    }
  }
}
