package io.github.swatchwright.search;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.mix.Control;
import java.util.List;

/**
 * Finds the recipes nearest to a colour. Implementations are exact: they differ in speed alone, and
 * give the same list in the same order.
 */
public interface RecipeSearch {

  /** The most ratios of one set of paints in a result; the others would only crowd it. */
  int RATIOS_PER_SET = 3;

  /**
   * The nearest recipes in reduced ratios, at most {@value #RATIOS_PER_SET} of one set of paints.
   *
   * @param space the recipes to choose from
   * @param target the wanted colour, relative to the white of the space's light
   * @param count the most recipes to return, at least 1
   * @return candidates in ascending order
   */
  List<Candidate> nearest(SearchSpace space, Lab target, int count);

  /**
   * The same, stopped and watched as the control says. A search that can't be stopped runs to its
   * end.
   */
  default SearchOutcome search(SearchSpace space, Lab target, int count, Control control) {
    List<Candidate> found = nearest(space, target, count);
    control.progress().reached(1);
    return new SearchOutcome(found, true, found.isEmpty() ? 0 : found.get(0).deltaE00());
  }
}
