package io.github.swatchwright.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A sheet that is filled from top to bottom with text and figures, in SVG. SVG breaks no lines, so
 * the sheet does, by the mean width of a letter; a line is broken early rather than late. Mutable,
 * for one card.
 */
final class Sheet {
  /** Text size of a number to read across the bench. */
  static final double HUGE = 52;

  /** Text size of headings and names. */
  static final double LARGE = 26;

  /** Text size of sentences. */
  static final double NORMAL = 19;

  /** Text size of labels. */
  static final double SMALL = 16;

  private static final double WIDTH = 560;
  private static final double MARGIN = 20;
  private static final double LINE = 1.3;

  /** Mean width of a letter as a share of the text size; wide scripts take more. */
  private static final double LETTER = 0.56;

  private final List<Markup> shapes = new ArrayList<>();
  private double y = MARGIN;

  /** Width that can be drawn on. */
  double width() {
    return WIDTH;
  }

  /** The current height. */
  double y() {
    return y;
  }

  /** Goes down. */
  void down(double by) {
    y += by;
  }

  /** Goes back up, to draw beside what was drawn last. */
  void back(double to) {
    y = to;
  }

  /** Goes down to a height unless it is below it. */
  void atLeast(double to) {
    y = Math.max(y, to);
  }

  /** Draws a thin line across. */
  void rule() {
    y += 6;
    bar(1);
  }

  /** Draws a thick line across. */
  void bar(double thickness) {
    shapes.add(
        Markup.of("rect")
            .with("class", "rule")
            .with("x", MARGIN)
            .with("y", y)
            .with("width", WIDTH)
            .with("height", thickness));
    y += thickness + 5;
  }

  /** Draws a frame from a height to the current one. */
  void frame(double top) {
    shapes.add(
        Markup.of("rect")
            .with("class", "frame")
            .with("x", MARGIN)
            .with("y", top + 4)
            .with("width", WIDTH)
            .with("height", y - top - 4));
    y += 6;
  }

  /** Writes a short text in a square box at the left, without going down. */
  void box(String text, double side) {
    shapes.add(
        Markup.of("rect")
            .with("class", "frame")
            .with("x", MARGIN)
            .with("y", y)
            .with("width", side)
            .with("height", side));
    shapes.add(
        Markup.of("text", text)
            .with("class", "strong")
            .with("x", MARGIN + side / 2)
            .with("y", y + side / 2 + LARGE * 0.36)
            .with("font-size", LARGE)
            .with("text-anchor", "middle"));
  }

  /** Draws a figure that wide without going down; returns its height. */
  double figure(Figure figure, double x, double width) {
    double height = width * figure.height() / figure.width();
    shapes.add(figure.svg(MARGIN + x, y, width, height));
    return height;
  }

  /** Writes a line that isn't broken, and goes down. */
  void line(String text, double x, double size, String style) {
    y += size;
    shapes.add(
        Markup.of("text", text)
            .with("class", style)
            .with("x", MARGIN + x)
            .with("y", y)
            .with("font-size", size));
    y += size * (LINE - 1);
  }

  /** Writes a text in as many lines as it takes, and goes down. */
  void paragraph(String text, double x, double size, String style) {
    broken(text, (WIDTH - x) / (LETTER * size)).forEach(line -> line(line, x, size, style));
  }

  /** Writes lines beside each other, a label above each, and goes down below the longest. */
  void columns(Map<String, List<String>> columns, double columnWidth) {
    double top = y;
    double lowest = y;
    double x = 0;
    for (Map.Entry<String, List<String>> column : columns.entrySet()) {
      y = top;
      line(column.getKey(), x, SMALL, "soft");
      for (String text : column.getValue()) {
        for (String line : broken(text, columnWidth / (LETTER * SMALL))) {
          line(line, x, SMALL, "plain");
        }
      }
      lowest = Math.max(lowest, y);
      x += columnWidth;
    }
    y = lowest;
  }

  /** The text broken into lines of limited length; words longer than a line are broken. */
  static List<String> broken(String text, double letters) {
    int most = Math.max(1, (int) letters);
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" ", -1)) {
      String rest = word;
      if (line.length() > 0 && count(line) + 1 + count(rest) > most) {
        lines.add(line.toString());
        line.setLength(0);
      }
      while (count(rest) > most) {
        int cut = rest.offsetByCodePoints(0, most);
        lines.add(rest.substring(0, cut));
        rest = rest.substring(cut);
      }
      line.append(line.length() == 0 ? "" : " ").append(rest);
    }
    lines.add(line.toString());
    return lines;
  }

  private static int count(CharSequence text) {
    return Character.codePointCount(text, 0, text.length());
  }

  /** The sheet as an SVG document. */
  String toSvg(String title) {
    double height = y + MARGIN;
    return Markup.of("svg")
            .with("xmlns", "http://www.w3.org/2000/svg")
            .with("viewBox", "0 0 " + (WIDTH + 2 * MARGIN) + " " + Markup.number(height))
            .with("width", WIDTH + 2 * MARGIN)
            .with("height", height)
            .add(Markup.of("title", title))
            .add(Markup.of("style", Style.SHEET.text()))
            .add(
                Markup.of("rect")
                    .with("class", "paper")
                    .with("width", "100%")
                    .with("height", "100%"))
            .add(shapes)
        + "\n";
  }
}
