package io.github.swatchwright.match;

import io.github.swatchwright.mix.ColourSpread;
import io.github.swatchwright.mix.LeastExpected;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.search.Candidate;
import io.github.swatchwright.search.SearchSpace;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The recipes that were weighed for one request. Of those that a search finds, it leaves out the
 * ones that can't be shown any more: a bound of what may be expected of them is worse than the last
 * of the sets of ingredients that are shown. For one thread.
 */
final class Contest {
  /** The nearest recipes are weighed first: they tell which others are beaten at once. */
  private static final int HEAD = 60;

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

  /** Weighs the nearest recipe of each set of ingredients, until as many as are shown. */
  void enterNearest(SearchSpace space, List<Candidate> ascending) {
    Set<Set<String>> seen = new HashSet<>();
    for (Candidate candidate : ascending) {
      if (seen.size() < sets && seen.add(candidate.names(space))) {
        entered++;
        weigh(candidate.recipe(space));
      }
    }
  }

  /**
   * Weighs recipes that may still be shown when nothing but the colour counts, and one of each set.
   *
   * @param ascending by their ΔE00
   * @param least the bound, of the space's paints
   */
  void enter(SearchSpace space, List<Candidate> ascending, LeastExpected least) {
    if (ascending.isEmpty()) {
      return;
    }
    entered += ascending.size();
    // The nearest one says how near the paints come, whatever is to be expected of it.
    weigh(ascending.get(0).recipe(space));
    int head = Math.min(HEAD, ascending.size());
    weighBest(space, ascending.subList(0, head), least);
    weighBest(space, ascending.subList(head, ascending.size()), least);
  }

  /** A candidate that isn't beaten by its prediction alone. */
  private record Hopeful(Candidate candidate, Optional<ColourSpread> cloud, double bound) {}

  /** The most hopeful first, so that few of the others have to be weighed. */
  private void weighBest(SearchSpace space, List<Candidate> candidates, LeastExpected least) {
    List<Hopeful> hopeful = new ArrayList<>();
    for (Candidate candidate : candidates) {
      boolean usesAPot = candidate.usesAPot(space);
      double bound = Ranking.unwished(LeastExpected.ofCentre(candidate.deltaE00()), usesAPot);
      if (usesAPot) {
        hopeful.add(new Hopeful(candidate, Optional.empty(), bound));
      } else if (bound <= limit()) {
        ColourSpread cloud = least.cloud(candidate.ingredients(), candidate.drops());
        double roughly = LeastExpected.roughly(cloud, weighing.lab());
        hopeful.add(new Hopeful(candidate, Optional.of(cloud), roughly));
      }
    }
    hopeful.sort(Comparator.comparingDouble(Hopeful::bound));
    for (Hopeful one : hopeful) {
      if (one.bound > limit()) {
        return;
      }
      double closely =
          one.cloud.map(cloud -> LeastExpected.closely(cloud, weighing.lab())).orElse(one.bound);
      if (closely <= limit(one.candidate.names(space))) {
        weigh(one.candidate.recipe(space));
      }
    }
  }

  /** The score that a further recipe of these ingredients has to beat. */
  private double limit(Set<String> ingredients) {
    return Math.min(limit(), best.getOrDefault(ingredients, Double.POSITIVE_INFINITY));
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
