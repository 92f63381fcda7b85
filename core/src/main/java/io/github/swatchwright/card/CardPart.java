package io.github.swatchwright.card;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.mix.ColourSpread;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A piece of a card's content, below the one before and above the next: data for whoever shows it
 * in a window of their own. Texts are one line each; names from outside come as they are, without
 * hidden characters.
 */
public sealed interface CardPart {

  /**
   * Parts that belong together, below a heading. Kept on one page of paper where they fit.
   *
   * @param mark a number or sign to call it by; empty for none
   * @param heading in a few words
   * @param parts what is in it
   */
  record Section(String mark, String heading, List<CardPart> parts) implements CardPart {
    /** Copies the list. */
    public Section {
      parts = List.copyOf(parts);
    }
  }

  /**
   * Colours side by side, so that the eye can compare them along the edge.
   *
   * @param colours at least one, from the left
   * @param ring what the last of them may turn out as; empty where it is what it is
   * @param isToDo whether the last of them is to be mixed: paper has a place for a dab of it
   */
  record Colours(List<Named> colours, Optional<ColourSpread> ring, boolean isToDo)
      implements CardPart {
    /** Refuses an empty list. */
    public Colours {
      Require.within("number of colours", colours.size(), 1, Integer.MAX_VALUE);
      colours = List.copyOf(colours);
    }

    /** Colours that are there already. */
    static Colours known(Named... colours) {
      return new Colours(List.of(colours), Optional.empty(), false);
    }

    /** A colour that is to be mixed, the last one, and what it may turn out as. */
    static Colours toDo(List<Named> colours, ColourSpread ring) {
      return new Colours(colours, Optional.of(ring), true);
    }
  }

  /**
   * A colour and what it is.
   *
   * @param name in one or two words
   * @param colour the colour
   */
  record Named(String name, Lab colour) {}

  /**
   * What goes into a pot, or on the model: rows to tick off.
   *
   * @param rows in their order
   */
  record Drops(List<Row> rows) implements CardPart {
    /** Copies the list. */
    public Drops {
      rows = List.copyOf(rows);
    }
  }

  /**
   * Drops of a paint, or coats of it.
   *
   * @param count how many
   * @param name of the paint
   * @param dots the paint's colour where its drops are to be counted; empty for coats, for more
   *     than 40 drops, and where the colour isn't known
   * @param detail what else there is to know about it
   */
  record Row(double count, String name, Optional<Lab> dots, String detail) {
    static Row of(double drops, String paint, Optional<Lab> colour, double millilitres) {
      return new Row(
          drops,
          Label.of(paint),
          colour.filter(known -> drops <= DropDots.MOST),
          Volume.words(millilitres));
    }
  }

  /**
   * Small facts, each with its label.
   *
   * @param facts them
   */
  record Facts(List<Fact> facts) implements CardPart {
    /** Copies the list. */
    public Facts {
      facts = List.copyOf(facts);
    }

    /** No facts yet. */
    static Facts none() {
      return new Facts(List.of());
    }

    /** These facts and one more. */
    Facts and(String label, String text) {
      List<Fact> more = new ArrayList<>(facts);
      more.add(new Fact(label, text));
      return new Facts(more);
    }
  }

  /**
   * A fact.
   *
   * @param label what it is about, a word or two
   * @param text what is so
   */
  record Fact(String label, String text) {}

  /**
   * Something to mind.
   *
   * @param word what kind of thing it is, such as {@code Lamp}
   * @param text a sentence or two
   */
  record Note(String word, String text) implements CardPart {}

  /**
   * A plain paragraph.
   *
   * @param text it
   */
  record Sentence(String text) implements CardPart {}

  /**
   * Speckled paint, with what it shows in words.
   *
   * @param speckle the picture
   * @param caption the words
   */
  record Picture(Speckle speckle, String caption) implements CardPart {}

  /**
   * A list with a line for each thing and small swatches before it.
   *
   * @param lines them
   */
  record Lines(List<Line> lines) implements CardPart {
    /** Copies the list. */
    public Lines {
      lines = List.copyOf(lines);
    }
  }

  /**
   * A line of a list.
   *
   * @param mark a number or sign to call it by; empty for none
   * @param colours swatches before it, touching; may be empty
   * @param text what it is
   * @param detail what else there is to know about it; may be empty
   */
  record Line(String mark, List<Lab> colours, String text, String detail) {
    /** Copies the list. */
    public Line {
      colours = List.copyOf(colours);
    }
  }
}
