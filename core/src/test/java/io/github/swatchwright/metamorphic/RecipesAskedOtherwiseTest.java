package io.github.swatchwright.metamorphic;

import static io.github.swatchwright.metamorphic.Cases.COUNT;
import static io.github.swatchwright.metamorphic.Cases.ROUNDING;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.MatchJson;
import io.github.swatchwright.match.MatchRequest;
import io.github.swatchwright.match.MatchResult;
import io.github.swatchwright.match.Matcher;
import io.github.swatchwright.match.RankedRecipe;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.mix.SearchControl;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.spectrum.Illuminant;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Recipes don't depend on how paints are named, ordered and chosen, or on how many threads look.
 */
@Tag("statistics")
class RecipesAskedOtherwiseTest {
  /** As many sets as there are, so that near ties at the end of a list are in both. */
  private static final int ALL = 10;

  private static MatchRequest request(Random random) {
    return MatchRequest.of(Cases.swatch(random))
        .withMostPaints(2)
        .withMostDrops(2 + random.nextInt(2))
        .withAlternatives(ALL)
        .withRatios(MatchRequest.LARGEST_RATIOS);
  }

  private static MatchResult match(Shelf shelf, MatchRequest request) {
    return Matcher.of(ShelfOptics.estimate(shelf), TristimulusWeights.D65).match(request);
  }

  /** What is expected of each recipe, by its drops. */
  private static Map<Map<String, Integer>, Double> expected(
      MatchResult result, UnaryOperator<String> name) {
    Map<Map<String, Integer>, Double> expected = new HashMap<>();
    for (RankedRecipe ranked : result.recipes()) {
      expected.put(
          ranked.recipe().drops().stream()
              .collect(
                  Collectors.toMap(some -> name.apply(some.paint().name()), Recipe.Drops::count)),
          ranked.expectedDeltaE00());
    }
    return expected;
  }

  private static void assertSame(
      Map<Map<String, Integer>, Double> one, Map<Map<String, Integer>, Double> other) {
    assertThat(other.keySet()).isEqualTo(one.keySet());
    one.forEach((drops, deltaE) -> assertThat(other.get(drops)).isCloseTo(deltaE, within(1e-6)));
  }

  @Test
  void theOrderOfTheShelf() {
    Cases.each(
        COUNT,
        random -> {
          Shelf shelf = Cases.shelf(random, 3);
          MatchRequest request = request(random);
          assertSame(
              expected(match(shelf, request), name -> name),
              expected(match(Cases.shuffled(shelf, random), request), name -> name));
        });
  }

  @Test
  void theNamesOfThePaints() {
    Cases.each(
        COUNT,
        random -> {
          Shelf shelf = Cases.shelf(random, 3);
          // The new names also stand in another order.
          Map<String, String> names = Map.of("Paint 0", "z", "Paint 1", "a, b: 2", "Paint 2", "M");
          List<Paint> renamed =
              shelf.paints().stream().map(p -> p.withName(names.get(p.name()))).toList();
          MatchRequest request = request(random);
          assertSame(
              expected(match(shelf, request), names::get),
              expected(match(new Shelf("y", renamed, shelf.surface()), request), name -> name));
        });
  }

  /** Where the surface is stated; left out, the darkest paint of the whole shelf limits it. */
  @Test
  void onlySomePaintsAreASmallerShelf() {
    Cases.each(
        COUNT,
        random -> {
          Shelf shelf = Cases.shelf(random, 3);
          List<Paint> some = shelf.paints().subList(1, 3);
          Set<String> names = some.stream().map(Paint::name).collect(Collectors.toSet());
          MatchRequest request = request(random);
          Shelf smaller = new Shelf(shelf.name(), some, shelf.surface());
          Map<Map<String, Integer>, Double> there = expected(match(smaller, request), name -> name);
          assertSame(there, expected(match(shelf, request.withOnly(names)), name -> name));
          assertSame(
              there, expected(match(shelf, request.withWithout(Set.of("Paint 0"))), name -> name));
        });
  }

  /** The nearest recipe of all, of any number of paints that were allowed. */
  @Test
  void morePaintsAreNeverWorse() {
    Cases.each(
        COUNT,
        random -> {
          Shelf shelf = Cases.shelf(random, 3);
          MatchRequest request = request(random);
          Shelf smaller = new Shelf(shelf.name(), shelf.paints().subList(0, 2), shelf.surface());
          assertThat(nearest(match(shelf, request)))
              .isLessThanOrEqualTo(nearest(match(smaller, request)) + ROUNDING);
          assertThat(nearest(match(smaller, request)))
              .isLessThanOrEqualTo(nearest(match(smaller, request.withMostPaints(1))) + ROUNDING);
        });
  }

  private static double nearest(MatchResult result) {
    return result.recipes().stream().mapToDouble(RankedRecipe::deltaE00).min().orElseThrow();
  }

  @Test
  void aRecipeIsPredictedAgainToTheLastBit() {
    Cases.each(
        COUNT,
        random -> {
          Shelf shelf = Cases.shelf(random, 3);
          ShelfOptics optics = ShelfOptics.estimate(shelf);
          MixPredictor predictor = MixPredictor.of(optics, TristimulusWeights.D65);
          MatchResult result = Matcher.of(optics, TristimulusWeights.D65).match(request(random));
          List<Recipe> read =
              MatchJson.parseRecipes(MatchJson.toText(result, Illuminant.D65), "read", shelf);
          assertThat(read).hasSameSizeAs(result.recipes());
          for (int i = 0; i < read.size(); i++) {
            assertThat(predictor.predict(read.get(i)))
                .isEqualTo(result.recipes().get(i).prediction());
          }
        });
  }

  @Test
  void theNumberOfThreads() {
    Cases.each(
        COUNT,
        random -> {
          Matcher matcher =
              Matcher.of(ShelfOptics.estimate(Cases.shelf(random, 3)), TristimulusWeights.D65);
          MatchRequest request = request(random);
          MatchResult one = matcher.match(request, SearchControl.PLAIN.withThreads(1));
          MatchResult sixteen = matcher.match(request, SearchControl.PLAIN.withThreads(16));
          assertThat(sixteen).isEqualTo(one);
        });
  }
}
