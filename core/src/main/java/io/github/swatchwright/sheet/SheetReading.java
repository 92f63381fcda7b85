package io.github.swatchwright.sheet;

import io.github.swatchwright.colour.Lab;
import java.util.List;

/**
 * What a photo says of a whole page.
 *
 * @param layout the page
 * @param reference what its colours were corrected by, in words
 * @param paper the bare paper's colour, relative to D65
 * @param fields its fields, in the layout's order
 * @param doubts what concerns the whole photo, each a clause
 */
public record SheetReading(
    SheetLayout layout,
    String reference,
    Lab paper,
    List<FieldReading> fields,
    List<String> doubts) {

  /** Copies the lists. */
  public SheetReading {
    fields = List.copyOf(fields);
    doubts = List.copyOf(doubts);
  }
}
