package io.github.swatchwright.calibrate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.mix.Control;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.mix.Prediction;
import io.github.swatchwright.mix.SyntheticPigments;
import io.github.swatchwright.mix.SyntheticPigments.Pigment;
import io.github.swatchwright.optics.OpticalConstants;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.optics.TintWithWhite;
import io.github.swatchwright.optics.Viewing;
import io.github.swatchwright.paint.Effect;
import io.github.swatchwright.paint.Make;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class CalibrationTest {
  /** Cards that obey the model to the last digit. */
  private static final CardErrors EXACT = new CardErrors(0.0005, OptionalDouble.of(0.01), 0);

  private static Paint unseen(Pigment pigment) {
    Paint paint = pigment.swatch(Make.SINGLE_PIGMENT);
    return Paint.of(paint.name(), paint.medium())
        .withFinish(paint.finish())
        .withMake(paint.make())
        .withDropMillilitres(paint.dropMillilitres());
  }

  private static double worst(InventedCards invented, Shelf shelf, List<String> names) {
    MixPredictor predictor =
        MixPredictor.of(ShelfOptics.estimate(shelf), SyntheticPigments.VIEWING.weights());
    double worst = 0;
    for (String first : names) {
      for (String second : names) {
        if (!first.equals(second)) {
          Lab predicted = predictor.predict(Mix.parse(first + ":1, " + second + ":3", shelf)).lab();
          Lab truth = invented.colour(InventedCards.parts(first, 1, second, 3));
          worst = Math.max(worst, Ciede2000.deltaE(truth, predicted));
        }
      }
    }
    return worst;
  }

  @Test
  void exactLaddersAndDrawdownsGiveTheMixesBack() {
    InventedCards invented = new InventedCards(11, 0, 0);
    List<String> names = List.of("white", "black", "oxide 1", "earth 0", "organic 1", "band 1");
    Shelf shelf =
        InventedCards.shelf(names.stream().map(name -> unseen(invented.pigment(name))).toList());
    List<TestCard> cards = new ArrayList<>();
    for (String name : names) {
      cards.add(invented.measured(InventedCards.parts(name, 1)));
      cards.add(invented.film(InventedCards.parts(name, 1), 0.05, 0.4));
      cards.add(invented.film(InventedCards.parts(name, 1), 0.8, 0.4));
      if (!name.equals("white")) {
        for (int white : new int[] {1, 5, 20}) {
          cards.add(invented.measured(InventedCards.parts("white", white, name, 1)));
        }
      }
    }
    Calibration calibration = Calibration.of(shelf, new CardSet(cards), EXACT);
    double worst = worst(invented, calibration.shelf(), names);
    System.out.printf(Locale.ROOT, "exact ladders and drawdowns: worst mix ΔE00 %.4f%n", worst);
    // The bound that is aimed at.
    assertThat(worst).isLessThanOrEqualTo(0.05);
    assertThat(calibration.contradictions()).isEmpty();
  }

  @Test
  void aColourantThatWasNeverSeenUnmixedIsLearntFromItsTints() {
    InventedCards invented = new InventedCards(12, 0, 0);
    List<String> names = List.of("white", "oxide 2");
    Shelf shelf =
        InventedCards.shelf(
            List.of(
                invented.pigment("white").withContrastRatio(),
                unseen(invented.pigment("oxide 2"))));
    List<TestCard> cards = new ArrayList<>();
    cards.add(invented.measured(InventedCards.parts("white", 1)));
    for (double white : new double[] {0.5, 1, 5, 20}) {
      cards.add(invented.measured(InventedCards.parts("white", white, "oxide 2", 1)));
    }
    Calibration calibration = Calibration.of(shelf, new CardSet(cards), EXACT);
    // Half as much white as colourant is the nearest it was seen to itself.
    assertThat(worst(invented, calibration.shelf(), names)).isLessThan(0.1);
  }

  @Test
  void twoExactCardsAgreeWithTheClosedFormSolution() {
    InventedCards invented = new InventedCards(13, 0, 0);
    OpticalConstants white = invented.pigment("white").truth();
    OpticalConstants oxide = invented.pigment("oxide 0").truth();
    List<TestCard> cards =
        List.of(
            invented.measured(InventedCards.parts("white", 1)),
            invented.film(InventedCards.parts("white", 1), 0.05, 0.4),
            invented.measured(InventedCards.parts("oxide 0", 1)),
            invented.measured(InventedCards.parts("white", 5, "oxide 0", 1)));
    Calibration calibration = Calibration.of(invented.shelf(), new CardSet(cards), EXACT);
    ShelfOptics fitted = ShelfOptics.estimate(calibration.shelf());
    OpticalConstants tint = invented.mixed(InventedCards.parts("white", 5, "oxide 0", 1));
    for (int band = 4; band < 32; band++) {
      TintWithWhite closed =
          TintWithWhite.of(
              oxide.k(band) / oxide.s(band),
              tint.k(band) / tint.s(band),
              5,
              white.k(band),
              white.s(band));
      // Cards of 0.01 in L* leave S of the oxide open by about 1 % where tint and masstone are far.
      assertThat(fitted.of("oxide 0").constants().s(band) / fitted.of("white").constants().s(band))
          .isCloseTo(closed.s() / white.s(band), within(0.03 * closed.s() / white.s(band)));
    }
  }

  @Test
  void aFittedShelfReadsBackToTheSamePredictionsAndIsThePriorForLaterCards() {
    InventedCards invented = new InventedCards(14, 0.05, 0.5);
    Shelf shelf = invented.shelf();
    CardErrors errors = new CardErrors(0.05, OptionalDouble.of(0.5));
    TestCard first = invented.painted(InventedCards.parts("white", 5, "oxide 0", 1));
    TestCard second = invented.painted(InventedCards.parts("white", 2, "oxide 0", 1, "black", 1));
    Calibration once = Calibration.of(shelf, new CardSet(List.of(first)), errors);
    Shelf read = ShelfJson.parse(ShelfJson.toText(once.shelf()), "written");
    assertThat(read).isEqualTo(once.shelf());
    assertThat(predict(read).intervalDeltaE00())
        .isEqualTo(predict(once.shelf()).intervalDeltaE00());
    assertThat(predict(read).lab()).isEqualTo(predict(once.shelf()).lab());

    Calibration later = Calibration.of(read, new CardSet(List.of(second)), errors);
    Calibration together = Calibration.of(shelf, new CardSet(List.of(first, second)), errors);
    assertThat(predict(later.shelf()).intervalDeltaE00())
        .isLessThan(predict(read).intervalDeltaE00());
    // One after the other differs from both at once by where the first was linearised.
    assertThat(Ciede2000.deltaE(predict(later.shelf()).lab(), predict(together.shelf()).lab()))
        .isLessThan(0.5);
    assertThat(later.shelf().paint("oxide 0").optics().orElseThrow().cards()).isEqualTo(2);
    assertThat(later.shelf().paint("earth 0")).isEqualTo(shelf.paint("earth 0"));
  }

  @Test
  void oneCallTakesAMeasuredPotForACard() {
    InventedCards invented = new InventedCards(16, 0.05, 0.5);
    Shelf shelf = invented.shelf();
    TestCard first = invented.painted(InventedCards.parts("white", 5, "oxide 0", 1));
    Calibration once = Calibration.of(shelf, new CardSet(List.of(first)));
    Mix pot = Mix.parse("white:6, oxide 0:3, black:1", shelf);
    TestCard measured = invented.painted(InventedCards.parts("white", 6, "oxide 0", 3, "black", 1));

    Calibration twice = once.with(TestCard.ofMix(pot, measured.measured()));

    assertThat(twice.shelf())
        .isEqualTo(Calibration.of(once.shelf(), new CardSet(List.of(measured))).shelf());
    assertThat(predict(twice.shelf()).intervalDeltaE00())
        .isLessThan(predict(once.shelf()).intervalDeltaE00());
    assertThat(twice.paints().stream().map(Calibration.CalibratedPaint::name))
        .containsExactly("white", "black", "oxide 0");
    assertThat(new CardSet(List.of(first)).with(measured).cards()).containsExactly(first, measured);
  }

  @Test
  void aPotThatContradictsEarlierCardsIsNamed() {
    InventedCards invented = new InventedCards(17, 0.05, 0.5);
    List<TestCard> cards = new ArrayList<>();
    for (int white : new int[] {1, 5, 10}) {
      cards.add(invented.painted(InventedCards.parts("white", white, "oxide 0", 1)));
    }
    Calibration before = Calibration.of(invented.shelf(), new CardSet(cards));
    TestCard wrong =
        TestCard.ofMix(
            Mix.parse("white:3, oxide 0:1", invented.shelf()),
            invented.painted(InventedCards.parts("white", 3, "black", 1)).measured());

    Calibration after = before.with(wrong);

    assertThat(after.contradictions()).hasSize(1);
    assertThat(after.contradictions().get(0).card()).isEqualTo(1);
    assertThat(predict(after.shelf()).lab()).isEqualTo(predict(before.shelf()).lab());
  }

  @Test
  void aDropOfAnotherSizeCountsByItsVolume() {
    InventedCards invented = new InventedCards(18, 0, 0);
    Paint white = invented.pigment("white").withContrastRatio();
    Paint large = white.withName("oxide 0").withDropMillilitres(3 * white.dropMillilitres());
    Mix mix = new Mix(List.of(new Mix.Part(white, 6), new Mix.Part(large, 1)));

    TestCard card = TestCard.ofMix(mix, white.masstone().orElseThrow());

    assertThat(card.parts().get(0).amount()).isEqualTo(6);
    assertThat(card.parts().get(1).amount()).isCloseTo(3, within(1e-12));
  }

  private static Prediction predict(Shelf shelf) {
    return MixPredictor.of(ShelfOptics.estimate(shelf), SyntheticPigments.VIEWING.weights())
        .predict(Mix.parse("white:3, oxide 0:2, black:1", shelf));
  }

  // By hand: what the shelf foretells of each card as a mix, and what the better one does. Amounts
  // and colours are exact, so that a card is what it says.
  @Test
  void itTellsHowFarTheCardsWereOffBeforeAndAfter() {
    InventedCards invented = new InventedCards(19, 0, 0);
    Shelf shelf =
        InventedCards.shelf(
            List.of(
                invented.pigment("white").withContrastRatio(),
                invented.pigment("black").withContrastRatio(),
                invented.pigment("oxide 0").withContrastRatio(),
                unseen(invented.pigment("oxide 1"))));
    List<List<TestCard.Part>> parts =
        List.of(
            InventedCards.parts("white", 5, "oxide 0", 1),
            InventedCards.parts("white", 1, "oxide 0", 1),
            InventedCards.parts("white", 1, "oxide 1", 1));
    List<TestCard> cards = parts.stream().map(invented::measured).toList();

    Calibration calibration = Calibration.of(shelf, new CardSet(cards), EXACT);

    double[] before = new double[3];
    double[] after = new double[3];
    for (int card = 0; card < 3; card++) {
      Lab truth = invented.colour(parts.get(card));
      before[card] = card == 2 ? 0 : Ciede2000.deltaE(mixed(shelf, parts.get(card)), truth);
      after[card] = Ciede2000.deltaE(mixed(calibration.shelf(), parts.get(card)), truth);
    }
    assertThat(before[0]).isGreaterThan(0.5);
    assertThat(calibration.before()).isCloseTo((before[0] + before[1]) / 2, within(1e-9));
    // The fit's own amounts are off by what exact cards allow: 0.05 %.
    assertThat(calibration.after())
        .isPositive()
        .isCloseTo((after[0] + after[1] + after[2]) / 3, within(0.01));
    assertThat(calibration.paints())
        .extracting(Calibration.CalibratedPaint::name)
        .containsExactly("white", "oxide 0", "oxide 1");
    assertThat(calibration.paints())
        .extracting(Calibration.CalibratedPaint::cards)
        .containsExactly(3, 2, 1);
    assertThat(calibration.paints().get(1).before())
        .isCloseTo((before[0] + before[1]) / 2, within(1e-9));
    assertThat(calibration.paints().get(1).after())
        .isCloseTo((after[0] + after[1]) / 2, within(0.01));
    assertThat(calibration.paints().get(2).before()).as("nothing was foretold").isZero();
    assertThat(calibration.paints().get(2).after()).isCloseTo(after[2], within(0.01));
  }

  // White is in all three cards, each oxide in some: the means of the parts make that of the whole.
  @Test
  void whatIsLeftOfACardCountsForEachOfItsPaints() {
    InventedCards invented = new InventedCards(21, 0.05, 0.5);
    List<TestCard> cards =
        List.of(
            invented.painted(InventedCards.parts("white", 5, "oxide 0", 1)),
            invented.painted(InventedCards.parts("white", 1, "oxide 0", 1)),
            invented.painted(InventedCards.parts("white", 1, "oxide 1", 1)));

    Calibration calibration = Calibration.of(invented.shelf(), new CardSet(cards));

    List<Calibration.CalibratedPaint> paints = calibration.paints();
    assertThat(paints).extracting(Calibration.CalibratedPaint::cards).containsExactly(3, 2, 1);
    assertThat(2 * paints.get(1).after() + paints.get(2).after())
        .isCloseTo(3 * calibration.after(), within(1e-9))
        .isCloseTo(3 * paints.get(0).after(), within(1e-9));
    assertThat(2 * paints.get(1).before() + paints.get(2).before())
        .isCloseTo(3 * calibration.before(), within(1e-9));
    assertThat(Math.abs(paints.get(1).after() - paints.get(2).after())).isGreaterThan(1e-3);
  }

  private static Lab mixed(Shelf shelf, List<TestCard.Part> parts) {
    List<Mix.Part> drops =
        parts.stream().map(part -> new Mix.Part(shelf.paint(part.paint()), part.amount())).toList();
    return MixPredictor.of(ShelfOptics.estimate(shelf), SyntheticPigments.VIEWING.weights())
        .predict(new Mix(drops))
        .lab();
  }

  // One card alone contradicts no card, however far from the swatch it is: it is used and named.
  @Test
  void aFirstCardFarFromItsSwatchIsUnexpectedAndUsed() {
    InventedCards invented = new InventedCards(20, 0, 0);
    Shelf shelf = invented.shelf();
    TestCard wrong =
        TestCard.ofMix(
            Mix.parse("oxide 0", shelf),
            new Swatch.OfLab(invented.colour(InventedCards.parts("oxide 0", 1, "white", 2))));

    Calibration calibration = Calibration.of(shelf, new CardSet(List.of(wrong)));

    assertThat(calibration.contradictions()).isEmpty();
    assertThat(calibration.unexpected()).hasSize(1);
    Calibration.DifferingCard named = calibration.unexpected().get(0);
    assertThat(named.card()).isEqualTo(1);
    assertThat(named.measured()).isEqualTo(wrong.measured().lab());
    assertThat(named.expected()).isEqualTo(mixed(shelf, InventedCards.parts("oxide 0", 1)));
    assertThat(calibration.paints()).hasSize(1);

    TestCard right = invented.painted(InventedCards.parts("oxide 0", 1));
    assertThat(Calibration.of(shelf, new CardSet(List.of(right))).unexpected()).isEmpty();
  }

  @Test
  void progressRisesToTheEnd() {
    InventedCards invented = new InventedCards(16, 0.05, 0.5);
    List<TestCard> cards =
        List.of(
            invented.painted(InventedCards.parts("white", 5, "oxide 0", 1)),
            invented.painted(InventedCards.parts("white", 1, "oxide 0", 1)));
    List<Double> heard = new ArrayList<>();

    Calibration.of(
        invented.shelf(),
        new CardSet(cards),
        CardErrors.USUAL,
        Control.PLAIN.withProgress(heard::add));

    assertThat(heard).isSorted().endsWith(1.0).hasSizeGreaterThanOrEqualTo(2);
    assertThat(heard.get(0)).isBetween(0.05, 0.5);
  }

  /** Two paints and their tint, measured under a surface that isn't the usual one (see there). */
  @Test
  void aFittedSurfaceIsStoredWithTheShelf() {
    InventedCards invented = new InventedCards(1300, 0, 0);
    Viewing viewing = new Viewing(TristimulusWeights.D65, new Saunderson(0.015, 0.55));
    List<Paint> paints =
        Stream.of("white", "black", "oxide 0", "organic 0")
            .map(
                name ->
                    Paint.of(
                            name,
                            Medium.ACRYLIC,
                            seen(viewing, invented, InventedCards.parts(name, 1)))
                        .withMake(Make.SINGLE_PIGMENT)
                        .withSwatchError(0.1))
            .toList();
    List<TestCard> cards = new ArrayList<>();
    for (Paint paint : paints.subList(1, 4)) {
      for (int white : new int[] {1, 5}) {
        List<TestCard.Part> parts = InventedCards.parts("white", white, paint.name(), 1);
        cards.add(
            new TestCard(
                parts,
                PartsBy.VOLUME,
                seen(viewing, invented, parts),
                Optional.empty(),
                OptionalDouble.empty()));
      }
    }
    Shelf shelf = Shelf.of("invented", paints);
    CardErrors errors = new CardErrors(0.02, OptionalDouble.of(0.1), 0);

    Calibration usual = Calibration.of(shelf, new CardSet(cards), errors);
    Calibration fitted = Calibration.withFittedSurface(shelf, new CardSet(cards), errors);

    double chosen = usual.shelf().surface().orElseThrow().k2();
    double found = fitted.shelf().surface().orElseThrow().k2();
    assertThat(Math.abs(found - 0.55)).isLessThan(0.5 * Math.abs(chosen - 0.55));
  }

  private static Swatch seen(Viewing viewing, InventedCards invented, List<TestCard.Part> parts) {
    return new Swatch.OfReflectance(
        380, 10, viewing.seen(invented.mixed(parts).opaque()).toArray());
  }

  @Test
  void whatCannotBeFittedIsRefusedInOneLine() {
    InventedCards invented = new InventedCards(15, 0, 0);
    Shelf shelf =
        InventedCards.shelf(
            List.of(
                invented.pigment("white").withContrastRatio(),
                unseen(invented.pigment("oxide 0")),
                unseen(invented.pigment("oxide 1")),
                Paint.of(
                    "enamel",
                    Medium.ENAMEL,
                    invented.painted(InventedCards.parts("black", 1)).measured())));
    TestCard two = invented.painted(InventedCards.parts("oxide 0", 1, "oxide 1", 1));
    refuses(
        shelf,
        two,
        "1 card can't tell 'oxide 0' and 'oxide 1' apart: give a masstone, or more cards");
    TestCard unknown =
        new TestCard(
            InventedCards.parts("wite", 1),
            PartsBy.VOLUME,
            two.measured(),
            Optional.empty(),
            OptionalDouble.empty());
    refuses(shelf, unknown, "card 1: no paint 'wite' on the shelf 'invented'; nearest is 'white'");
    TestCard media =
        new TestCard(
            InventedCards.parts("white", 1, "enamel", 1),
            PartsBy.VOLUME,
            two.measured(),
            Optional.empty(),
            OptionalDouble.empty());
    refuses(shelf, media, "card 1: the parts are of more than one medium");
    TestCard uncounted =
        new TestCard(
            InventedCards.parts("white", 1),
            PartsBy.VOLUME,
            two.measured(),
            Optional.of(two.measured()),
            OptionalDouble.empty());
    refuses(shelf, uncounted, "card 1: 'over' is stated without 'coats', must have both");
  }

  // One of three unknown paints is told by a card of its own; the other two share one.
  @Test
  void onlyThePaintsThatCannotBeToldApartAreNamed() {
    InventedCards invented = new InventedCards(15, 0, 0);
    Shelf shelf =
        InventedCards.shelf(
            Stream.of("oxide 0", "oxide 1", "oxide 2")
                .map(name -> unseen(invented.pigment(name)))
                .toList());
    CardSet cards =
        new CardSet(
            List.of(
                invented.painted(InventedCards.parts("oxide 0", 1, "oxide 1", 1, "oxide 2", 1)),
                invented.painted(InventedCards.parts("oxide 0", 1))));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Calibration.of(shelf, cards))
        .withMessage(
            "1 card can't tell 'oxide 1' and 'oxide 2' apart: give a masstone, or more cards");

    // With one more, each card tells one: read in any order.
    CardSet enough = cards.with(invented.painted(InventedCards.parts("oxide 1", 1, "oxide 0", 2)));
    assertThat(Calibration.of(shelf, enough).paints()).hasSize(3);
  }

  @Test
  void aMetalIsRefused() {
    InventedCards invented = new InventedCards(15, 0, 0);
    TestCard card = invented.painted(InventedCards.parts("white", 1));
    Paint brass = invented.pigment("white").withContrastRatio().withEffect(Effect.METALLIC);
    refuses(
        InventedCards.shelf(List.of(brass)),
        card,
        "card 1: 'white' is metallic, which the model doesn't hold for");
  }

  private static void refuses(Shelf shelf, TestCard card, String message) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Calibration.of(shelf, new CardSet(List.of(card))))
        .withMessage(message);
  }
}
