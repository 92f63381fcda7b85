package io.github.swatchwright.match;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.mix.ColourSpread;
import io.github.swatchwright.mix.Control;
import io.github.swatchwright.mix.LeastExpected;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.mix.Prediction;
import io.github.swatchwright.paint.Hiding;
import io.github.swatchwright.paint.Make;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.search.Candidate;
import io.github.swatchwright.search.PrunedSearch;
import io.github.swatchwright.search.SearchSpace;
import io.github.swatchwright.search.Sought;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Recipes are ranked by the ΔE00 to be expected. On a small shelf all are looked at that can be
 * shown; on a large one the nearest thousand: what that misses.
 */
@Tag("statistics")
class ShortlistTest {
  private static final int TARGETS = 10;

  private final Random random = new Random(28);

  /**
   * Ready-mixed paints, of which nothing, a contrast ratio, or that and an exact colour is known.
   */
  private Shelf shelf(int size) {
    List<Paint> paints = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      Paint paint =
          Paint.of("paint " + i, Medium.ACRYLIC, new Swatch.OfSrgb(colour()))
              .withMake(Make.READY_MIXED);
      if (i % 3 > 0) {
        paint = paint.withHiding(new Hiding.ContrastRatio(0.88 + 0.11 * random.nextDouble()));
      }
      paints.add(i % 3 > 1 ? paint.withSwatchError(0.1) : paint);
    }
    return Shelf.of("ready-mixed", paints);
  }

  private Srgb colour() {
    return new Srgb(channel(), channel(), channel());
  }

  private double channel() {
    return (30 + random.nextInt(200)) / 255.0;
  }

  /** Returns by how much the recipe shown first is worse than the best of all, for each target. */
  private double[] missed(int paints) {
    ShelfOptics optics = ShelfOptics.estimate(shelf(paints));
    MixPredictor predictor = MixPredictor.of(optics, TristimulusWeights.D65);
    Matcher matcher = Matcher.of(optics, TristimulusWeights.D65);
    double[] missed = new double[TARGETS];
    for (int i = 0; i < TARGETS; i++) {
      MatchRequest request = MatchRequest.of(new Swatch.OfSrgb(colour()));
      MatchResult result = matcher.match(request);
      double shown = result.recipes().get(0).expectedDeltaE00();
      missed[i] = shown - best(optics, predictor, request, shown);
      if (result.bestOfAll()) {
        assertThat(missed[i]).isZero();
      }
    }
    System.out.printf(
        Locale.ROOT,
        "%d paints: %d of %d are not the best, by %.3f at most%n",
        paints,
        Arrays.stream(missed).filter(by -> by > 0).count(),
        TARGETS,
        Arrays.stream(missed).max().orElseThrow());
    return missed;
  }

  /** The least expectation of all recipes that can have a smaller one than that. */
  private static double best(
      ShelfOptics optics, MixPredictor predictor, MatchRequest request, double known) {
    Lab lab = request.target().labUnder(TristimulusWeights.D65);
    SearchSpace space =
        new SearchSpace(
            optics.paints(), predictor.viewing(), request.mostPaints(), request.mostDrops());
    LeastExpected least = predictor.leastExpected(space.paints()).orElseThrow();
    Sought sought = new Sought(lab, Integer.MAX_VALUE, LeastExpected.reach(known));
    double best = known;
    for (Candidate each : new PrunedSearch().search(space, sought, Control.PLAIN).candidates()) {
      ColourSpread cloud = least.cloud(each.ingredients(), each.drops());
      if (LeastExpected.roughly(cloud, lab) < best && LeastExpected.closely(cloud, lab) < best) {
        Prediction prediction = predictor.predict(each.recipe(space));
        best = Math.min(best, prediction.spread().expectedDeltaE00(lab));
      }
    }
    return best;
  }

  @Test
  @DisplayName("28 paints: the best of all recipes is shown first")
  void isTheBestOfAll() {
    assertThat(missed(28)).containsOnly(0);
  }

  @Test
  @DisplayName("60 paints: so is it, or one that nobody could tell from it")
  void missesNothingThatIsSeen() {
    // A tenth of a unit is far below what is seen, and below what drops repeat to.
    assertThat(Arrays.stream(missed(60)).max().orElseThrow()).isLessThan(0.1);
  }
}
