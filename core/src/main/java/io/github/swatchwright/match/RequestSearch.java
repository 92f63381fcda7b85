package io.github.swatchwright.match;

import io.github.swatchwright.estimate.PaintOptics;
import io.github.swatchwright.mix.Control;
import io.github.swatchwright.mix.LeastExpected;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.mix.Pot;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.search.Candidate;
import io.github.swatchwright.search.ExhaustiveSearch;
import io.github.swatchwright.search.RecipeSearch;
import io.github.swatchwright.search.SearchSpace;
import io.github.swatchwright.search.Sought;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The searches that answer one request, medium by medium, and the recipes that they bring to be
 * weighed. For one thread.
 *
 * <p>Recipes are ranked by the ΔE00 to be expected, but found by the ΔE00 of their prediction. With
 * few recipes, the nearest ones say how good a recipe must be to be shown, and a second search
 * brings all that can be: the list is then the best of all. With many, the nearest {@value
 * #NEAREST} are looked at. When something else than the colour counts, the nearest {@value #WIDE}
 * are.
 */
final class RequestSearch {
  /** Enough to learn how good a recipe must be, and often all that can be shown. */
  private static final int SHORTLIST = 600;

  /** So many are weighed where no bound tells which ones needn't be. */
  private static final int DEAR = 60;

  /** Up to here, all that can be shown are looked at: some 40 paints, three of them in 12 drops. */
  private static final double FEW_RECIPES = 2.5e6;

  /** The most recipes of a second search; nearly equal paints make ever more of them. */
  private static final int MOST = 2000;

  private static final int NEAREST = 1000;
  private static final int WIDE = 1000;

  /** When something else than the colour counts, so many are weighed for each set that is shown. */
  private static final int WIDE_PER_SET = 30;

  /** Pots are tried with every one and every two of the paints. */
  private static final int MOST_WITH_POT = 3;

  private final RecipeSearch search;
  private final MixPredictor predictor;
  private final Ingredients ingredients;
  private final MatchRequest request;
  private final Weighing weighing;
  private final Contest contest;
  private final SearchSequence searches;
  private final List<SearchSpace> spaces = new ArrayList<>();
  private final List<Further> further = new ArrayList<>();

  /** All recipes up to this ΔE00 were looked at. */
  private double seenUpTo = Double.POSITIVE_INFINITY;

  /**
   * A search beside the main ones. Its space is part of another's, so that it may be left out when
   * time is short.
   *
   * @param search the algorithm
   * @param space the recipes to choose from
   */
  private record Further(RecipeSearch search, SearchSpace space) {}

  RequestSearch(
      RecipeSearch search,
      MixPredictor predictor,
      Ingredients ingredients,
      MatchRequest request,
      Weighing weighing,
      Control control) {
    this.search = search;
    this.predictor = predictor;
    this.ingredients = ingredients;
    this.request = request;
    this.weighing = weighing;
    contest = new Contest(weighing, request.alternatives());
    ingredients.media(request.pots()).forEach(this::plan);
    searches = new SearchSequence(control, 2 * spaces.size() + further.size());
  }

  private void plan(Medium medium) {
    List<PaintOptics> paints = ingredients.of(medium);
    List<Pot> pots = request.pots().stream().filter(pot -> pot.medium() == medium).toList();
    int mostPaints = request.mostPaints();
    int mostDrops = request.mostDrops();
    spaces.add(space(paints, pots, mostPaints, mostDrops));
    for (Pot pot : pots) {
      SearchSpace withPot =
          space(paints, List.of(pot), Math.min(MOST_WITH_POT, mostPaints), mostDrops);
      further.add(new Further(ExhaustiveSearch.holdingTheLast(), withPot));
    }
    if (request.wishes().prefer(Preference.FEWER_PAINTS)) {
      for (int most = 1; most < mostPaints; most++) {
        further.add(new Further(search, space(paints, pots, most, mostDrops)));
      }
    }
    if (request.wishes().prefer(Preference.FEWER_DROPS)) {
      for (int most = mostDrops / 2; most >= 1; most /= 2) {
        further.add(new Further(search, space(paints, pots, mostPaints, most)));
      }
    }
  }

  private SearchSpace space(
      List<PaintOptics> paints, List<Pot> pots, int mostPaints, int mostDrops) {
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

  /**
   * Runs all searches.
   *
   * @param nearestAlone whether only the nearest recipe of each set of ingredients is weighed
   */
  void run(boolean nearestAlone) {
    boolean byColourAlone = !request.wishes().reachBeyondColour();
    for (SearchSpace space : spaces) {
      Optional<LeastExpected> least =
          byColourAlone ? predictor.leastExpected(space.paints()) : Optional.empty();
      if (nearestAlone) {
        contest.enterNearest(space, nearest(space, NEAREST));
        searches.skip();
        seenUpTo = 0;
      } else if (least.isPresent()) {
        enterBest(space, least.get());
      } else {
        int wide = Math.max(WIDE, WIDE_PER_SET * request.alternatives());
        contest.enter(space, nearest(space, byColourAlone ? DEAR : wide));
        searches.skip();
        seenUpTo = 0;
      }
    }
    int count = Math.max(DEAR, WIDE_PER_SET * request.alternatives());
    for (Further one : further) {
      Sought sought = new Sought(weighing.lab(), count);
      contest.enter(one.space, searches.runIfTime(one.search, one.space, sought));
    }
    if (contest.weighed().isEmpty()) {
      spaces.get(0).singles().forEach(contest::weigh);
    }
    if (byColourAlone && !nearestAlone && request.ratios() > 1) {
      contest.bestSets().forEach(this::enterRatios);
    }
  }

  private List<Candidate> nearest(SearchSpace space, int count) {
    return searches.run(search, space, new Sought(weighing.lab(), count));
  }

  private void enterBest(SearchSpace space, LeastExpected least) {
    boolean pots = !space.pots().isEmpty();
    boolean few = space.mostRecipes() <= FEW_RECIPES;
    int count = few ? SHORTLIST : NEAREST;
    List<Candidate> first = nearest(space, count);
    contest.enter(space, first, least);
    double seen = seenUpTo(first, count, Double.POSITIVE_INFINITY);
    double reach = contest.reach(pots);
    if (few && seen < reach) {
      List<Candidate> all = searches.run(search, space, new Sought(weighing.lab(), MOST, reach));
      contest.enter(space, all.subList(Math.min(first.size(), all.size()), all.size()), least);
      seen = seenUpTo(all, MOST, reach);
    } else {
      searches.skip();
    }
    seenUpTo = Math.min(seenUpTo, seen);
  }

  private static double seenUpTo(List<Candidate> found, int count, double upTo) {
    return found.size() < count ? upTo : found.get(count - 1).deltaE00();
  }

  /** Weighs the nearest ratios of one set of ingredients, since more than the best are shown. */
  private void enterRatios(Set<String> names) {
    for (SearchSpace space : spaces) {
      List<PaintOptics> paints =
          space.paints().stream().filter(each -> names.contains(each.paint().name())).toList();
      List<Pot> pots =
          space.pots().stream()
              .map(SearchSpace.Stirred::pot)
              .filter(pot -> names.contains(pot.name()))
              .toList();
      if (paints.size() + pots.size() == names.size()) {
        SearchSpace set = space(paints, pots, names.size(), request.mostDrops());
        new ExhaustiveSearch()
            .nearest(set, weighing.lab(), NEAREST).stream()
                .filter(candidate -> candidate.ingredients().length == names.size())
                .limit(DEAR)
                .forEach(candidate -> contest.weigh(candidate.recipe(set)));
      }
    }
  }

  /** All recipes that were weighed. */
  List<Weighed> weighed() {
    return contest.weighed();
  }

  /** How many recipes were weighed, or left out since they can't be shown. */
  int entered() {
    return contest.entered();
  }

  /** Whether all searches got to their end. */
  boolean complete() {
    return searches.complete();
  }

  /** How much closer than the nearest recipe found an unseen one could be, ΔE00. */
  double gap(double nearest) {
    return searches.gap(nearest);
  }

  /** Whether no other set of ingredients has a recipe that would be shown. */
  boolean isBestOfAll() {
    return complete() && seenUpTo >= contest.reach(!request.pots().isEmpty());
  }
}
