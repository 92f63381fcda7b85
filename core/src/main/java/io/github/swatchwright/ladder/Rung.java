package io.github.swatchwright.ladder;

import io.github.swatchwright.coat.Coat;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.PaintAmount;
import io.github.swatchwright.mix.Prediction;
import io.github.swatchwright.mix.Recipe;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * One shade of a ladder.
 *
 * @param keep whole drops of the pot before that this pot starts with; 0 for the first rung, for a
 *     recipe of its own and for a wash
 * @param add whole drops to add to them; for the first rung, what to start with. Empty for a wash
 * @param letDown drops of the ladder's let-down to add besides
 * @param pot what is in the pot then, in drops that need not be whole; for a wash, its paint
 * @param wash the translucent coat when the rung is one
 * @param prediction its colour: at full hiding, or of a wash over the rung before
 * @param step ΔE00 from the rung before; empty for the first
 * @param coverage share of the area that its pass covers, 0 to 1
 * @param visibleShare share of the area that shows it once all passes are done, 0 to 1
 * @param oneDrop the largest ΔE00 that one drop more or less of what is kept or added makes; 0 for
 *     a wash
 * @param amount paint that its pass takes, and thinner in it
 * @param spare drops of the pot that neither the pass nor the next pot takes: set aside
 */
public record Rung(
    int keep,
    List<Recipe.Drops> add,
    int letDown,
    Mix pot,
    Optional<Coat> wash,
    Prediction prediction,
    OptionalDouble step,
    double coverage,
    double visibleShare,
    double oneDrop,
    PaintAmount amount,
    double spare) {
  /** Copies the list. */
  public Rung {
    add = List.copyOf(add);
  }

  /** It as a coat: the wash, or one coat of the pot over what its pass covers. */
  public Coat coat() {
    return wash.orElseGet(() -> new Coat(pot, 1, 0, coverage));
  }

  /** Drops of the pot that its pass takes, as far as they reach the model. */
  public double dropsNeeded() {
    return amount.paintMillilitres() * potDrops() / potMillilitres();
  }

  /** Volume of the pot, ml. */
  public double potMillilitres() {
    return pot.parts().stream().mapToDouble(Mix.Part::millilitres).sum();
  }

  /** Drops in the pot. */
  public double potDrops() {
    return pot.parts().stream().mapToDouble(Mix.Part::drops).sum();
  }

  /** What is set aside of the pot, in tenths of a drop, as {@code --use-pot} takes it. */
  public String spareText() {
    double share = spare / potDrops();
    return pot.parts().stream()
        .map(part -> part.paint().name() + ":" + tenths(share * part.drops()))
        .collect(Collectors.joining(", "));
  }

  private static String tenths(double drops) {
    return BigDecimal.valueOf(Math.max(1, Math.round(10 * drops)), 1)
        .stripTrailingZeros()
        .toPlainString();
  }
}
