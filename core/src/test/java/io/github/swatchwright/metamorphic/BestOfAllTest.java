package io.github.swatchwright.metamorphic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.calibrate.Calibration;
import io.github.swatchwright.calibrate.CardSet;
import io.github.swatchwright.calibrate.TestCard;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.match.MatchRequest;
import io.github.swatchwright.match.MatchResult;
import io.github.swatchwright.match.Matcher;
import io.github.swatchwright.match.RankedRecipe;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.mix.Pot;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The list that is shown, against the one that comes of predicting every recipe there is. */
@Tag("statistics")
class BestOfAllTest {
  private static final int MOST_PAINTS = 3;

  /** What a pot counts for: the documented half of a unit. */
  private static final double POT = 0.5;

  /** The best recipe of a set of ingredients. */
  private record Best(Recipe recipe, double score) {
    boolean usesAPot() {
      return !recipe.pots().isEmpty();
    }
  }

  /** All reduced recipes of some ingredients, of which the last ones may be pots. */
  private static void collect(
      List<Object> left,
      int drops,
      List<Recipe.Drops> paints,
      List<Recipe.PotDrops> pots,
      List<Recipe> all) {
    if (paints.size() + pots.size() > 0) {
      Recipe recipe = new Recipe(paints, pots);
      if (recipe.reduced().equals(recipe)) {
        all.add(recipe);
      }
    }
    if (paints.size() + pots.size() == MOST_PAINTS) {
      return;
    }
    for (int i = 0; i < left.size(); i++) {
      for (int count = 1; count <= drops; count++) {
        List<Recipe.Drops> morePaints = new ArrayList<>(paints);
        List<Recipe.PotDrops> morePots = new ArrayList<>(pots);
        if (left.get(i) instanceof Paint paint) {
          morePaints.add(new Recipe.Drops(paint, count));
        } else if (left.get(i) instanceof Pot pot && count <= pot.wholeDrops()) {
          morePots.add(new Recipe.PotDrops(pot, count));
        } else {
          continue;
        }
        collect(left.subList(i + 1, left.size()), drops - count, morePaints, morePots, all);
      }
    }
  }

  private static List<Paint> of(Medium medium, Shelf shelf) {
    return shelf.paints().stream().filter(paint -> paint.medium() == medium).toList();
  }

  private static List<Recipe> all(Shelf shelf, MatchRequest request) {
    List<Recipe> all = new ArrayList<>();
    for (Medium medium : List.of(Medium.ACRYLIC, Medium.ENAMEL)) {
      List<Object> ingredients = new ArrayList<>(of(medium, shelf));
      request.pots().stream().filter(pot -> pot.medium() == medium).forEach(ingredients::add);
      collect(ingredients, request.mostDrops(), List.of(), List.of(), all);
    }
    return all;
  }

  private static List<Best> expected(MixPredictor predictor, Shelf shelf, MatchRequest request) {
    Lab target = request.target().labUnder(TristimulusWeights.D65);
    Map<Set<String>, Best> bySet = new HashMap<>();
    for (Recipe recipe : all(shelf, request)) {
      double expected = predictor.predict(recipe).spread().expectedDeltaE00(target);
      Best best = new Best(recipe, expected - (recipe.pots().isEmpty() ? 0 : POT));
      bySet.merge(recipe.names(), best, (one, other) -> one.score <= other.score ? one : other);
    }
    List<Best> inOrder =
        bySet.values().stream().sorted(Comparator.comparingDouble(Best::score)).toList();
    List<Best> shown =
        new ArrayList<>(inOrder.subList(0, Math.min(request.alternatives(), inOrder.size())));
    if (shown.stream().noneMatch(Best::usesAPot)) {
      inOrder.stream()
          .filter(Best::usesAPot)
          .findFirst()
          .ifPresent(best -> shown.set(shown.size() - 1, best));
    }
    return shown;
  }

  private static double nearest(MixPredictor predictor, Shelf shelf, MatchRequest request) {
    Lab target = request.target().labUnder(TristimulusWeights.D65);
    return all(shelf, request).stream()
        .map(recipe -> predictor.constants(recipe.toMix()).opaque())
        .mapToDouble(opaque -> Ciede2000.deltaE(predictor.viewing().lab(opaque), target))
        .min()
        .orElseThrow();
  }

  private static Shelf shelf(Random random) {
    Shelf shelf = Cases.shelf(random, 3 + random.nextInt(3));
    if (random.nextInt(4) > 0) {
      List<Paint> paints = new ArrayList<>(shelf.paints());
      int last = paints.size() - 1;
      paints.set(last, paints.get(last).withMedium(Medium.ENAMEL));
      return new Shelf(
          shelf.name(), random.nextBoolean() ? paints : shelf.paints(), shelf.surface());
    }
    List<TestCard> cards = new ArrayList<>();
    for (int i = 0; i < 2; i++) {
      cards.add(TestCard.ofMix(Cases.mix(random, shelf.paints()), Cases.swatch(random)));
    }
    return Calibration.of(shelf, new CardSet(cards)).shelf();
  }

  private static List<Pot> pots(Random random, Shelf shelf) {
    return random.nextInt(4) > 0
        ? List.of()
        : List.of(new Pot(Cases.mix(random, of(Medium.ACRYLIC, shelf))));
  }

  /**
   * A thousand shelves: a quarter have learned from two test cards that tell nonsense, some have an
   * enamel, which mixes with no acrylic, and a quarter have a left-over pot.
   */
  @Test
  void noRecipeBeatsThoseThatAreShown() {
    Cases.each(
        Cases.COUNT,
        random -> {
          Shelf shelf = shelf(random);
          ShelfOptics optics = ShelfOptics.estimate(shelf);
          MatchRequest request =
              MatchRequest.of(Cases.swatch(random))
                  .withMostPaints(MOST_PAINTS)
                  .withMostDrops(3 + random.nextInt(4))
                  .withAlternatives(1 + random.nextInt(5))
                  .withPots(pots(random, shelf));
          MatchResult result = Matcher.of(optics, TristimulusWeights.D65).match(request);
          MixPredictor predictor = MixPredictor.of(optics, TristimulusWeights.D65);
          List<Best> expected = expected(predictor, shelf, request);
          assertThat(result.reach().nearestDeltaE00())
              .isCloseTo(nearest(predictor, shelf, request), within(1e-9));
          List<RankedRecipe> shown = result.recipes();
          assertThat(result.bestOfAll()).isTrue();
          assertThat(shown).hasSameSizeAs(expected);
          for (int i = 0; i < shown.size(); i++) {
            // The same sums in the same order, but for ties.
            assertThat(shown.get(i).score()).isCloseTo(expected.get(i).score, within(1e-9));
          }
        });
  }
}
