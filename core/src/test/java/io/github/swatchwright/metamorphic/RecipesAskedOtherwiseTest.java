package io.github.swatchwright.metamorphic;

import static io.github.swatchwright.metamorphic.Cases.DEAR;
import static io.github.swatchwright.metamorphic.Cases.ROUNDING;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.JsonResult;
import io.github.swatchwright.match.MatchRequest;
import io.github.swatchwright.match.MatchResult;
import io.github.swatchwright.match.Matcher;
import io.github.swatchwright.match.RankedRecipe;
import io.github.swatchwright.mix.Control;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Recipes don't depend on how paints are named, ordered and chosen, or on how many threads look.
 */
@Tag("statistics")
class RecipesAskedOtherwiseTest {
  /** As many sets as there are, so that near ties at the end of a list are in both. */
  private static final int ALL = 10;

  /** One shelf and what is asked of it; the answer is asked for by most tests. */
  private static final class Asked {
    private final Shelf shelf;
    private final Shelf smaller;
    private final MatchRequest request;
    private final ShelfOptics optics;
    private final MatchResult result;
    private final MatchResult fromSmaller;

    private Asked(Random random) {
      shelf = Cases.shelf(random, 3);
      smaller = new Shelf(shelf.name(), shelf.paints().subList(0, 2), shelf.surface());
      request =
          MatchRequest.of(Cases.swatch(random))
              .withMostPaints(2)
              .withMostDrops(2 + random.nextInt(2))
              .withAlternatives(ALL)
              .withRatios(MatchRequest.LARGEST_RATIOS);
      optics = ShelfOptics.estimate(shelf);
      result = matcher().match(request, ONE_THREAD);
      fromSmaller = match(smaller, request);
    }

    /** A new one each time: a matcher remembers half a megabyte for its next search. */
    private Matcher matcher() {
      return Matcher.of(optics, TristimulusWeights.D65);
    }
  }

  private static final Control ONE_THREAD = Control.PLAIN.withThreads(1);

  private static final List<Asked> ASKED =
      IntStream.range(0, DEAR).mapToObj(seed -> new Asked(new Random(seed))).toList();

  private static void each(BiConsumer<Asked, Random> trial) {
    int[] next = new int[1];
    Cases.each(DEAR, random -> trial.accept(ASKED.get(next[0]++), random));
  }

  private static MatchResult match(Shelf shelf, MatchRequest request) {
    return Matcher.of(ShelfOptics.estimate(shelf), TristimulusWeights.D65)
        .match(request, ONE_THREAD);
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
    each(
        (asked, random) ->
            assertSame(
                expected(asked.result, name -> name),
                expected(match(Cases.shuffled(asked.shelf, random), asked.request), name -> name)));
  }

  @Test
  void theNamesOfThePaints() {
    // The new names also stand in another order.
    Map<String, String> names = Map.of("Paint 0", "z", "Paint 1", "a, b: 2", "Paint 2", "M");
    each(
        (asked, random) -> {
          List<Paint> renamed =
              asked.shelf.paints().stream()
                  .map(p -> p.withName(names.getOrDefault(p.name(), p.name())))
                  .toList();
          Shelf other = new Shelf("y", renamed, asked.shelf.surface());
          assertSame(
              expected(asked.result, names::get),
              expected(match(other, asked.request), name -> name));
        });
  }

  /** Where the surface is stated; left out, the darkest paint of the whole shelf limits it. */
  @Test
  void onlySomePaintsAreASmallerShelf() {
    each(
        (asked, random) -> {
          MatchRequest fewer =
              random.nextBoolean()
                  ? asked.request.withOnly(Set.of("Paint 0", "Paint 1"))
                  : asked.request.withWithout(Set.of("Paint 2"));
          assertSame(
              expected(asked.fromSmaller, name -> name),
              expected(asked.matcher().match(fewer, ONE_THREAD), name -> name));
        });
  }

  /** The nearest recipe of all, of any number of paints that were allowed. */
  @Test
  void morePaintsAreNeverWorse() {
    each(
        (asked, random) -> {
          MatchResult singles = match(asked.smaller, asked.request.withMostPaints(1));
          assertThat(nearest(asked.result))
              .isLessThanOrEqualTo(nearest(asked.fromSmaller) + ROUNDING);
          assertThat(nearest(asked.fromSmaller)).isLessThanOrEqualTo(nearest(singles) + ROUNDING);
        });
  }

  private static double nearest(MatchResult result) {
    return result.recipes().stream().mapToDouble(RankedRecipe::deltaE00).min().orElseThrow();
  }

  @Test
  void aRecipeIsPredictedAgainToTheLastBit() {
    each(
        (asked, random) -> {
          MixPredictor predictor =
              MixPredictor.of(ShelfOptics.estimate(asked.shelf), TristimulusWeights.D65);
          List<Recipe> read =
              JsonResult.parseRecipes(JsonResult.of(asked.result).toText(), "read", asked.shelf);
          assertThat(read).hasSameSizeAs(asked.result.recipes());
          for (int i = 0; i < read.size(); i++) {
            assertThat(predictor.predict(read.get(i)))
                .isEqualTo(asked.result.recipes().get(i).prediction());
          }
        });
  }

  @Test
  void theNumberOfThreads() {
    each(
        (asked, random) ->
            assertThat(asked.matcher().match(asked.request, Control.PLAIN.withThreads(16)))
                .isEqualTo(asked.result));
  }
}
