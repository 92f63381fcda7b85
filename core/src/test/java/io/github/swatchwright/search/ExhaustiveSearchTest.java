package io.github.swatchwright.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ExhaustiveSearchTest {
  private static final Shelf SHELF =
      Shelf.of(
          "four",
          List.of(
              paint("White", "#F4F4F0"),
              paint("Black", "#303030"),
              paint("Red", "#A03028"),
              paint("Yellow", "#E0B020")));
  private static final ShelfOptics OPTICS = ShelfOptics.estimate(SHELF);
  private static final MixPredictor PREDICTOR = MixPredictor.of(OPTICS, TristimulusWeights.D65);
  private static final Lab TARGET = Srgb.parse("#8A4B2A").toLab();

  private static Paint paint(String name, String hex) {
    return Paint.of(name, Medium.ACRYLIC, new Swatch.OfSrgb(Srgb.parse(hex)));
  }

  private static SearchSpace space(int paints, int drops) {
    return new SearchSpace(OPTICS.paints(), PREDICTOR.viewing(), paints, drops);
  }

  /** A second way to the same list: all drop counts from 0 up, by the public prediction. */
  private static List<Double> byCounting(int paints, int drops) {
    Set<String> seen = new HashSet<>();
    List<Double> distances = new ArrayList<>();
    for (int code = 1; code < Math.pow(drops + 1, 4); code++) {
      List<Recipe.Drops> chosen = new ArrayList<>();
      int rest = code;
      for (Paint paint : SHELF.paints()) {
        if (rest % (drops + 1) > 0) {
          chosen.add(new Recipe.Drops(paint, rest % (drops + 1)));
        }
        rest /= drops + 1;
      }
      if (chosen.size() > paints) {
        continue;
      }
      Recipe recipe = new Recipe(chosen);
      if (recipe.total() <= drops && seen.add(recipe.reduced().toMix().toText())) {
        Lab lab = PREDICTOR.predict(recipe.toMix()).lab();
        distances.add(Ciede2000.deltaE(TARGET, lab));
      }
    }
    return distances.stream().sorted().toList();
  }

  @Test
  void everyReducedRatioIsTriedOnceAndTheNearestComeFirst() {
    List<Candidate> found = new ExhaustiveSearch().nearest(space(4, 6), TARGET, 1000);
    List<Double> counted = byCounting(4, 6);
    assertThat(found).isSorted();
    assertThat(found.get(0).deltaE00()).isCloseTo(counted.get(0), within(1e-9));
    for (Candidate candidate : found) {
      Recipe recipe = candidate.recipe(space(4, 6));
      assertThat(recipe).isEqualTo(recipe.reduced());
      Lab predicted = PREDICTOR.predict(recipe.toMix()).lab();
      // The search puts the same sums together in another order: rounding, times the slope of ΔE00.
      assertThat(candidate.deltaE00()).isCloseTo(Ciede2000.deltaE(TARGET, predicted), within(1e-9));
    }
  }

  @Test
  void noSetOfPaintsCrowdsTheList() {
    List<Candidate> found = new ExhaustiveSearch().nearest(space(3, 12), TARGET, 1000);
    List<Set<String>> sets =
        found.stream().map(candidate -> names(candidate.recipe(space(3, 12)))).toList();
    for (Set<String> set : new HashSet<>(sets)) {
      assertThat(Collections.frequency(sets, set)).isLessThanOrEqualTo(RecipeSearch.RATIOS_PER_SET);
    }
    // 4 single paints, 6 pairs and 4 threes; a single paint has one reduced ratio only.
    assertThat(new HashSet<>(sets)).hasSize(14);
    assertThat(found).hasSize(4 + 10 * RecipeSearch.RATIOS_PER_SET);
  }

  private static Set<String> names(Recipe recipe) {
    return new HashSet<>(recipe.drops().stream().map(some -> some.paint().name()).toList());
  }

  @Test
  void aShorterListIsTheHeadOfALongerOne() {
    List<Candidate> all = new ExhaustiveSearch().nearest(space(3, 8), TARGET, 1000);
    List<Candidate> five = new ExhaustiveSearch().nearest(space(3, 8), TARGET, 5);
    assertThat(five).isEqualTo(all.subList(0, 5));
  }
}
