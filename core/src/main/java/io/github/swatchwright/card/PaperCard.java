package io.github.swatchwright.card;

import io.github.swatchwright.card.CardPart.Section;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * A card on as few pages of A5 paper as hold it in letters that can be read.
 *
 * <p>The problem: some cards are a line too long for a page, and some fill a third of one. So the
 * card is laid out in several sizes of letters; of those with the fewest pages the largest is
 * taken. Then the pages are filled to the least height that needs no further page, so that none is
 * nearly empty. What belongs together is never torn unless a page can't hold it.
 */
final class PaperCard {
  static final double WIDTH = 148;
  static final double HEIGHT = 210;

  private static final double MARGIN = 9;
  private static final double FOOT = 9;
  private static final double INNER_WIDTH = WIDTH - 2 * MARGIN;
  private static final double INNER_HEIGHT = HEIGHT - MARGIN - FOOT - 3;
  private static final double[] SCALES = {1.35, 1.25, 1.15, 1.08, 1, 0.95, 0.9, 0.85};

  /** What is higher than that share of a page may be torn between its rows. */
  private static final double WHOLE = 0.72;

  /** Steps in which the height of pages is levelled, mm. */
  private static final double STEP = 2;

  private static final String NOT_TRUE =
      "Print isn't colour-true: trust a dry dab of the real paint.";

  private final Card card;
  private final PaperText text;
  private final PaperParts parts;

  private PaperCard(Card card, double scale) {
    this.card = card;
    this.text = new PaperText(scale);
    this.parts = new PaperParts(text);
  }

  /** The pages of a card. */
  static List<Page> pages(Card card) {
    PaperCard best = new PaperCard(card, SCALES[0]);
    List<List<Laid>> fewest = best.filled(INNER_HEIGHT);
    for (int i = 1; i < SCALES.length && fewest.size() > 1; i++) {
      PaperCard smaller = new PaperCard(card, SCALES[i]);
      List<List<Laid>> filled = smaller.filled(INNER_HEIGHT);
      if (filled.size() < fewest.size()) {
        best = smaller;
        fewest = filled;
      }
    }
    return best.drawn(best.levelled(fewest));
  }

  private List<Laid> pieces() {
    List<Laid> pieces = new ArrayList<>();
    pieces.add(head());
    card.parts().forEach(part -> pieces.addAll(pieces(part, INNER_HEIGHT * WHOLE)));
    return pieces;
  }

  private List<Laid> pieces(CardPart part, double most) {
    Laid whole = parts.laid(part, INNER_WIDTH);
    if (whole.height() <= most) {
      return List.of(whole);
    }
    if (part instanceof Section section && !section.parts().isEmpty()) {
      List<Laid> pieces = new ArrayList<>();
      for (CardPart inner : section.parts()) {
        pieces.addAll(pieces(inner, most));
      }
      pieces.set(0, Laid.stack(List.of(parts.heading(section, INNER_WIDTH), pieces.get(0))));
      return pieces;
    }
    return parts.rows(part, INNER_WIDTH);
  }

  private List<List<Laid>> filled(double height) {
    return filled(pieces(), height);
  }

  private static List<List<Laid>> filled(List<Laid> pieces, double height) {
    List<List<Laid>> pages = new ArrayList<>();
    double left = -1;
    for (Laid piece : pieces) {
      if (piece.height() > left) {
        pages.add(new ArrayList<>());
        left = height;
      }
      pages.get(pages.size() - 1).add(piece);
      left -= piece.height();
    }
    return pages;
  }

  private List<List<Laid>> levelled(List<List<Laid>> pages) {
    List<Laid> pieces = pieces();
    List<List<Laid>> best = pages;
    for (double height = INNER_HEIGHT - STEP; height > INNER_HEIGHT / 4; height -= STEP) {
      List<List<Laid>> lower = filled(pieces, height);
      if (lower.size() > pages.size()) {
        return best;
      }
      best = lower;
    }
    return best;
  }

  private List<Page> drawn(List<List<Laid>> pages) {
    List<Page> drawn = new ArrayList<>();
    for (List<Laid> pieces : pages) {
      List<Page.Shape> shapes = new ArrayList<>();
      Laid.stack(pieces).drawing().draw(shapes, MARGIN, MARGIN);
      foot(shapes, drawn.size() + 1, pages.size());
      drawn.add(new Page(WIDTH, HEIGHT, shapes));
    }
    return drawn;
  }

  private Laid head() {
    Laid bar =
        new Laid(
            2.2,
            (page, left, top) -> page.add(new Page.Box(left, top, INNER_WIDTH, 1.2, Ink.BLACK)));
    CardOrigin origin = card.origin();
    double half = INNER_WIDTH / 2;
    return Laid.stack(
        List.of(
            bar,
            text.line(card.kind(), text.small(), false, Ink.SOFT, INNER_WIDTH),
            text.paragraph(card.title(), text.title(), true, Ink.BLACK, INNER_WIDTH),
            Laid.beside(
                blank("Date", origin.date().map(LocalDate::toString).orElse(""), half),
                blank("Shelf", origin.shelf().map(Label::of).orElse(""), half),
                half),
            Laid.beside(
                blank("Project", origin.project().map(Label::of).orElse(""), half),
                blank(
                    "Notebook entry",
                    origin.entry().isPresent() ? "no. " + origin.entry().getAsInt() : "",
                    half),
                half),
            Laid.space(1)));
  }

  /** A label and what is known of it, on a line to write on. */
  private Laid blank(String label, String known, double width) {
    double size = text.small();
    double indent = (TextWidth.of(label, false) + 0.6) * size;
    Laid words =
        Laid.beside(
            text.line(label, size, false, Ink.SOFT, width),
            text.line(known, size, true, Ink.BLACK, width - indent - 3),
            indent);
    return Laid.stack(
        List.of(
            words.below(0.5),
            new Laid(
                0.6,
                (page, left, top) ->
                    page.add(
                        new Page.Box(left + indent, top, width - indent - 3, 0.15, Ink.RULE)))));
  }

  private void foot(List<Page.Shape> shapes, int number, int all) {
    double size = 2.4;
    double y = HEIGHT - FOOT + 2;
    shapes.add(new Page.Box(MARGIN, y - size - 1.2, INNER_WIDTH, 0.2, Ink.RULE));
    String which = all == 1 ? "" : "Page " + number + " of " + all + ". ";
    shapes.add(new Page.Words(MARGIN, y, size, false, which + NOT_TRUE, INNER_WIDTH, Ink.SOFT));
  }
}
