package io.github.swatchwright.json;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.mix.Mix;
import java.util.Optional;

/**
 * A mix that a notebook's entry holds.
 *
 * @param kind what it is
 * @param number which of them, from 1; a plan's and a stack's are numbered as they were shown
 * @param mix what is in it
 * @param lab the colour that was predicted then, of a coat over what was below it; empty when the
 *     entry doesn't tell
 * @param thinner volumes of thinner to one of the mix, at least 0
 */
public record FoundMix(Kind kind, int number, Mix mix, Optional<Lab> lab, double thinner) {
  /** What such a mix is. */
  public enum Kind {
    /** A proposed recipe: one of several. */
    RECIPE("recipe"),
    /** A shade of a ladder. */
    RUNG("rung"),
    /** A mix that was predicted. */
    PREDICTION("mix"),
    /** A pot after what was added to it. */
    CORRECTED_POT("corrected pot"),
    /** A coat of a stack, or a step of a plan. */
    STEP("step");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** The word for it, such as {@code corrected pot}. */
    public String word() {
      return word;
    }

    /** Whether all of an entry belong together, and not one of them is chosen. */
    public boolean allBelongTogether() {
      return this == RUNG || this == STEP;
    }
  }
}
