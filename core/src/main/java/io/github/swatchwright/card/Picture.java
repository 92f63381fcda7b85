package io.github.swatchwright.card;

/**
 * A figure across the card, with what it shows in words below.
 *
 * @param figure the figure
 * @param caption the words
 */
record Picture(Figure figure, String caption) implements Block {

  @Override
  public Markup html() {
    return Markup.of("figure").add(figure.svg()).add(Markup.of("figcaption", caption));
  }

  @Override
  public void draw(Sheet sheet) {
    sheet.down(10);
    sheet.down(sheet.figure(figure, 0, sheet.width()));
    sheet.paragraph(caption, 0, Sheet.SMALL, "plain");
  }
}
