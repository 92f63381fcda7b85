package io.github.swatchwright.card;

import io.github.swatchwright.card.CardPart.Line;
import io.github.swatchwright.card.CardPart.Named;
import java.util.ArrayList;
import java.util.List;

/**
 * A list laid out for paper; a long one of short lines takes two columns.
 *
 * @param text sizes of letters
 * @param lines the list
 */
record PaperLines(PaperText text, List<Line> lines) {
  private static final double SWATCH = 5;
  private static final double HIGH = 4.2;
  private static final int LONG = 10;
  private static final double GUTTER = 5;

  /** Rows that aren't torn. */
  List<Laid> rows(double width) {
    double half = (width - GUTTER) / 2;
    if (lines.size() < LONG || !lines.stream().allMatch(line -> isShort(line, half))) {
      return lines.stream().map(line -> row(line, width)).toList();
    }
    List<Laid> rows = new ArrayList<>();
    for (int i = 0; i < lines.size(); i += 2) {
      Laid other = i + 1 < lines.size() ? row(lines.get(i + 1), half) : Laid.EMPTY;
      rows.add(Laid.beside(row(lines.get(i), half), other, half + GUTTER));
    }
    return rows;
  }

  private boolean isShort(Line line, double width) {
    double inner = width - mark(line) - swatches(line);
    return TextWidth.of(line.text(), true) * text.normal() <= inner
        && TextWidth.of(line.detail(), false) * text.small() <= inner;
  }

  private double mark(Line line) {
    return line.mark().isEmpty() ? 0 : 2.2 * text.normal();
  }

  private double swatches(Line line) {
    int shown = Math.min(3, line.colours().size());
    return shown == 0 ? 0 : SWATCH * text.scale() * shown + 1.8;
  }

  private Laid row(Line line, double width) {
    double inner = width - mark(line) - swatches(line);
    List<Laid> words = new ArrayList<>();
    words.add(text.paragraph(line.text(), text.normal(), true, Ink.BLACK, inner));
    if (!line.detail().isEmpty()) {
      words.add(text.paragraph(line.detail(), text.small(), false, Ink.BLACK, inner));
    }
    Laid mark = text.line(line.mark(), text.normal(), true, Ink.BLACK, Math.max(1, mark(line)));
    Laid marked = line.colours().isEmpty() ? mark : Laid.beside(mark, swatch(line), mark(line));
    return text.ruled(Laid.beside(marked, Laid.stack(words), mark(line) + swatches(line)), width);
  }

  private Laid swatch(Line line) {
    double high = HIGH * text.scale();
    List<Named> named = line.colours().stream().map(lab -> new Named("", lab)).toList();
    return new Laid(
        high,
        (page, left, top) ->
            page.add(
                new SwatchRow(named).figure(left, top + 0.4, swatches(line) - 1.8, high - 0.4)));
  }
}
