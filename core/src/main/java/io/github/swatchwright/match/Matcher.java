package io.github.swatchwright.match;

import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.mix.Control;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.search.Batch;
import io.github.swatchwright.search.PrunedSearch;
import io.github.swatchwright.search.RecipeSearch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/**
 * Proposes recipes for wanted colours from one shelf under one light. Immutable; use it for any
 * number of targets, from any thread.
 */
public final class Matcher {
  private final ShelfOptics optics;
  private final TristimulusWeights light;
  private final RecipeSearch search;

  private Matcher(ShelfOptics optics, TristimulusWeights light, RecipeSearch search) {
    this.optics = optics;
    this.light = light;
    this.search = search;
  }

  /** A matcher with the fast exact search, which remembers what it learned of the shelf. */
  public static Matcher of(ShelfOptics optics, TristimulusWeights light) {
    return new Matcher(optics, light, new PrunedSearch());
  }

  /**
   * A matcher like this one, which has learned nothing yet and remembers less or more: for services
   * that keep a matcher for each of many shelves.
   *
   * @param mostBytes what it may hold of the questions before when another kind comes, at least 0;
   *     48 MiB unless stated. What a single kind needs it takes: {@code core/docs/cookbook.md} has
   *     figures
   */
  public Matcher withMemory(long mostBytes) {
    return new Matcher(optics, light, new PrunedSearch(mostBytes));
  }

  /**
   * Makes ready for the first question: learns the shelf for {@link MatchRequest#ofMoving} and
   * {@link MatchRequest#of(Swatch)}, and gives the virtual machine enough of that work to compile
   * it. Call it beside the start of a program, on a thread of its own; other threads may use the
   * matcher meanwhile.
   *
   * @param control threads, time and cancelling; stopped early, the matcher is just less ready
   * @return this matcher
   */
  public Matcher warmed(Control control) {
    matchAll(WarmingUp.requests(), control);
    return this;
  }

  /**
   * Proposes recipes for many targets; what is learned of the shelf for one serves the others.
   *
   * @param requests what is asked for
   * @param control threads, time and cancelling of all of them together; each thread works on a
   *     request of its own
   * @return a result for each request, in their order; when the control stops the work, for those
   *     alone that were begun until then ({@link MatchResult#request} says which)
   * @throws IllegalArgumentException as {@link #match(MatchRequest)} does
   */
  public List<MatchResult> matchAll(List<MatchRequest> requests, Control control) {
    return matchAll(requests, control, result -> {});
  }

  /**
   * The same, handing out each result as soon as it is there.
   *
   * @param found receives the results in the order in which they are finished, one at a time, from
   *     any of the threads
   */
  public List<MatchResult> matchAll(
      List<MatchRequest> requests, Control control, Consumer<MatchResult> found) {
    List<MatchRequest> all = List.copyOf(requests);
    return Batch.run(all.size(), (target, own) -> match(all.get(target), own), control, found);
  }

  /**
   * Proposes recipes.
   *
   * @throws IllegalArgumentException when a named paint isn't on the shelf, no paint is left to
   *     choose from, or a pot is of another medium than the one asked for
   */
  public MatchResult match(MatchRequest request) {
    return match(request, Control.PLAIN);
  }

  /**
   * Proposes recipes, stopped and watched as the control says.
   *
   * @throws IllegalArgumentException as {@link #match(MatchRequest)} does
   */
  public MatchResult match(MatchRequest request, Control control) {
    return match(request, control, false);
  }

  /**
   * The sets of ingredients whose predictions come nearest, and of each the nearest recipe, for a
   * caller who judges recipes by something else, such as what they look like under coats: how sure
   * a recipe is by itself counts less there. Wishes and further ratios don't count.
   *
   * @throws IllegalArgumentException as {@link #match(MatchRequest)} does
   */
  public MatchResult matchNearest(MatchRequest request) {
    return match(request, Control.PLAIN, true);
  }

  private MatchResult match(MatchRequest request, Control control, boolean nearestAlone) {
    MixPredictor predictor = MixPredictor.of(optics, light);
    Ingredients ingredients = Ingredients.of(optics, request);
    Weighing weighing = new Weighing(predictor, request.target(), request.target().labUnder(light));
    RequestSearch found =
        new RequestSearch(search, predictor, ingredients, request, weighing, control);
    found.run(nearestAlone);
    List<Weighed> weighed = found.weighed();
    List<Weighed> inOrder = Ranking.inOrder(weighed, request.wishes());
    Weighed closest = nearest(inOrder.isEmpty() ? weighed : inOrder);
    return new MatchResult(
        light.illuminant(),
        weighing.lab(),
        request,
        bestOfEachSet(inOrder, request).stream().map(weighing::shown).toList(),
        nearestBottle(ingredients, weighing),
        found.entered(),
        found.isBestOfAll(),
        Reach.of(closest.prediction().lab(), weighing.lab()),
        found.complete(),
        found.gap(nearest(weighed).deltaE00()),
        ingredients.leftOut());
  }

  private static Optional<RankedRecipe> nearestBottle(Ingredients ingredients, Weighing weighing) {
    return ingredients.paints().stream()
        .min(Comparator.comparingDouble(weighing::deltaE00))
        .map(each -> weighing.weigh(new Recipe(List.of(new Recipe.Drops(each.paint(), 1)))))
        .map(weighing::shown);
  }

  private static Weighed nearest(List<Weighed> recipes) {
    return recipes.stream().min(Comparator.comparingDouble(Weighed::deltaE00)).orElseThrow();
  }

  /**
   * The best recipes of the best sets of ingredients. When none of them uses a pot and there is
   * one, the best set with it takes the last place.
   */
  private static List<Weighed> bestOfEachSet(List<Weighed> inOrder, MatchRequest request) {
    Map<Set<String>, List<Weighed>> bySet = new LinkedHashMap<>();
    for (Weighed ranked : inOrder) {
      List<Weighed> family =
          bySet.computeIfAbsent(ranked.recipe().names(), names -> new ArrayList<>());
      if (family.size() < request.ratios()) {
        family.add(ranked);
      }
    }
    List<List<Weighed>> families = new ArrayList<>(bySet.values());
    List<List<Weighed>> shown =
        new ArrayList<>(families.subList(0, Math.min(request.alternatives(), families.size())));
    if (shown.stream().noneMatch(Matcher::usesAPot)) {
      families.stream()
          .filter(Matcher::usesAPot)
          .findFirst()
          .ifPresent(family -> shown.set(shown.size() - 1, family));
    }
    return shown.stream().flatMap(List::stream).toList();
  }

  private static boolean usesAPot(List<Weighed> family) {
    return !family.get(0).recipe().pots().isEmpty();
  }
}
