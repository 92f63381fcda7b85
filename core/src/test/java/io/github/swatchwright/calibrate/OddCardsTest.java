package io.github.swatchwright.calibrate;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.mix.Control;
import io.github.swatchwright.paint.Paint;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Single cards that say something else than went in, and what becomes of them. */
class OddCardsTest {
  private static final CardErrors ERRORS = new CardErrors(0.05, OptionalDouble.of(0.5));

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

  // Two of five cards say another paint than went in; a third of five is one.
  @Test
  void atMostAThirdIsLeftOutTheWorstFirst() {
    InventedCards invented = new InventedCards(452, 0, 0);
    List<TestCard> cards = new ArrayList<>();
    for (int white : new int[] {1, 5, 10}) {
      cards.add(invented.painted(InventedCards.parts("white", white, "oxide 0", 1)));
    }
    cards.add(saying(invented, "oxide 0", InventedCards.parts("white", 20, "oxide 0", 13)));
    cards.add(saying(invented, "oxide 0", InventedCards.parts("black", 1)));

    List<Double> heard = new ArrayList<>();
    Calibration calibration =
        Calibration.of(
            invented.shelf(), new CardSet(cards), ERRORS, Control.PLAIN.withProgress(heard::add));

    assertThat(calibration.contradictions())
        .extracting(Calibration.DifferingCard::card)
        .containsExactly(5);
    assertThat(heard).as("a round more for each card that falls").isSorted().hasSizeGreaterThan(2);
  }

  /** A card that says twenty of white to one of a paint, and shows something else. */
  private static TestCard saying(InventedCards invented, String paint, List<TestCard.Part> shown) {
    return new TestCard(
        InventedCards.parts("white", 20, paint, 1),
        PartsBy.VOLUME,
        invented.painted(shown).measured(),
        Optional.empty(),
        OptionalDouble.empty());
  }

  // Two impossible cards of a paint that nothing else tells: the grey is nearer to white.
  @Test
  void ofTwoCardsOfAnUnknownPaintTheLikelierStays() {
    InventedCards invented = new InventedCards(451, 0.05, 0.5);
    List<Paint> paints = new ArrayList<>(invented.shelf().paints());
    paints.add(
        Paint.of("unseen", paints.get(0).medium())
            .withMake(paints.get(0).make())
            .withDropMillilitres(paints.get(0).dropMillilitres()));
    List<TestCard> cards = new ArrayList<>();
    for (int white : new int[] {1, 5, 10}) {
      cards.add(invented.painted(InventedCards.parts("white", white, "oxide 0", 1)));
      cards.add(invented.painted(InventedCards.parts("white", white, "black", 1)));
    }
    for (List<TestCard.Part> shown :
        List.of(InventedCards.parts("black", 1), InventedCards.parts("white", 20, "black", 1))) {
      cards.add(
          new TestCard(
              InventedCards.parts("white", 1000, "unseen", 0.01),
              PartsBy.VOLUME,
              invented.painted(shown).measured(),
              Optional.empty(),
              OptionalDouble.empty()));
    }

    Calibration calibration =
        Calibration.of(InventedCards.shelf(paints), new CardSet(cards), ERRORS);

    assertThat(calibration.contradictions())
        .extracting(Calibration.DifferingCard::card)
        .containsExactly(7);
    assertThat(calibration.unexpected()).extracting(Calibration.DifferingCard::card).contains(8);
    assertThat(calibration.shelf().paint("unseen").optics()).isPresent();
  }
}
