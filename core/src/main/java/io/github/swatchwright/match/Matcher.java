package io.github.swatchwright.match;

import io.github.swatchwright.estimate.PaintOptics;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.mix.Control;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.mix.Pot;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.search.Batch;
import io.github.swatchwright.search.ExhaustiveSearch;
import io.github.swatchwright.search.PrunedSearch;
import io.github.swatchwright.search.RecipeSearch;
import io.github.swatchwright.search.SearchSpace;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * Proposes recipes for wanted colours from one shelf under one light. Immutable; use it for any
 * number of targets, from any thread.
 */
public final class Matcher {
  /**
   * The fewest recipes of each medium that are weighed by what the painter may expect, the nearest
   * ones; more when more sets of paints are asked for.
   */
  private static final int SHORTLIST = 60;

  /** How many times more are weighed when something else than the colour counts. */
  private static final int WIDER = 10;

  /** Pots are tried with every one and every two of the paints. */
  private static final int MOST_WITH_POT = 3;

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
    MixPredictor predictor = MixPredictor.of(optics, light);
    Ingredients ingredients = Ingredients.of(optics, request);
    Weighing weighing = new Weighing(predictor, request.target(), request.target().labUnder(light));
    List<PlannedSearch> planned = new ArrayList<>();
    for (Medium medium : ingredients.media(request.pots())) {
      planned.addAll(planned(ingredients.of(medium), medium, request, predictor));
    }
    SearchSequence searches = new SearchSequence(weighing.lab(), control, planned.size());
    planned.stream()
        .filter(one -> !one.optional)
        .forEach(one -> searches.run(one.search, one.space, one.count));
    planned.stream()
        .filter(one -> one.optional)
        .forEach(one -> searches.runIfTime(one.search, one.space, one.count));
    Map<String, Recipe> recipes = new LinkedHashMap<>();
    searches.recipes().forEach(recipe -> recipes.putIfAbsent(key(recipe), recipe));
    if (recipes.isEmpty()) {
      planned.get(0).space.singles().forEach(recipe -> recipes.putIfAbsent(key(recipe), recipe));
    }
    List<Weighed> weighed = recipes.values().stream().map(weighing::weigh).toList();
    List<Weighed> inOrder = Ranking.inOrder(weighed, request.wishes());
    double nearest = nearest(weighed).deltaE00();
    Weighed closest = nearest(inOrder.isEmpty() ? weighed : inOrder);
    return new MatchResult(
        light.illuminant(),
        weighing.lab(),
        request,
        bestOfEachSet(inOrder, request).stream().map(weighing::shown).toList(),
        nearestBottle(ingredients, weighing),
        weighed.size(),
        Reach.of(closest.prediction().lab(), weighing.lab()),
        searches.complete(),
        searches.gap(nearest),
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
   * One of the searches that answer a request.
   *
   * @param search the algorithm
   * @param space the recipes to choose from
   * @param count how many recipes to find
   * @param optional true when its space is part of another search's, so that it may be skipped when
   *     time is short
   */
  private record PlannedSearch(
      RecipeSearch search, SearchSpace space, int count, boolean optional) {}

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

  /** The searches that find the recipes of one medium which are worth weighing. */
  private List<PlannedSearch> planned(
      List<PaintOptics> paints, Medium medium, MatchRequest request, MixPredictor predictor) {
    int count = Math.max(SHORTLIST, RecipeSearch.RATIOS_PER_SET * request.alternatives());
    int wide = request.wishes().reachBeyondColour() ? WIDER * count : count;
    Spaces spaces = new Spaces(paints, predictor, request);
    List<Pot> pots = request.pots().stream().filter(pot -> pot.medium() == medium).toList();
    int mostPaints = request.mostPaints();
    int mostDrops = request.mostDrops();
    List<PlannedSearch> planned = new ArrayList<>();
    planned.add(new PlannedSearch(search, spaces.of(pots, mostPaints, mostDrops), wide, false));
    for (Pot pot : pots) {
      SearchSpace withPot = spaces.of(List.of(pot), Math.min(MOST_WITH_POT, mostPaints), mostDrops);
      planned.add(new PlannedSearch(ExhaustiveSearch.holdingTheLast(), withPot, count, true));
    }
    if (request.wishes().prefer(Preference.FEWER_PAINTS)) {
      for (int most = 1; most < mostPaints; most++) {
        planned.add(new PlannedSearch(search, spaces.of(pots, most, mostDrops), count, true));
      }
    }
    if (request.wishes().prefer(Preference.FEWER_DROPS)) {
      for (int most = mostDrops / 2; most >= 1; most /= 2) {
        planned.add(new PlannedSearch(search, spaces.of(pots, mostPaints, most), count, true));
      }
    }
    return planned;
  }

  /**
   * What one request searches.
   *
   * @param paints the paints of one medium
   * @param predictor of their mixes
   * @param request what is asked for
   */
  private record Spaces(List<PaintOptics> paints, MixPredictor predictor, MatchRequest request) {
    SearchSpace of(List<Pot> pots, int mostPaints, int mostDrops) {
      return new SearchSpace(
          paints,
          pots.stream().map(pot -> new SearchSpace.Stirred(pot, predictor.constants(pot))).toList(),
          Stream.concat(
                  paints.stream().map(each -> each.paint().dropsLeft()),
                  pots.stream().map(Pot::wholeDrops))
              .toList(),
          predictor.viewing(),
          mostPaints,
          mostDrops);
    }
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
