package io.github.swatchwright.card;

/**
 * A plain paragraph.
 *
 * @param text it
 */
record Sentence(String text) implements Block {
  @Override
  public Markup html() {
    return Markup.of("p", text);
  }

  @Override
  public void draw(Sheet sheet) {
    sheet.down(8);
    sheet.paragraph(text, 0, Sheet.NORMAL, "plain");
  }
}
