package io.github.swatchwright.card;

import io.github.swatchwright.sheet.Area;
import io.github.swatchwright.sheet.SheetDrawing;
import java.util.List;

/** A sheet to print, of true size: one page as SVG, or all pages as one HTML file. */
public final class SheetPrint {
  /** Mean width of a letter by its size. */
  private static final double LETTER = 0.55;

  private SheetPrint() {}

  /** One page as an SVG picture, sized in millimetres. */
  public static String toSvg(SheetDrawing page) {
    return svg(page).toString() + "\n";
  }

  /** All pages as an HTML file that prints one page of paper each. */
  public static String toHtml(List<SheetDrawing> pages) {
    SheetDrawing first = pages.get(0);
    String size =
        "@page{size:"
            + Markup.number(first.width())
            + "mm "
            + Markup.number(first.height())
            + "mm;margin:0}body{margin:0}svg{display:block;break-after:page}";
    Markup head =
        Markup.of("head")
            .add(Markup.of("meta").with("charset", "utf-8"))
            .add(Markup.of("title", "Swatch sheet"))
            .add(Markup.of("style", size));
    Markup body = Markup.of("body").add(pages.stream().map(SheetPrint::svg).toList());
    return "<!DOCTYPE html>\n" + Markup.of("html").with("lang", "en").add(head).add(body) + "\n";
  }

  private static Markup svg(SheetDrawing page) {
    return Markup.of("svg")
        .with("xmlns", "http://www.w3.org/2000/svg")
        .with("width", Markup.number(page.width()) + "mm")
        .with("height", Markup.number(page.height()) + "mm")
        .with("viewBox", "0 0 " + Markup.number(page.width()) + " " + Markup.number(page.height()))
        .add(rectangle(new Area(0, 0, page.width(), page.height()), 1))
        .add(page.shapes().stream().map(SheetPrint::markup).toList());
  }

  private static Markup markup(SheetDrawing.Shape shape) {
    if (shape instanceof SheetDrawing.Fill fill) {
      return rectangle(fill.area(), fill.grey());
    }
    if (shape instanceof SheetDrawing.Disc disc) {
      return Markup.of("circle")
          .with("cx", disc.centre().x())
          .with("cy", disc.centre().y())
          .with("r", disc.radius())
          .with("fill", grey(disc.grey()));
    }
    SheetDrawing.Words words = (SheetDrawing.Words) shape;
    Markup text =
        Markup.of("text", words.text())
            .with("x", words.left())
            .with("y", words.baseline())
            .with("font-size", words.size())
            .with("font-family", "Helvetica, Arial, sans-serif");
    // A long name is squeezed.
    return words.text().length() * LETTER * words.size() > words.most()
        ? text.with("textLength", words.most()).with("lengthAdjust", "spacingAndGlyphs")
        : text;
  }

  private static Markup rectangle(Area area, double grey) {
    return Markup.of("rect")
        .with("x", area.left())
        .with("y", area.top())
        .with("width", area.width())
        .with("height", area.height())
        .with("fill", grey(grey));
  }

  private static String grey(double grey) {
    String level = String.format(java.util.Locale.ROOT, "%02x", Math.round(255 * grey));
    return "#" + level + level + level;
  }
}
