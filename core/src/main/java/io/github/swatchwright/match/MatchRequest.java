package io.github.swatchwright.match;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Swatch;
import java.util.Optional;
import java.util.Set;

/**
 * What is asked for.
 *
 * @param target the wanted colour
 * @param mostPaints the most paints in a recipe, 1 to 4
 * @param mostDrops the most drops in a recipe, 1 to 40
 * @param alternatives how many recipes to propose, 1 to 50; no two use the same set of paints
 * @param only the names of the paints to choose from; empty for the whole shelf
 * @param without the names of paints to leave out
 * @param medium the medium to stay in; empty for any, though one pot always holds one
 */
public record MatchRequest(
    Swatch target,
    int mostPaints,
    int mostDrops,
    int alternatives,
    Set<String> only,
    Set<String> without,
    Optional<Medium> medium) {

  /** The largest number of drops that may be asked for. */
  public static final int LARGEST_DROPS = 40;

  /** The largest number of recipes that may be asked for. */
  public static final int LARGEST_ALTERNATIVES = 50;

  /** Copies the sets; refuses numbers out of range. */
  public MatchRequest {
    Require.within("paints", mostPaints, 1, Recipe.MOST_PAINTS);
    Require.within("max-drops", mostDrops, 1, LARGEST_DROPS);
    Require.within("alternatives", alternatives, 1, LARGEST_ALTERNATIVES);
    only = Set.copyOf(only);
    without = Set.copyOf(without);
  }

  /** Up to three paints in up to twelve drops, five recipes, from the whole shelf. */
  public static MatchRequest of(Swatch target) {
    return new MatchRequest(target, 3, 12, 5, Set.of(), Set.of(), Optional.empty());
  }

  /** The same with another most number of paints, 1 to 4. */
  public MatchRequest withMostPaints(int paints) {
    return new MatchRequest(target, paints, mostDrops, alternatives, only, without, medium);
  }

  /** The same with another most number of drops, 1 to 40. */
  public MatchRequest withMostDrops(int drops) {
    return new MatchRequest(target, mostPaints, drops, alternatives, only, without, medium);
  }

  /** The same with another number of recipes, 1 to 50. */
  public MatchRequest withAlternatives(int recipes) {
    return new MatchRequest(target, mostPaints, mostDrops, recipes, only, without, medium);
  }

  /** The same from the named paints alone. */
  public MatchRequest withOnly(Set<String> names) {
    return new MatchRequest(target, mostPaints, mostDrops, alternatives, names, without, medium);
  }

  /** The same leaving out the named paints. */
  public MatchRequest withWithout(Set<String> names) {
    return new MatchRequest(target, mostPaints, mostDrops, alternatives, only, names, medium);
  }

  /** The same within one medium. */
  public MatchRequest withMedium(Medium wanted) {
    return new MatchRequest(
        target, mostPaints, mostDrops, alternatives, only, without, Optional.of(wanted));
  }
}
