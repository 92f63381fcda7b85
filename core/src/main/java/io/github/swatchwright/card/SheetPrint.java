package io.github.swatchwright.card;

import io.github.swatchwright.sheet.SheetDrawing;
import java.util.List;
import java.util.Locale;

/** A sheet to print, of true size: as a page, as SVG, or all pages as one HTML file. */
public final class SheetPrint {
  private SheetPrint() {}

  /** A drawing of a sheet as a page. */
  public static Page page(SheetDrawing drawing) {
    return new Page(
        drawing.width(),
        drawing.height(),
        drawing.shapes().stream().map(SheetPrint::shape).toList());
  }

  private static Page.Shape shape(SheetDrawing.Shape shape) {
    if (shape instanceof SheetDrawing.Fill fill) {
      return new Page.Box(
          fill.area().left(),
          fill.area().top(),
          fill.area().width(),
          fill.area().height(),
          grey(fill.grey()));
    }
    if (shape instanceof SheetDrawing.Disc disc) {
      return Page.Disc.whole(
          disc.centre().x(), disc.centre().y(), disc.radius(), grey(disc.grey()));
    }
    SheetDrawing.Words words = (SheetDrawing.Words) shape;
    return new Page.Words(
        words.left(),
        words.baseline(),
        words.size(),
        false,
        words.text(),
        words.most(),
        Ink.ofPaint("#000000", ""));
  }

  /** One page as an SVG picture, sized in millimetres. */
  public static String toSvg(SheetDrawing drawing) {
    return svg(drawing).with("xmlns", "http://www.w3.org/2000/svg") + "\n";
  }

  /** All pages as an HTML file that prints one page of paper each. */
  public static String toHtml(List<SheetDrawing> drawings) {
    SheetDrawing first = drawings.get(0);
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
    Markup body = Markup.of("body").add(drawings.stream().map(SheetPrint::svg).toList());
    return "<!DOCTYPE html>\n" + Markup.of("html").with("lang", "en").add(head).add(body) + "\n";
  }

  private static Markup svg(SheetDrawing drawing) {
    return PageSvg.page(page(drawing))
        .with("font-family", "Helvetica, Arial, sans-serif")
        .with("width", Markup.number(drawing.width()) + "mm")
        .with("height", Markup.number(drawing.height()) + "mm");
  }

  private static Ink grey(double grey) {
    String level = String.format(Locale.ROOT, "%02x", Math.round(255 * grey));
    return Ink.ofPaint("#" + level + level + level, "");
  }
}
