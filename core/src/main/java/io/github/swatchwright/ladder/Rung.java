package io.github.swatchwright.ladder;

import io.github.swatchwright.coat.Coat;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.PaintAmount;
import io.github.swatchwright.mix.Prediction;
import io.github.swatchwright.mix.Recipe;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One shade of a ladder.
 *
 * @param add whole drops to add to what is left of the pot; for the first rung, what to start with.
 *     Empty for a wash
 * @param pot what is in the pot then, in drops that need not be whole; for a wash, its paint
 * @param wash the translucent coat when the rung is one
 * @param prediction its colour: at full hiding, or of a wash over the rung before
 * @param step ΔE00 from the rung before; empty for the first
 * @param coverage share of the area that its pass covers, 0 to 1
 * @param visibleShare share of the area that shows it once all passes are done, 0 to 1
 * @param oneDrop the largest ΔE00 that one drop more or less of what is added makes; 0 for a wash
 * @param amount paint that its pass takes, and thinner in it
 */
public record Rung(
    List<Recipe.Drops> add,
    Mix pot,
    Optional<Coat> wash,
    Prediction prediction,
    OptionalDouble step,
    double coverage,
    double visibleShare,
    double oneDrop,
    PaintAmount amount) {
  /** Copies the list. */
  public Rung {
    add = List.copyOf(add);
  }

  /** Volume of the pot, ml. */
  public double potMillilitres() {
    return pot.parts().stream().mapToDouble(Mix.Part::millilitres).sum();
  }

  /** Drops in the pot. */
  public double potDrops() {
    return pot.parts().stream().mapToDouble(Mix.Part::drops).sum();
  }
}
