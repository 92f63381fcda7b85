package io.github.swatchwright.card;

import java.util.List;
import java.util.Optional;

/**
 * What goes into the pot: how many drops of what, each row with its dots.
 *
 * @param rows in the order in which they are dripped
 */
record Drops(List<Row> rows) implements Block {

  private static final double INDENT = 100;
  private static final double DOTS_WIDTH = 300;

  /**
   * Drops of one paint.
   *
   * @param count the number in words, such as {@code 3}
   * @param dots the same to count; empty when there are too many
   * @param name of the paint
   * @param detail what else there is to know about it
   */
  record Row(String count, Optional<Figure> dots, String name, String detail) {

    /** So many drops of a paint of that colour, and their volume. */
    static Row of(double drops, String paint, Optional<ScreenColour> colour, double millilitres) {
      Optional<Figure> dots =
          colour
              .filter(known -> drops <= DropDots.MOST)
              .map(known -> new DropDots(drops, known).figure());
      return new Row(Markup.number(drops), dots, Label.of(paint), Volume.words(millilitres));
    }
  }

  Drops {
    rows = List.copyOf(rows);
  }

  @Override
  public Markup html() {
    return Markup.of("ul", rows.stream().map(Drops::item).toList()).with("class", "drops");
  }

  private static Markup item(Row row) {
    Markup paint =
        Markup.of("div")
            .with("class", "paint")
            .add(Markup.of("bdi", row.name))
            .add(Markup.of("span", row.detail).with("class", "soft"));
    Markup item = Markup.of("li").add(Markup.of("strong", row.count));
    return item.add(row.dots.map(dots -> paint.add(dots.svg())).orElse(paint));
  }

  @Override
  public void draw(Sheet sheet) {
    for (Row row : rows) {
      sheet.rule();
      double top = sheet.y();
      sheet.line(row.count, 0, Sheet.HUGE, "strong");
      sheet.back(top);
      sheet.paragraph(row.name, INDENT, Sheet.LARGE, "strong");
      sheet.paragraph(row.detail, INDENT, Sheet.SMALL, "soft");
      row.dots.ifPresent(
          dots -> {
            sheet.down(4);
            sheet.down(sheet.figure(dots, INDENT, DOTS_WIDTH));
          });
      sheet.atLeast(top + Sheet.HUGE * 1.3);
    }
  }
}
