package io.github.swatchwright.sheet;

import io.github.swatchwright.colour.Lab;
import java.util.List;
import java.util.Optional;

/**
 * What a photo says of a field.
 *
 * @param field the field
 * @param read what was read; empty when the field is blank or can't be read, which {@code doubts}
 *     explains
 * @param leftOut the share of the stroke that was left out: gaps, streaks, glare, shadow; 0 to 1
 * @param doubts what a painter should know, each a clause
 */
public record FieldReading(
    SheetField field, Optional<Read> read, double leftOut, List<String> doubts) {

  /** Copies the list. */
  public FieldReading {
    doubts = List.copyOf(doubts);
  }

  /**
   * A stroke, colours relative to D65.
   *
   * @param overBlack its colour over the printed black
   * @param overPaper its colour over the paper
   * @param black the printed black, bare
   * @param paper the paper, bare
   * @param drawdown what follows for full hiding
   * @param error sd of L*, a* and b* of the colours over black and over paper
   * @param masstoneError sd of L*, a* and b* of the colour at full hiding
   * @param interval the ΔE00 about {@code overPaper} that holds its true colour with 80 %
   */
  public record Read(
      Lab overBlack,
      Lab overPaper,
      Lab black,
      Lab paper,
      Drawdown drawdown,
      double error,
      double masstoneError,
      double interval) {}
}
