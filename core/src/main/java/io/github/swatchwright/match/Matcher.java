package io.github.swatchwright.match;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.mix.Prediction;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.PaintOptics;
import io.github.swatchwright.paint.ShelfOptics;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

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

  private static final Comparator<RankedRecipe> STURDIEST =
      Comparator.comparingDouble(RankedRecipe::expectedDeltaE00)
          .thenComparingDouble(RankedRecipe::deltaE00)
          .thenComparingInt(ranked -> ranked.recipe().drops().size())
          .thenComparingInt(ranked -> ranked.recipe().total());

  private final ShelfOptics optics;
  private final TristimulusWeights light;
  private final RecipeSearch search;

  private Matcher(ShelfOptics optics, TristimulusWeights light, RecipeSearch search) {
    this.optics = optics;
    this.light = light;
    this.search = search;
  }

  /** A matcher that tries every recipe. */
  public static Matcher of(ShelfOptics optics, TristimulusWeights light) {
    return new Matcher(optics, light, new ExhaustiveSearch());
  }

  /** This matcher with another search. */
  public Matcher withSearch(RecipeSearch other) {
    return new Matcher(optics, light, other);
  }

  /**
   * Proposes recipes.
   *
   * @throws IllegalArgumentException when a named paint isn't on the shelf, or no paint is left to
   *     choose from
   */
  public MatchResult match(MatchRequest request) {
    MixPredictor predictor = MixPredictor.of(optics, light);
    Lab target = request.target().labUnder(light);
    int count = Math.max(SHORTLIST, RecipeSearch.RATIOS_PER_SET * request.alternatives());
    List<RankedRecipe> nearest = new ArrayList<>();
    for (List<PaintOptics> paints : byMedium(request).values()) {
      SearchSpace space =
          new SearchSpace(paints, predictor.viewing(), request.mostPaints(), request.mostDrops());
      for (Candidate candidate : search.nearest(space, target, count)) {
        nearest.add(rank(candidate.recipe(space), predictor, target));
      }
    }
    RankedRecipe closest =
        nearest.stream().min(Comparator.comparingDouble(RankedRecipe::deltaE00)).orElseThrow();
    return new MatchResult(
        target,
        bestOfEachSet(nearest, request.alternatives()),
        Reach.of(closest.prediction().lab(), target),
        leftOut());
  }

  private Map<Medium, List<PaintOptics>> byMedium(MatchRequest request) {
    Set<String> only = known(request.only());
    Set<String> without = known(request.without());
    Map<Medium, List<PaintOptics>> byMedium =
        optics.paints().stream()
            .filter(paint -> only.isEmpty() || only.contains(paint.paint().name()))
            .filter(paint -> !without.contains(paint.paint().name()))
            .filter(paint -> request.medium().map(paint.paint().medium()::equals).orElse(true))
            .collect(
                Collectors.groupingBy(
                    paint -> paint.paint().medium(), TreeMap::new, Collectors.toList()));
    if (byMedium.isEmpty()) {
      throw new IllegalArgumentException(
          "no paint is left to choose from on the shelf '" + optics.shelf().name() + "'");
    }
    return byMedium;
  }

  private Set<String> known(Set<String> names) {
    return names.stream()
        .map(name -> optics.shelf().paint(name).name())
        .collect(Collectors.toUnmodifiableSet());
  }

  private static RankedRecipe rank(Recipe recipe, MixPredictor predictor, Lab target) {
    Prediction prediction = predictor.predict(recipe);
    return new RankedRecipe(
        recipe,
        prediction,
        Ciede2000.deltaE(target, prediction.lab()),
        prediction.spread().expectedDeltaE00(target));
  }

  private static List<RankedRecipe> bestOfEachSet(List<RankedRecipe> recipes, int count) {
    Set<Set<String>> used = new HashSet<>();
    return recipes.stream()
        .sorted(STURDIEST)
        .filter(ranked -> used.add(ranked.recipe().names()))
        .limit(count)
        .toList();
  }

  private List<String> leftOut() {
    return optics.shelf().paints().stream()
        .filter(paint -> paint.whyNotComputable().isPresent())
        .map(Matcher::reason)
        .toList();
  }

  private static String reason(Paint paint) {
    return "'" + paint.name() + "' " + paint.whyNotComputable().orElseThrow();
  }
}
