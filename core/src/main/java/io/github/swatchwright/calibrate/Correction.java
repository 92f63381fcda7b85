package io.github.swatchwright.calibrate;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.mix.Recipe;
import java.util.List;

/**
 * What to add to a pot that came out wrong.
 *
 * @param now how far the measured pot is from the target, ΔE00
 * @param additions what to add, one paint after the other; empty when nothing helps, or nothing is
 *     needed
 * @param predicted the colour to be expected in the end
 * @param deltaE00 how far that is from the target
 * @param startAfresh whether a new pot is the better way: what can be added doesn't bring this one
 *     near the target, or more than doubles it
 */
public record Correction(
    double now, List<Addition> additions, Lab predicted, double deltaE00, boolean startAfresh) {

  /** Copies the list. */
  public Correction {
    additions = List.copyOf(additions);
  }

  /**
   * One paint to add.
   *
   * @param drops whole drops
   * @param predicted the colour to be expected after it
   * @param deltaE00 how far that is from the target
   */
  public record Addition(Recipe.Drops drops, Lab predicted, double deltaE00) {}
}
