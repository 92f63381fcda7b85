package io.github.swatchwright.card;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Where a card comes from: what is written below its title, so that it is still understood in a
 * year. What isn't known leaves a line to write on.
 *
 * @param date when it was worked out
 * @param shelf name of the shelf
 * @param project what is painted
 * @param entry number of the notebook's entry, from 1 on
 */
public record CardOrigin(
    Optional<LocalDate> date, Optional<String> shelf, Optional<String> project, OptionalInt entry) {
  /** Nothing is known. */
  public static final CardOrigin UNKNOWN =
      new CardOrigin(Optional.empty(), Optional.empty(), Optional.empty(), OptionalInt.empty());

  /** Of a day and a shelf. */
  public static CardOrigin of(LocalDate date, String shelf) {
    return new CardOrigin(
        Optional.of(date), Optional.of(shelf), Optional.empty(), OptionalInt.empty());
  }

  /** The same for a project. */
  public CardOrigin withProject(String name) {
    return new CardOrigin(date, shelf, Optional.of(name), entry);
  }

  /** The same as an entry of a notebook. */
  public CardOrigin withEntry(int number) {
    return new CardOrigin(date, shelf, project, OptionalInt.of(number));
  }
}
