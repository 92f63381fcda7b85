package io.github.swatchwright.calibrate;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.match.MatchRequest;
import io.github.swatchwright.match.Matcher;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.mix.SyntheticPigments;
import io.github.swatchwright.paint.PaintChoice;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;
import org.junit.jupiter.api.Test;

/** Named cards are painted on invented shelves, and must help more than any card would. */
class CardAdvisorTest {
  private static final int SHELVES = 40;
  private static final int TARGETS = 4;
  private static final CardErrors ERRORS = new CardErrors(0.05, OptionalDouble.of(0.5));

  /** Eight of the invented paints: enough to choose from, and quick. */
  private static Shelf eight(InventedCards invented) {
    return InventedCards.shelf(
        IntStream.of(0, 1, 2, 4, 6, 8, 10, 12)
            .mapToObj(i -> invented.pigments.get(i).withContrastRatio())
            .toList());
  }

  private static List<TestCard.Part> parts(Recipe recipe) {
    return recipe.drops().stream()
        .map(drops -> new TestCard.Part(drops.paint().name(), drops.count()))
        .toList();
  }

  private static ShelfOptics after(InventedCards invented, Shelf shelf, List<Recipe> cards) {
    List<TestCard> painted = cards.stream().map(card -> invented.painted(parts(card))).toList();
    return ShelfOptics.estimate(Calibration.of(shelf, new CardSet(painted), ERRORS).shelf());
  }

  private static Recipe random(ShelfOptics optics, List<WantedMix> wanted, Random random) {
    List<Recipe> possible = PossibleCards.of(optics, PaintChoice.ALL, wanted);
    return possible.get(random.nextInt(possible.size()));
  }

  @Test
  void forAWholeShelfTheNamedCardsHelpMoreThanRandomOnes() {
    Gains gains = new Gains();
    for (int number = 0; number < SHELVES; number++) {
      InventedCards invented = new InventedCards(900 + number, 0.05, 0.5);
      Random random = new Random(number);
      Shelf shelf = eight(invented);
      ShelfOptics before = ShelfOptics.estimate(shelf);
      List<Recipe> mixes = ShelfSample.of(before, PaintChoice.ALL, 10_000 + number);
      NextCards named = CardAdvisor.of(before, ERRORS).forShelf(number, 2);
      List<WantedMix> wanted =
          mixes.stream().map(mix -> WantedMix.of(mix, predictor(before))).toList();
      gains.add(
          error(invented, before, mixes),
          error(invented, after(invented, shelf, recipes(named, 1)), mixes),
          error(invented, after(invented, shelf, recipes(named, 2)), mixes),
          error(invented, after(invented, shelf, List.of(random(before, wanted, random))), mixes),
          error(
              invented,
              after(
                  invented,
                  shelf,
                  List.of(random(before, wanted, random), random(before, wanted, random))),
              mixes));
    }
    gains.print("whole shelf, mean ΔE00 of other mixes");
    gains.assertNamedCardsHelpMore();
  }

  private static List<Recipe> recipes(NextCards named, int count) {
    return named.cards().stream().limit(count).map(NextCard::recipe).toList();
  }

  private static MixPredictor predictor(ShelfOptics optics) {
    return MixPredictor.of(optics, SyntheticPigments.VIEWING.weights());
  }

  private static double error(InventedCards invented, ShelfOptics optics, List<Recipe> mixes) {
    return mixes.stream()
        .mapToDouble(
            mix ->
                Ciede2000.deltaE(
                    invented.colour(parts(mix)), predictor(optics).predict(mix.toMix()).lab()))
        .average()
        .orElseThrow();
  }

  @Test
  void forTargetsTheNamedCardsHelpMoreThanRandomOnes() {
    Gains gains = new Gains();
    for (int number = 0; number < SHELVES; number++) {
      InventedCards invented = new InventedCards(960 + number, 0.05, 0.5);
      Random random = new Random(number);
      Shelf shelf = eight(invented);
      ShelfOptics before = ShelfOptics.estimate(shelf);
      List<Recipe> some = ShelfSample.of(before, PaintChoice.ALL, number).subList(0, TARGETS);
      List<Swatch> targets =
          some.stream().<Swatch>map(mix -> new Swatch.OfLab(invented.colour(parts(mix)))).toList();
      NextCards named = CardAdvisor.of(before, ERRORS).forTargets(targets, 2);
      List<WantedMix> wanted =
          named.wanted().stream().map(mix -> WantedMix.of(mix, predictor(before))).toList();
      gains.add(
          reached(invented, before, targets),
          reached(invented, after(invented, shelf, recipes(named, 1)), targets),
          reached(invented, after(invented, shelf, recipes(named, 2)), targets),
          reached(
              invented, after(invented, shelf, List.of(random(before, wanted, random))), targets),
          reached(
              invented,
              after(
                  invented,
                  shelf,
                  List.of(random(before, wanted, random), random(before, wanted, random))),
              targets));
    }
    gains.print("targets, mean ΔE00 of the recipes that are then proposed");
    gains.assertNamedCardsHelpMore();
  }

  /** How far what is in the pot lies from the target, when the best recipe is mixed. */
  private static double reached(InventedCards invented, ShelfOptics optics, List<Swatch> targets) {
    Matcher matcher = Matcher.of(optics, TristimulusWeights.D65);
    return targets.stream()
        .mapToDouble(
            target -> {
              MatchRequest request = MatchRequest.of(target).withAlternatives(1);
              Recipe recipe = matcher.match(request).recipes().get(0).recipe();
              return Ciede2000.deltaE(target.lab(), invented.colour(parts(recipe)));
            })
        .average()
        .orElseThrow();
  }

  /** Errors before any card, after named cards, and after random ones. */
  private static final class Gains {
    private final DescriptiveStatistics[] columns = {
      new DescriptiveStatistics(),
      new DescriptiveStatistics(),
      new DescriptiveStatistics(),
      new DescriptiveStatistics(),
      new DescriptiveStatistics()
    };

    void add(double... errors) {
      for (int i = 0; i < errors.length; i++) {
        columns[i].addValue(errors[i]);
      }
    }

    void print(String name) {
      System.out.printf(
          Locale.ROOT,
          "next card: %s: before %.2f; one named %.2f, one random %.2f; two named %.2f, two random"
              + " %.2f (mean of %d shelves)%n",
          name,
          columns[0].getMean(),
          columns[1].getMean(),
          columns[3].getMean(),
          columns[2].getMean(),
          columns[4].getMean(),
          columns[0].getN());
    }

    private double gain(int column) {
      return columns[0].getMean() - columns[column].getMean();
    }

    void assertNamedCardsHelpMore() {
      assertThat(gain(1)).isGreaterThan(gain(3)).isPositive();
      assertThat(gain(2)).isGreaterThan(gain(4)).isGreaterThan(gain(1));
    }
  }
}
