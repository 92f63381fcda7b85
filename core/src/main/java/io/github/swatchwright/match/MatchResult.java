package io.github.swatchwright.match;

import io.github.swatchwright.colour.Lab;
import java.util.List;

/**
 * What a shelf can do for a target.
 *
 * @param target the wanted colour under the chosen light
 * @param recipes proposals, best first by expected ΔE00; no two use the same set of paints
 * @param reach whether the target is within reach, and what is missing if not
 * @param leftOut paints that can't be computed with, each with its reason
 */
public record MatchResult(
    Lab target, List<RankedRecipe> recipes, Reach reach, List<String> leftOut) {
  /** Copies the lists. */
  public MatchResult {
    recipes = List.copyOf(recipes);
    leftOut = List.copyOf(leftOut);
  }
}
