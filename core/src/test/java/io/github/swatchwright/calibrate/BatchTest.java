package io.github.swatchwright.calibrate;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.estimate.BatchStrength;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.mix.SyntheticPigments;
import io.github.swatchwright.paint.Shelf;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;
import org.junit.jupiter.api.Test;

/** A new bottle of one paint is weaker than the old one. */
class BatchTest {
  private static final int SHELVES = 12;
  private static final double STRENGTH = 0.75;
  private static final String DRIFTED = "oxide 0";
  private static final CardErrors ERRORS = new CardErrors(0.05, OptionalDouble.of(0.5));

  private static List<TestCard> oldCards(InventedCards invented) {
    List<TestCard> cards = new ArrayList<>();
    for (int i = 1; i < invented.pigments.size(); i++) {
      String name = invented.pigments.get(i).name();
      for (int white : new int[] {1, 5}) {
        cards.add(invented.painted(InventedCards.parts("white", white, name, 1)));
      }
    }
    return cards;
  }

  /** Cards with the new bottle, whose paint is as if there were less of it. */
  private static List<TestCard> newCards(InventedCards invented, Optional<String> label) {
    List<TestCard> cards = new ArrayList<>();
    String[] others = {"white", "white", "white", "black", "earth 0", "organic 0"};
    int[] amounts = {1, 4, 10, 1, 2, 1};
    for (int i = 0; i < others.length; i++) {
      TestCard weak =
          invented.painted(InventedCards.parts(others[i], amounts[i], DRIFTED, STRENGTH));
      cards.add(
          new TestCard(
              List.of(
                  new TestCard.Part(others[i], amounts[i]), new TestCard.Part(DRIFTED, 1, label)),
              weak.by(),
              weak.measured(),
              weak.over(),
              weak.coats()));
    }
    return cards;
  }

  private static double error(InventedCards invented, Shelf shelf) {
    MixPredictor predictor =
        MixPredictor.of(ShelfOptics.estimate(shelf), SyntheticPigments.VIEWING.weights());
    double sum = 0;
    int count = 0;
    for (SyntheticPigments.Pigment other : invented.pigments) {
      for (int amount : new int[] {1, 3}) {
        if (!other.name().equals(DRIFTED)) {
          sum +=
              Ciede2000.deltaE(
                  invented.colour(InventedCards.parts(other.name(), amount, DRIFTED, 1)),
                  predictor
                      .predict(
                          Mix.parse(other.name() + ":" + amount + ", " + DRIFTED + ":1", shelf))
                      .lab());
          count++;
        }
      }
    }
    return sum / count;
  }

  @Test
  void cardsOfALabelledBatchNeitherContradictTheOldOnesNorSpoilThem() {
    DescriptiveStatistics old = new DescriptiveStatistics();
    DescriptiveStatistics labelled = new DescriptiveStatistics();
    DescriptiveStatistics unlabelled = new DescriptiveStatistics();
    DescriptiveStatistics strengths = new DescriptiveStatistics();
    int accused = 0;
    int accusedUnlabelled = 0;
    int held = 0;
    for (int number = 0; number < SHELVES; number++) {
      InventedCards invented = new InventedCards(1200 + number, 0.05, 0.5);
      List<TestCard> before = oldCards(invented);
      old.addValue(error(invented, calibrate(invented, before, List.of()).shelf()));
      Calibration with = calibrate(invented, before, newCards(invented, Optional.of("new")));
      labelled.addValue(error(invented, with.shelf()));
      accused += with.contradictions().size();
      BatchStrength found = with.batches().get(0);
      strengths.addValue(found.strength());
      held += Math.abs(Math.log(found.strength() / STRENGTH)) <= 1.28 * found.sd() ? 1 : 0;
      Calibration without = calibrate(invented, before, newCards(invented, Optional.empty()));
      unlabelled.addValue(error(invented, without.shelf()));
      accusedUnlabelled += without.contradictions().size();
    }
    System.out.printf(
        Locale.ROOT,
        "a batch of strength %.2f: found %.3f on average (sd %.3f), %d of %d in the 80 %% interval;"
            + " mixes of the old batch ΔE00 %.2f from its own cards, %.2f with labelled cards of the"
            + " new one, %.2f with unlabelled; %d and %d cards accused%n",
        STRENGTH,
        strengths.getMean(),
        strengths.getStandardDeviation(),
        held,
        SHELVES,
        old.getMean(),
        labelled.getMean(),
        unlabelled.getMean(),
        accused,
        accusedUnlabelled);
    // One in two hundred sound cards looks wrong by chance: of 12 × 32 about two.
    assertThat(accused).isLessThanOrEqualTo(6);
    assertThat(labelled.getMean()).isLessThanOrEqualTo(old.getMean());
    assertThat(labelled.getMean()).isLessThan(unlabelled.getMean());
    // The prior pulls a drift of almost twice its sd towards none, but not half of the way.
    assertThat(strengths.getMean()).isBetween(STRENGTH - 0.05, (1 + STRENGTH) / 2);
  }

  private static Calibration calibrate(
      InventedCards invented, List<TestCard> before, List<TestCard> more) {
    List<TestCard> all = new ArrayList<>(before);
    all.addAll(more);
    return Calibration.of(invented.shelf(), new CardSet(all), ERRORS);
  }
}
