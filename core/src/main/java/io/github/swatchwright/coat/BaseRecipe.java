package io.github.swatchwright.coat;

import io.github.swatchwright.match.RankedRecipe;
import io.github.swatchwright.mix.Prediction;
import java.util.List;

/**
 * Paint for a base, and where it ends under the coats.
 *
 * @param base the recipe, ranked by the base's own colour
 * @param end what the coats make of it
 * @param deltaE00 of that from the wanted end, if all goes well
 * @param expectedDeltaE00 of that from the wanted end, as is to be expected
 * @param order what the media of the coats do to this base and to each other
 */
public record BaseRecipe(
    RankedRecipe base,
    Prediction end,
    double deltaE00,
    double expectedDeltaE00,
    List<OrderNote> order) {

  /** Copies the list. */
  public BaseRecipe {
    order = List.copyOf(order);
  }

  /** The recipe as a base, painted until it hides. */
  public Base.OfMix toBase() {
    return new Base.OfMix(base.recipe().toMix());
  }

  /** How many pairs of layers clash, at least 0: fewer with a base of another medium, perhaps. */
  public int clashes() {
    return (int) order.stream().filter(note -> note.verdict() == SolventVerdict.CLASH).count();
  }
}
