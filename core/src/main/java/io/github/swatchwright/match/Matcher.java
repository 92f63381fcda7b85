package io.github.swatchwright.match;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.mix.Pot;
import io.github.swatchwright.mix.Progress;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.PaintOptics;
import io.github.swatchwright.paint.ShelfOptics;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Proposes recipes for wanted colours from one shelf under one light. Immutable; use it for any
 * number of targets, from any thread.
 */
public final class Matcher {
  /**
   * At least so many of the nearest recipes of each medium are weighed by what the painter may
   * expect; always enough for as many sets of paints as were asked for.
   */
  private static final int SHORTLIST = 60;

  /** So many times more are weighed when something else than the colour counts. */
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

  /** This matcher with another search. */
  public Matcher withSearch(RecipeSearch other) {
    return new Matcher(optics, light, other);
  }

  /**
   * Proposes recipes for many targets.
   *
   * @param requests what is asked for
   * @param progress is told how far it has come
   * @return a result for each request, in their order
   * @throws IllegalArgumentException as {@link #match} does
   */
  public List<MatchResult> matchAll(List<MatchRequest> requests, Progress progress) {
    List<MatchResult> results = new ArrayList<>();
    for (MatchRequest request : requests) {
      results.add(match(request));
      progress.reached((double) results.size() / requests.size());
    }
    return List.copyOf(results);
  }

  /**
   * Proposes recipes.
   *
   * @throws IllegalArgumentException when a named paint isn't on the shelf, no paint is left to
   *     choose from, or a pot is of another medium than the one asked for
   */
  public MatchResult match(MatchRequest request) {
    MixPredictor predictor = MixPredictor.of(optics, light);
    Choice choice = Choice.of(optics, request);
    Weighing weighing = new Weighing(predictor, request.target(), request.target().labUnder(light));
    Map<String, Recipe> recipes = new LinkedHashMap<>();
    for (Medium medium : choice.media(request.pots())) {
      for (Recipe recipe : nearest(choice.of(medium), medium, request, predictor)) {
        recipes.putIfAbsent(key(recipe), recipe);
      }
    }
    List<RankedRecipe> weighed = recipes.values().stream().map(weighing::weigh).toList();
    List<RankedRecipe> inOrder = Ranking.inOrder(weighed, request.wishes());
    RankedRecipe closest =
        (inOrder.isEmpty() ? weighed : inOrder)
            .stream().min(Comparator.comparingDouble(RankedRecipe::deltaE00)).orElseThrow();
    return new MatchResult(
        weighing.lab(),
        request,
        bestOfEachSet(inOrder, request),
        weighed.size(),
        Reach.of(closest.prediction().lab(), weighing.lab()),
        choice.leftOut());
  }

  /** What tells recipes of one shelf apart; cheaper than to compare all that is known of paints. */
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

  /** The recipes of one medium that are worth weighing. */
  private List<Recipe> nearest(
      List<PaintOptics> paints, Medium medium, MatchRequest request, MixPredictor predictor) {
    Lab target = request.target().labUnder(light);
    int count = Math.max(SHORTLIST, RecipeSearch.RATIOS_PER_SET * request.alternatives());
    int wide = request.wishes().reachBeyondColour() ? WIDER * count : count;
    Spaces spaces = new Spaces(paints, predictor, request);
    List<Pot> pots = request.pots().stream().filter(pot -> pot.medium() == medium).toList();
    List<Recipe> found = new ArrayList<>();
    SearchSpace all = spaces.of(pots, request.mostPaints(), request.mostDrops());
    found.addAll(recipes(search, all, target, wide));
    for (Pot pot : pots) {
      SearchSpace withPot =
          spaces.of(
              List.of(pot), Math.min(MOST_WITH_POT, request.mostPaints()), request.mostDrops());
      found.addAll(recipes(ExhaustiveSearch.holdingTheLast(), withPot, target, count));
    }
    if (request.wishes().prefer(Preference.FEWER_PAINTS)) {
      for (int most = 1; most < request.mostPaints(); most++) {
        found.addAll(recipes(search, spaces.of(pots, most, request.mostDrops()), target, count));
      }
    }
    if (request.wishes().prefer(Preference.FEWER_DROPS)) {
      for (int most = request.mostDrops() / 2; most >= 1; most /= 2) {
        found.addAll(recipes(search, spaces.of(pots, request.mostPaints(), most), target, count));
      }
    }
    return found;
  }

  private static List<Recipe> recipes(
      RecipeSearch search, SearchSpace space, Lab target, int count) {
    return search.nearest(space, target, count).stream()
        .map(candidate -> candidate.recipe(space))
        .toList();
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
  private static List<RankedRecipe> bestOfEachSet(
      List<RankedRecipe> inOrder, MatchRequest request) {
    Map<Set<String>, List<RankedRecipe>> bySet = new LinkedHashMap<>();
    for (RankedRecipe ranked : inOrder) {
      List<RankedRecipe> family =
          bySet.computeIfAbsent(ranked.recipe().names(), names -> new ArrayList<>());
      if (family.size() < request.ratios()) {
        family.add(ranked);
      }
    }
    List<List<RankedRecipe>> families = new ArrayList<>(bySet.values());
    List<List<RankedRecipe>> shown =
        new ArrayList<>(families.subList(0, Math.min(request.alternatives(), families.size())));
    if (shown.stream().noneMatch(Matcher::usesAPot)) {
      families.stream()
          .filter(Matcher::usesAPot)
          .findFirst()
          .ifPresent(family -> shown.set(shown.size() - 1, family));
    }
    return shown.stream().flatMap(List::stream).toList();
  }

  private static boolean usesAPot(List<RankedRecipe> family) {
    return !family.get(0).recipe().pots().isEmpty();
  }
}
