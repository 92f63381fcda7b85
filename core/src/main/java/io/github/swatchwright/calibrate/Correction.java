package io.github.swatchwright.calibrate;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.spectrum.Illuminant;
import java.util.List;
import java.util.Optional;

/**
 * What to add to a pot that came out wrong.
 *
 * @param light the light that colours are seen under
 * @param now how far the measured pot is from the target, ΔE00
 * @param additions what to add, one paint after the other; empty when nothing helps, or nothing is
 *     needed
 * @param predicted the colour to be expected in the end
 * @param deltaE00 how far that is from the target
 * @param expectedDeltaE00 how far from the target to expect it, ΔE00, with all errors and the
 *     scatter of drops
 * @param fresh a new pot of the same amount, where that was worth a thought: what can be added
 *     doesn't bring this one near the target, or more than doubles it
 * @param startAfresh whether the new pot is the better way: where this one can be brought near, it
 *     takes fewer drops and should come as near; where not, it comes nearer by 1 at least
 */
public record Correction(
    Illuminant light,
    double now,
    List<Addition> additions,
    Lab predicted,
    double deltaE00,
    double expectedDeltaE00,
    Optional<FreshPot> fresh,
    boolean startAfresh) {

  /** Copies the list. */
  public Correction {
    additions = List.copyOf(additions);
  }

  /** The number of drops to add in all. */
  public int drops() {
    return additions.stream().mapToInt(addition -> addition.drops().count()).sum();
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
