package io.github.swatchwright.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.mix.Control;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
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

  /**
   * Of k numbers from 1 with a sum up to n there are C(n, k), and Σ μ(d)·C(⌊n/d⌋, k) without a
   * common divisor (Möbius inversion): with n = 12, 66 − 15 − 6 − 1 + 1 pairs and 220 − 20 − 4
   * threes. Four paints make 6 pairs and 4 threes.
   */
  @Test
  void noRatioIsLeftOutOrTakenTwice() {
    List<Candidate> found = new ExhaustiveSearch().nearest(space(3, 12), TARGET, 10_000);
    assertThat(found).hasSize(4 + 6 * 45 + 4 * 196).doesNotHaveDuplicates();
  }

  @Test
  void nothingIsFoundBeyondWhatIsAskedFor() {
    List<Candidate> all = new ExhaustiveSearch().nearest(space(3, 8), TARGET, 1000);
    double upTo = all.get(20).deltaE00();
    SearchOutcome near =
        new ExhaustiveSearch().search(space(3, 8), new Sought(TARGET, 1000, upTo), Control.PLAIN);
    assertThat(near.candidates())
        .isEqualTo(all.stream().filter(each -> each.deltaE00() <= upTo).toList());
  }

  @Test
  void aShorterListIsTheHeadOfALongerOne() {
    List<Candidate> all = new ExhaustiveSearch().nearest(space(3, 8), TARGET, 1000);
    List<Candidate> five = new ExhaustiveSearch().nearest(space(3, 8), TARGET, 5);
    assertThat(five).isEqualTo(all.subList(0, 5));
  }
}
