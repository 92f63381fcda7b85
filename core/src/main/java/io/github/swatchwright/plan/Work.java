package io.github.swatchwright.plan;

import io.github.swatchwright.coat.Coat;
import io.github.swatchwright.ladder.Ladder;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.PaintAmount;
import java.util.List;
import java.util.Optional;

/**
 * What is painted in a step.
 *
 * @param coats what lies there after it, lowest first; several for a ladder, none when the step is
 *     left out
 * @param pot what to mix for it, in whole drops; empty for a ladder
 * @param ladder the graded shades, when it is a ladder
 * @param amount paint and thinner in all
 * @param worn share of it that is worn off again, 0 to below 1
 */
public record Work(
    List<Coat> coats, Optional<Mix> pot, Optional<Ladder> ladder, PaintAmount amount, double worn) {
  /** Copies the list. */
  public Work {
    coats = List.copyOf(coats);
  }

  /** How many times the brush or airbrush goes over the area: coats, or the passes of a ladder. */
  public int passes() {
    return ladder.isPresent()
        ? coats.size()
        : (int) Math.ceil(coats.stream().mapToDouble(Coat::coats).sum());
  }
}
