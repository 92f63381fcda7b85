package io.github.swatchwright.json;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.Recipe;
import java.util.List;

/**
 * A rung as it was read back.
 *
 * @param keep drops to keep of the pot before
 * @param add whole drops to add; empty for a wash
 * @param letDown drops of the let-down to add besides
 * @param pot what is in the pot then
 * @param lab its predicted colour, relative to D65 unless it was planned for another light
 * @param coverage share of the area that its pass covers, 0 to 1
 * @param visibleShare share of the area that shows it at last, 0 to 1
 */
public record ReadRung(
    int keep,
    List<Recipe.Drops> add,
    int letDown,
    Mix pot,
    Lab lab,
    double coverage,
    double visibleShare) {
  /** Copies the list. */
  public ReadRung {
    add = List.copyOf(add);
  }
}
