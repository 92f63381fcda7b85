package io.github.swatchwright.card;

import io.github.swatchwright.card.CardPart.Line;
import io.github.swatchwright.card.CardPart.Lines;
import io.github.swatchwright.card.CardPart.Sentence;
import java.util.ArrayList;
import java.util.List;

/** What a notebook holds, a line for each entry, the latest first. */
final class NotebookCard {
  /** More entries than that are not on the card, which says so. */
  static final int MOST_ENTRIES = 60;

  private NotebookCard() {}

  /**
   * The card.
   *
   * @param entries in the notebook's order
   */
  static Card of(List<NotebookLine> entries) {
    List<Line> lines = new ArrayList<>();
    for (int i = entries.size() - 1; i >= 0 && lines.size() < MOST_ENTRIES; i--) {
      NotebookLine entry = entries.get(i);
      lines.add(
          new Line(
              Integer.toString(entry.number()),
              entry.colours(),
              Label.sentence(entry.asked()),
              Label.sentence(
                  entry.date() + (entry.found().isEmpty() ? "" : ": " + entry.found()))));
    }
    List<CardPart> parts = new ArrayList<>();
    parts.add(lines.isEmpty() ? new Sentence("The notebook has no entries.") : new Lines(lines));
    if (entries.size() > MOST_ENTRIES) {
      parts.add(
          new Sentence(
              "Earlier entries that are not on this card: "
                  + (entries.size() - MOST_ENTRIES)
                  + "."));
    }
    String count = entries.size() == 1 ? "One entry" : entries.size() + " entries";
    return new Card("Notebook", count, parts);
  }
}
