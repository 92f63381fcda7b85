package io.github.swatchwright.card;

import io.github.swatchwright.sheet.Spot;
import java.util.List;

/** Pages and their figures as SVG elements. */
final class PageSvg {
  /** Curves are written in whole tenths of their unit. */
  private static final int TENTHS = 10;

  /** Longer texts keep Helvetica's width where a machine shows them in a wider font. */
  private static final int SHORT = 3;

  private PageSvg() {}

  /** A figure as an element that scales to its place. */
  static Markup figure(Page.Figure figure) {
    return Markup.of("svg")
        .with(
            "viewBox",
            Markup.number(figure.left())
                + " "
                + Markup.number(figure.top())
                + " "
                + Markup.number(figure.width())
                + " "
                + Markup.number(figure.height()))
        .with("role", "img")
        .with("aria-label", figure.description())
        .add(shapes(figure.shapes()));
  }

  /** A figure as a file of its own. */
  static String file(Page.Figure figure) {
    return figure(figure)
            .with("xmlns", "http://www.w3.org/2000/svg")
            .with("width", figure.width())
            .with("height", figure.height())
        + "\n";
  }

  /** Elements for shapes, lowest first. */
  static List<Markup> shapes(List<Page.Shape> shapes) {
    return shapes.stream().map(PageSvg::shape).toList();
  }

  private static Markup shape(Page.Shape shape) {
    if (shape instanceof Page.Box box) {
      Markup rectangle =
          Markup.of("rect")
              .with("x", box.left())
              .with("y", box.top())
              .with("width", box.width())
              .with("height", box.height());
      return inked(
          box.ink().style().equals("swatch")
              ? rectangle.with("shape-rendering", "crispEdges")
              : rectangle,
          box.ink());
    }
    if (shape instanceof Page.Disc disc) {
      return inked(disc.isWhole() ? circle(disc) : sector(disc), disc.ink());
    }
    if (shape instanceof Page.Curves curves) {
      return inked(path(curves), curves.ink());
    }
    if (shape instanceof Page.Words words) {
      return words(words);
    }
    Page.Figure figure = (Page.Figure) shape;
    return figure(figure)
        .with("x", figure.left())
        .with("y", figure.top())
        .with("width", figure.width())
        .with("height", figure.height());
  }

  private static Markup inked(Markup element, Ink ink) {
    Markup styled = ink.style().isEmpty() ? element : element.with("class", ink.style());
    return ink.isPaint() ? styled.with("fill", ink.hex()) : styled;
  }

  private static Markup circle(Page.Disc disc) {
    return Markup.of("circle").with("cx", disc.x()).with("cy", disc.y()).with("r", disc.radius());
  }

  private static Markup sector(Page.Disc disc) {
    String radius = Markup.number(disc.radius());
    return Markup.of("path")
        .with(
            "d",
            "M"
                + point(disc.x(), disc.y())
                + "L"
                + rim(disc, disc.from())
                + "A"
                + radius
                + " "
                + radius
                + " 0 "
                + (disc.to() - disc.from() > 0.5 ? 1 : 0)
                + " 1 "
                + rim(disc, disc.to())
                + "Z");
  }

  private static String rim(Page.Disc disc, double turns) {
    double angle = 2 * Math.PI * turns;
    return point(
        disc.x() + disc.radius() * Math.sin(angle), disc.y() - disc.radius() * Math.cos(angle));
  }

  private static String point(double x, double y) {
    return Markup.number(x) + " " + Markup.number(y);
  }

  private static Markup path(Page.Curves curves) {
    StringBuilder path = new StringBuilder();
    curves.curves().forEach(curve -> append(curve, path));
    return Markup.of("path")
        .with(
            "transform",
            "translate("
                + point(curves.left(), curves.top())
                + ")scale("
                + Double.toString(curves.scale() / TENTHS)
                + ")")
        .with("d", path.toString());
  }

  /**
   * A closed quadratic B-spline in SVG's shortest words: after the first curve, only the ends of
   * curves are written ({@code t}); a reader finds the next control point by reflecting the last
   * one. Ends are rounded so that the points found that way stay within a tenth of the true ones.
   */
  private static void append(List<Spot> points, StringBuilder path) {
    int count = points.size();
    Spot first = points.get(0);
    Spot last = points.get(count - 1);
    long[] start = {tenths((last.x() + first.x()) / 2), tenths((last.y() + first.y()) / 2)};
    long[] control = {tenths(first.x()), tenths(first.y())};
    long[] at = start.clone();
    path.append('M').append(start[0]).append(' ').append(start[1]);
    path.append('q');
    number(control[0] - at[0], true, path);
    number(control[1] - at[1], false, path);
    for (int i = 0; i < count; i++) {
      Spot next = points.get((i + 1) % count);
      long[] end =
          i == count - 1
              ? start
              : new long[] {
                middle(control[0], next.x()), middle(control[1], next.y()),
              };
      if (i == 1) {
        path.append('t');
      }
      number(end[0] - at[0], i == 1, path);
      number(end[1] - at[1], false, path);
      control[0] = 2 * end[0] - control[0];
      control[1] = 2 * end[1] - control[1];
      at = end;
    }
  }

  private static long tenths(double value) {
    return Math.round(TENTHS * value);
  }

  private static long middle(long control, double next) {
    return Math.round((control + TENTHS * next) / 2);
  }

  /** A number, with a space before it where it would run into the one before. */
  private static void number(long number, boolean isFirst, StringBuilder path) {
    path.append(isFirst || number < 0 ? "" : " ").append(number);
  }

  private static Markup words(Page.Words words) {
    double wide = TextWidth.of(words.text(), words.isBold()) * words.size();
    Markup text =
        Markup.of("text", words.text())
            .with("class", words.isBold() ? words.ink().style() + " bold" : words.ink().style())
            .with("x", words.left())
            .with("y", words.baseline())
            .with("font-size", words.size());
    return words.text().length() > SHORT
        ? text.with("textLength", Math.min(wide, words.most()))
            .with("lengthAdjust", "spacingAndGlyphs")
        : text;
  }

  /** A page's shapes on its paper, which is white where no style sheet says otherwise. */
  static Markup page(Page page) {
    return Markup.of("svg")
        .with("class", "page")
        .with("viewBox", "0 0 " + point(page.width(), page.height()))
        .add(inked(paper(page.width(), page.height()), Ink.PAPER).with("fill", Ink.PAPER.hex()))
        .add(shapes(page.shapes()));
  }

  private static Markup paper(double width, double height) {
    return Markup.of("rect").with("width", width).with("height", height);
  }
}
