package io.github.swatchwright.match;

import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.paint.Paint;
import java.util.List;

/**
 * A paint that a shelf could be given, and how near the shelf comes to each target with it.
 *
 * @param paint the paint
 * @param nearest the nearest recipe of the shelf and the paint for each target, in their order
 */
public record Addition(Paint paint, List<Nearest> nearest) {

  /**
   * A recipe and how far it is from its target.
   *
   * @param recipe whole drops
   * @param deltaE00 difference of its predicted colour from the target
   */
  public record Nearest(Recipe recipe, double deltaE00) {}

  /** Copies the list. */
  public Addition {
    nearest = List.copyOf(nearest);
  }

  /** Mean ΔE00 of the targets from their nearest recipes: the least is best. */
  public double meanDeltaE00() {
    return nearest.stream().mapToDouble(Nearest::deltaE00).average().orElse(0);
  }

  /** How many of the targets are within reach, that is nearer than {@value Reach#LIMIT}. */
  public int withinReach() {
    return (int) nearest.stream().filter(one -> one.deltaE00() <= Reach.LIMIT).count();
  }
}
