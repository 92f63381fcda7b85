package io.github.swatchwright.card;

import io.github.swatchwright.spectrum.Illuminant;

/**
 * Something to mind, in a frame.
 *
 * @param word what kind of thing it is, such as {@code Lamp}
 * @param text a sentence or two
 */
record Note(String word, String text) implements Block {

  /** The colours hold under the light that they were computed for. */
  static Note lamp(Illuminant light) {
    String name = Label.of(light.name());
    return light.equals(Illuminant.D65)
        ? new Note(
            "Lamp",
            "These colours are for daylight (D65). Under a lamp, paints that match may part: judge"
                + " them by a window, dry.")
        : new Note(
            "Lamp",
            "These colours are for the light "
                + name
                + " alone. Paints that match under it may part in daylight: look there too.");
  }

  @Override
  public Markup html() {
    return Markup.of("p")
        .with("class", "note")
        .with("role", "note")
        .add(Markup.of("strong", word))
        .text(" " + text);
  }

  @Override
  public void draw(Sheet sheet) {
    sheet.down(8);
    double top = sheet.y();
    sheet.down(10);
    sheet.paragraph(word, 14, Sheet.SMALL, "strong");
    sheet.paragraph(text, 14, Sheet.NORMAL, "plain");
    sheet.down(8);
    sheet.frame(top);
  }
}
