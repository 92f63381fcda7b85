package io.github.swatchwright.card;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.card.CardPart.Line;
import io.github.swatchwright.card.CardPart.Lines;
import io.github.swatchwright.card.CardPart.Sentence;
import io.github.swatchwright.colour.Lab;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** What a notebook holds, a line for each entry, the latest first. */
public final class NotebookCard {
  /** More entries than that are not on the card, which says so. */
  public static final int MOST_ENTRIES = 60;

  private NotebookCard() {}

  /**
   * An entry.
   *
   * @param number its number in the notebook, from 1
   * @param date when it was written
   * @param asked what was asked, or what was tried
   * @param colours of its first mixes; may be empty
   * @param found the mixes, or how it went, in words; may be empty
   */
  public record Entry(int number, LocalDate date, String asked, List<Lab> colours, String found) {
    /** Copies the list; refuses numbers below 1. */
    public Entry {
      Require.within("number", number, 1, Integer.MAX_VALUE);
      colours = List.copyOf(colours);
    }
  }

  /**
   * The card.
   *
   * @param entries in the notebook's order
   */
  public static Card of(List<Entry> entries) {
    List<Line> lines = new ArrayList<>();
    for (int i = entries.size() - 1; i >= 0 && lines.size() < MOST_ENTRIES; i--) {
      Entry entry = entries.get(i);
      lines.add(
          new Line(
              Integer.toString(entry.number),
              entry.colours,
              Label.sentence(entry.asked),
              Label.sentence(entry.date + (entry.found.isEmpty() ? "" : ": " + entry.found))));
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
