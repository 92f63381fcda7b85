package io.github.swatchwright.calibrate;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.difference.Ciede2000;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** One card in twelve says that another paint went into it than did. */
class ContradictionTest {
  private static final int TRIALS = 100;
  private static final int CARDS = 12;
  private static final CardErrors ERRORS = new CardErrors(0.05, OptionalDouble.of(0.5));

  @Test
  void theMislabelledCardIsNamedAndHardlyAnyOther() {
    int named = 0;
    int accused = 0;
    for (long trial = 0; trial < TRIALS; trial++) {
      InventedCards invented = new InventedCards(300 + trial, 0.05, 0.5);
      Random random = new Random(trial);
      List<TestCard> cards = new ArrayList<>();
      for (int i = 0; i < CARDS; i++) {
        String paint = invented.pigments.get(1 + i % 6).name();
        cards.add(invented.painted(InventedCards.parts("white", i < 6 ? 5 : 1, paint, 1)));
      }
      int wrong = random.nextInt(CARDS);
      cards.set(wrong, mislabelled(invented, cards.get(wrong), random));
      Calibration calibration = Calibration.of(invented.shelf(), new CardSet(cards), ERRORS);
      for (Calibration.DifferingCard contradiction : calibration.contradictions()) {
        if (contradiction.card() == wrong + 1) {
          named++;
        } else {
          accused++;
        }
      }
    }
    System.out.printf(
        Locale.ROOT,
        "mislabelled cards: %d of %d named; %d of %d good ones accused%n",
        named,
        TRIALS,
        accused,
        TRIALS * (CARDS - 1));
    // 95 of 100 named, and no more than one good card in two hundred accused, are what was asked
    // for.
    assertThat(named).isGreaterThanOrEqualTo(95);
    assertThat(accused).isLessThanOrEqualTo(TRIALS * (CARDS - 1) / 200);
  }

  /** The same measurement under the name of a paint whose tint looks another colour, ΔE00 > 5. */
  private static TestCard mislabelled(InventedCards invented, TestCard card, Random random) {
    while (true) {
      String other = invented.pigments.get(1 + random.nextInt(13)).name();
      List<TestCard.Part> parts =
          List.of(card.parts().get(0), new TestCard.Part(other, card.parts().get(1).amount()));
      double difference = Ciede2000.deltaE(invented.colour(parts), card.measured().lab());
      if (difference > 5) {
        return new TestCard(parts, card.by(), card.measured(), card.over(), card.coats());
      }
    }
  }
}
