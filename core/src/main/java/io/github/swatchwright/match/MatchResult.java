package io.github.swatchwright.match;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.spectrum.Illuminant;
import java.util.List;
import java.util.Optional;

/**
 * The recipes that a shelf offers for a target, and what is missing when none is near.
 *
 * @param light the light that colours are seen under
 * @param target the wanted colour under that light
 * @param request what was asked for
 * @param recipes proposals; sets of ingredients in the order of their best scores, and each set's
 *     recipes together
 * @param nearestBottle the single bottle that comes nearest as it is; empty when only pots are used
 * @param weighed how many recipes were weighed to choose them, or left out since they can't be
 *     among them
 * @param bestOfAll whether no other set of these paints has a recipe within these drops that would
 *     rank among those shown; false when only the nearest recipes were weighed, as on large shelves
 *     and when something else than the colour counts, and when the search was stopped
 * @param reach whether the target is within reach, and what is missing if not
 * @param complete whether the search got to its end; false when it was stopped
 * @param provenGap how much nearer than the nearest recipe another could be that wasn't found; 0
 *     when complete
 * @param leftOut paints that aren't used, each with its reason
 */
public record MatchResult(
    Illuminant light,
    Lab target,
    MatchRequest request,
    List<RankedRecipe> recipes,
    Optional<RankedRecipe> nearestBottle,
    int weighed,
    boolean bestOfAll,
    Reach reach,
    boolean complete,
    double provenGap,
    List<LeftOutPaint> leftOut) {
  /** Copies the lists. */
  public MatchResult {
    recipes = List.copyOf(recipes);
    leftOut = List.copyOf(leftOut);
  }
}
