package io.github.swatchwright.match;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.DoubleStream;

/**
 * The order of recipes: by the ΔE00 to be expected, to which wishes add what they are worth in the
 * same unit. The sum is a recipe's score, and the least score is first.
 *
 * <ul>
 *   <li>A recipe that uses a left-over pot counts as {@value #POT} better than it is, which nobody
 *       sees: the pot would be wasted otherwise.
 *   <li>A preference for fewer paints adds {@value #PAINT} for each ingredient after the first, one
 *       for fewer drops {@value #DROP} for each drop after the first.
 *   <li>A preference for a low price adds {@value #DOUBLED_PRICE} for each time that the price by
 *       the millilitre is double that of the cheapest of the recipes.
 *   <li>A preference for a match across lights adds what the worst light is worse by than the
 *       chosen one.
 *   <li>A wish for the hiding of another paint adds 1 for each {@value #HIDING} that the contrast
 *       ratios of one coat differ by: at a middle lightness, over black, such coats are about ΔL* 1
 *       apart (slope of L* by Y).
 * </ul>
 *
 * <p>What isn't known of a recipe counts like the worst that is known of the others.
 */
final class Ranking {
  static final double POT = 0.5;
  static final double PAINT = 0.5;
  static final double DROP = 0.1;
  static final double DOUBLED_PRICE = 0.5;
  static final double HIDING = 0.04;

  private static final Comparator<Weighed> ORDER =
      Comparator.comparingDouble(Weighed::score)
          .thenComparingDouble(Weighed::expectedDeltaE00)
          .thenComparingDouble(Weighed::deltaE00)
          .thenComparingInt(ranked -> ranked.recipe().names().size())
          .thenComparingInt(ranked -> ranked.recipe().total());

  private final Wishes wishes;
  private final double cheapest;
  private final double dearest;
  private final double leastConstant;

  private Ranking(Wishes wishes, List<Weighed> recipes) {
    this.wishes = wishes;
    cheapest = known(recipes, Weighed::pricePerMillilitre).min().orElse(0);
    dearest = known(recipes, Weighed::pricePerMillilitre).max().orElse(0);
    leastConstant = known(recipes, Ranking::lostAcrossLights).max().orElse(0);
  }

  /** The score of a recipe when nothing is wished for. */
  static double unwished(double expectedDeltaE00, boolean usesAPot) {
    return expectedDeltaE00 - (usesAPot ? POT : 0);
  }

  /** The recipes that hide as wished, with their scores, the best first. */
  static List<Weighed> inOrder(List<Weighed> recipes, Wishes wishes) {
    double least = wishes.leastContrastRatio().orElse(0);
    List<Weighed> hiding =
        recipes.stream().filter(ranked -> ranked.contrastRatio() >= least).toList();
    Ranking ranking = new Ranking(wishes, hiding);
    return hiding.stream()
        .map(ranked -> ranked.withScore(ranking.score(ranked)))
        .sorted(ORDER)
        .toList();
  }

  private static DoubleStream known(List<Weighed> recipes, Function<Weighed, OptionalDouble> of) {
    return recipes.stream()
        .map(of)
        .filter(OptionalDouble::isPresent)
        .mapToDouble(OptionalDouble::getAsDouble);
  }

  private double score(Weighed ranked) {
    double score = unwished(ranked.expectedDeltaE00(), !ranked.recipe().pots().isEmpty());
    if (wishes.prefer(Preference.FEWER_PAINTS)) {
      score += PAINT * (ranked.recipe().names().size() - 1);
    }
    if (wishes.prefer(Preference.FEWER_DROPS)) {
      score += DROP * (ranked.recipe().total() - 1);
    }
    if (wishes.prefer(Preference.CHEAPER)) {
      score += DOUBLED_PRICE * doublings(ranked.pricePerMillilitre().orElse(dearest));
    }
    if (wishes.prefer(Preference.ACROSS_LIGHTS)) {
      score += lostAcrossLights(ranked).orElse(leastConstant);
    }
    if (wishes.sameContrastRatio().isPresent()) {
      double apart = ranked.contrastRatio() - wishes.sameContrastRatio().getAsDouble();
      score += Math.abs(apart) / HIDING;
    }
    return score;
  }

  /** Prices below a thousandth of the dearest count as that, so that what is free has a place. */
  private double doublings(double price) {
    double floor = dearest / 1000;
    return dearest > 0
        ? Math.log(Math.max(price, floor) / Math.max(cheapest, floor)) / Math.log(2)
        : 0;
  }

  private static OptionalDouble lostAcrossLights(Weighed ranked) {
    return ranked
        .acrossLights()
        .map(lights -> OptionalDouble.of(Math.max(0, lights.worstDeltaE00() - ranked.deltaE00())))
        .orElse(OptionalDouble.empty());
  }
}
