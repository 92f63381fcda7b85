package io.github.swatchwright.calibrate;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.paint.Paint;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
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

  @Test
  void aCardOfAPaintThatNoOtherCardAndNoSwatchKnowsContradictsNothing() {
    InventedCards invented = new InventedCards(450, 0.05, 0.5);
    List<Paint> paints = new ArrayList<>(invented.shelf().paints());
    Paint known = paints.get(5);
    paints.set(
        5,
        Paint.of(known.name(), known.medium())
            .withFinish(known.finish())
            .withMake(known.make())
            .withDropMillilitres(known.dropMillilitres()));
    List<TestCard> cards = new ArrayList<>();
    for (int i = 1; i < 5; i++) {
      cards.add(
          invented.painted(InventedCards.parts("white", 5, invented.pigments.get(i).name(), 1)));
    }
    cards.add(invented.painted(InventedCards.parts("white", 5, known.name(), 1)));

    Calibration calibration =
        Calibration.of(InventedCards.shelf(paints), new CardSet(cards), ERRORS);

    assertThat(calibration.contradictions()).isEmpty();
    assertThat(calibration.shelf().paint(known.name()).optics()).isPresent();
  }

  @Test
  void anImpossibleCardIsNamedButStaysWhereNothingElseIsKnownOfItsPaint() {
    InventedCards invented = new InventedCards(451, 0.05, 0.5);
    List<Paint> paints = new ArrayList<>(invented.shelf().paints());
    Paint unseen =
        Paint.of("unseen", paints.get(0).medium())
            .withFinish(paints.get(0).finish())
            .withMake(paints.get(0).make())
            .withDropMillilitres(paints.get(0).dropMillilitres());
    paints.add(unseen);
    List<TestCard> cards = new ArrayList<>();
    for (int white : new int[] {1, 5, 10}) {
      cards.add(invented.painted(InventedCards.parts("white", white, "oxide 0", 1)));
      cards.add(invented.painted(InventedCards.parts("white", white, "black", 1)));
    }
    // A drop of anything can't turn a hundred drops of white into black.
    cards.add(
        new TestCard(
            InventedCards.parts("white", 1000, "unseen", 0.01),
            PartsBy.VOLUME,
            invented.painted(InventedCards.parts("black", 1)).measured(),
            Optional.empty(),
            OptionalDouble.empty()));

    Calibration calibration =
        Calibration.of(InventedCards.shelf(paints), new CardSet(cards), ERRORS);

    assertThat(calibration.contradictions()).isEmpty();
    assertThat(calibration.unexpected()).extracting(Calibration.DifferingCard::card).contains(7);
    assertThat(calibration.shelf().paint("unseen").optics()).isPresent();
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
