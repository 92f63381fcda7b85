package io.github.swatchwright.card;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.colour.Lab;
import java.time.LocalDate;
import java.util.List;

/**
 * An entry of a notebook as a card shows it.
 *
 * @param number its number in the notebook, from 1
 * @param date when it was written
 * @param asked what was asked, or what was tried
 * @param colours of its first mixes; may be empty
 * @param found the mixes, or how it went, in words; may be empty
 */
public record NotebookLine(
    int number, LocalDate date, String asked, List<Lab> colours, String found) {
  /** Copies the list; refuses numbers below 1. */
  public NotebookLine {
    Require.within("number", number, 1, Integer.MAX_VALUE);
    colours = List.copyOf(colours);
  }
}
