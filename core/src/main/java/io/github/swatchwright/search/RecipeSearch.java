package io.github.swatchwright.search;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.mix.Control;
import java.util.List;

/**
 * Finds the recipes nearest to a colour, in reduced ratios. Implementations are exact: they differ
 * in speed alone, and give the same list in the same order.
 */
@FunctionalInterface
public interface RecipeSearch {

  /**
   * Finds recipes, stopped and watched as the control says. A search that can't be stopped runs to
   * its end.
   *
   * @param space the recipes to choose from
   * @param sought the colour, how many recipes, and how far they may be
   */
  SearchOutcome search(SearchSpace space, Sought sought, Control control);

  /**
   * The nearest recipes.
   *
   * @param space the recipes to choose from
   * @param target the wanted colour, relative to the white of the space's light
   * @param count the most recipes to return, at least 1
   * @return candidates in ascending order
   */
  default List<Candidate> nearest(SearchSpace space, Lab target, int count) {
    return search(space, new Sought(target, count), Control.PLAIN).candidates();
  }
}
