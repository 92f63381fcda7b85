package io.github.swatchwright.match;

import io.github.swatchwright.mix.LeastExpected;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.search.Candidate;
import io.github.swatchwright.search.SearchSpace;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The recipes that were weighed for one request. Of those that a search finds, it leaves out the
 * ones that can't be shown any more: a bound of what may be expected of them is worse than the last
 * of the sets of ingredients that are shown. For one thread.
 */
final class Contest {
  private final Weighing weighing;
  private final int sets;
  private final Map<String, Weighed> weighed = new LinkedHashMap<>();

  /** The best scores of the best sets of ingredients, as many as are shown. */
  private final Map<Set<String>, Double> best = new HashMap<>();

  private int entered;

  /**
   * A contest that nobody has entered.
   *
   * @param sets how many sets of ingredients are shown
   */
  Contest(Weighing weighing, int sets) {
    this.weighing = weighing;
    this.sets = sets;
  }

  /** Weighs recipes of which nothing is known beforehand. */
  void enter(SearchSpace space, List<Candidate> candidates) {
    entered += candidates.size();
    candidates.forEach(candidate -> weigh(candidate.recipe(space)));
  }

  /**
   * Weighs recipes that may still be shown when nothing but the colour counts.
   *
   * @param ascending by their ΔE00
   * @param least the bound, of the space's paints
   */
  void enter(SearchSpace space, List<Candidate> ascending, LeastExpected least) {
    entered += ascending.size();
    for (int i = 0; i < ascending.size(); i++) {
      Candidate candidate = ascending.get(i);
      // The nearest one says how near the paints come, whatever is to be expected of it.
      if (i == 0 || !isBeaten(candidate, candidate.usesAPot(space), least)) {
        weigh(candidate.recipe(space));
      }
    }
  }

  private boolean isBeaten(Candidate candidate, boolean usesAPot, LeastExpected least) {
    double limit = limit();
    double ofCentre = LeastExpected.ofCentre(candidate.deltaE00());
    if (usesAPot || ofCentre > limit) {
      return Ranking.unwished(ofCentre, usesAPot) > limit;
    }
    return least.exceeds(limit, candidate.ingredients(), candidate.drops(), weighing.lab());
  }

  void weigh(Recipe recipe) {
    String key = key(recipe);
    if (!weighed.containsKey(key)) {
      Weighed one = weighing.weigh(recipe);
      weighed.put(key, one);
      count(recipe.names(), Ranking.unwished(one.expectedDeltaE00(), !recipe.pots().isEmpty()));
    }
  }

  private void count(Set<String> ingredients, double score) {
    best.merge(ingredients, score, Math::min);
    if (best.size() > sets) {
      best.remove(Collections.max(best.entrySet(), Map.Entry.comparingByValue()).getKey());
    }
  }

  /** The score that another set of ingredients has to beat; infinite while any would be shown. */
  double limit() {
    return best.size() < sets ? Double.POSITIVE_INFINITY : Collections.max(best.values());
  }

  /**
   * The ΔE00 beyond which no prediction can be of a recipe that will be shown.
   *
   * @param pots whether pots may be used
   */
  double reach(boolean pots) {
    return LeastExpected.reach(limit() + (pots ? Ranking.POT : 0));
  }

  /** The best sets of ingredients so far. */
  Collection<Set<String>> bestSets() {
    return List.copyOf(best.keySet());
  }

  /** All that were weighed. */
  List<Weighed> weighed() {
    return new ArrayList<>(weighed.values());
  }

  /** How many recipes were weighed, or left out by their bound. */
  int entered() {
    return entered;
  }

  /**
   * A text that is the same for equal recipes; cheaper to compare than everything known of paints.
   */
  private static String key(Recipe recipe) {
    StringBuilder key = new StringBuilder();
    recipe
        .drops()
        .forEach(
            some -> key.append(some.paint().name()).append(':').append(some.count()).append('\n'));
    recipe
        .pots()
        .forEach(
            some -> key.append(some.pot().name()).append(':').append(some.count()).append('\n'));
    return key.toString();
  }
}
