package io.github.swatchwright.search;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.colour.Lab;
import java.util.Objects;

/**
 * What a search looks for: the recipes nearest to a colour.
 *
 * @param target the wanted colour, relative to the white of the space's light
 * @param count the most recipes to find, at least 1
 * @param upTo the largest ΔE00 that they may have, at least 0; infinite for any
 */
public record Sought(Lab target, int count, double upTo) {

  /** Refuses a count below 1 and a negative ΔE00. */
  public Sought {
    Objects.requireNonNull(target, "target");
    Require.within("count", count, 1, Integer.MAX_VALUE);
    Require.within("upTo", upTo, 0, Double.POSITIVE_INFINITY);
  }

  /** However far they are. */
  public Sought(Lab target, int count) {
    this(target, count, Double.POSITIVE_INFINITY);
  }
}
