package io.github.swatchwright.card;

import java.util.ArrayList;
import java.util.List;

/**
 * Text on paper: sizes that belong together, in millimetres.
 *
 * @param scale of all sizes; 1 is for a card that fills its page
 */
record PaperText(double scale) {
  private static final double LINE = 1.28;

  /** Of a number to read across the bench. */
  double huge() {
    return 6.2 * scale;
  }

  /** Of the card's title. */
  double title() {
    return 5.6 * scale;
  }

  /** Of headings and names of paints. */
  double large() {
    return 3.6 * scale;
  }

  /** Of sentences. */
  double normal() {
    return 2.95 * scale;
  }

  /** Of labels and of what is minded once. */
  double small() {
    return 2.5 * scale;
  }

  /** A text in as many lines as it takes. */
  Laid paragraph(String text, double size, boolean isBold, Ink ink, double width) {
    List<Laid> lines = new ArrayList<>();
    for (String line : TextWidth.lines(text, isBold, width / size)) {
      lines.add(line(line, size, isBold, ink, width));
    }
    return Laid.stack(lines);
  }

  /** A line that isn't broken; it is squeezed where it is wider. */
  Laid line(String text, double size, boolean isBold, Ink ink, double width) {
    return new Laid(
        size * LINE,
        (page, left, top) ->
            page.add(new Page.Words(left, top + size, size, isBold, text, width, ink)));
  }

  /** Something below a thin line. */
  Laid ruled(Laid below, double width) {
    return Laid.stack(
        List.of(
            new Laid(
                0.7,
                (page, left, top) -> page.add(new Page.Box(left, top + 0.2, width, 0.1, Ink.RULE))),
            below,
            Laid.space(0.5)));
  }

  /** A text that begins with a bold word. */
  Laid said(String word, String text, double size, double width) {
    double indent = (TextWidth.of(word, true) + TextWidth.of("  ", false)) * size;
    List<String> first = TextWidth.lines(text, false, (width - indent) / size);
    Laid head =
        Laid.beside(
            line(word, size, true, Ink.BLACK, width),
            line(first.get(0), size, false, Ink.BLACK, width - indent),
            indent);
    return first.size() == 1
        ? head
        : Laid.stack(
            List.of(
                head,
                paragraph(
                    text.substring(first.get(0).length()).trim(), size, false, Ink.BLACK, width)));
  }
}
