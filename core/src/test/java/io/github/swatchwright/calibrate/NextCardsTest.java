package io.github.swatchwright.calibrate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.mix.Control;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.PaintChoice;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Which cards are named, on shelves so small that every card can be tried. */
class NextCardsTest {
  private static final InventedCards INVENTED = new InventedCards(960, 0, 0);
  private static final CardErrors ERRORS = new CardErrors(0.05, OptionalDouble.of(0.5));
  private static final Shelf SHELF = shelf("white", "black", "oxide 0");
  private static final ShelfOptics OPTICS = ShelfOptics.estimate(SHELF);
  private static final Swatch TARGET =
      new Swatch.OfLab(INVENTED.colour(InventedCards.parts("white", 3, "oxide 0", 1)));

  private static Shelf shelf(String... names) {
    return InventedCards.shelf(
        Stream.of(names).map(name -> INVENTED.pigment(name).withContrastRatio()).toList());
  }

  private static MixPredictor predictor(ShelfOptics optics) {
    return MixPredictor.of(optics, TristimulusWeights.D65);
  }

  /** The error that is left when cards are really given, and show just what was foretold. */
  private static double left(Recipe wanted, List<Recipe> cards) {
    List<TestCard> shown =
        cards.stream()
            .map(
                card ->
                    TestCard.ofMix(
                        card.toMix(), new Swatch.OfLab(predictor(OPTICS).predict(card).lab())))
            .toList();
    Shelf better = Calibration.of(SHELF, new CardSet(shown), ERRORS).shelf();
    return predictor(ShelfOptics.estimate(better))
        .predict(wanted)
        .spread()
        .expectedDeltaE00(TARGET.lab());
  }

  private static Recipe recipe(Object... namesAndDrops) {
    List<Recipe.Drops> drops = new ArrayList<>();
    for (int i = 0; i < namesAndDrops.length; i += 2) {
      drops.add(
          new Recipe.Drops(SHELF.paint((String) namesAndDrops[i]), (Integer) namesAndDrops[i + 1]));
    }
    return new Recipe(drops);
  }

  // The cards are named by what is taken off a covariance; here each is really given. Steps of the
  // fit from another point leave two parts in a thousand between them.
  @Test
  void theErrorThatIsLeftIsThatAfterTheCardsAreReallyGiven() {
    NextCards named = CardAdvisor.of(OPTICS, ERRORS).forTargets(List.of(TARGET), 3);

    Recipe wanted = named.wanted().get(0);
    assertThat(named.expectedDeltaE00()).isCloseTo(left(wanted), withinPercentage(1e-6));
    List<Recipe> given = new ArrayList<>();
    assertThat(named.cards()).hasSizeGreaterThanOrEqualTo(2);
    for (NextCard card : named.cards()) {
      given.add(card.recipe());
      assertThat(card.expectedDeltaE00()).isCloseTo(left(wanted, given), withinPercentage(0.5));
    }
    assertThat(given).doesNotHaveDuplicates();
    assertThat(given).as("the wanted mix itself is a card too").contains(wanted);
  }

  private static double left(Recipe wanted) {
    return predictor(OPTICS).predict(wanted).spread().expectedDeltaE00(TARGET.lab());
  }

  @Test
  void noOtherCardLeavesLess() {
    NextCards named = CardAdvisor.of(OPTICS, ERRORS).forTargets(List.of(TARGET), 1);

    assertThat(named.cards()).hasSize(1);
    Recipe wanted = named.wanted().get(0);
    double best = left(wanted, List.of(named.cards().get(0).recipe()));
    List<WantedMix> mixes = List.of(WantedMix.of(wanted, TARGET.lab(), predictor(OPTICS)));
    List<Recipe> all = new ArrayList<>(PossibleCards.of(OPTICS, PaintChoice.ALL, mixes));
    all.add(wanted);
    for (Recipe card : all) {
      assertThat(left(wanted, List.of(card))).as(card.toMix().toText()).isGreaterThan(0.995 * best);
    }
  }

  // A card that takes off less than 2 in 1000 isn't worth its paint: of all ten cards few are.
  @Test
  void cardsThatHardlyHelpAreNotNamed() {
    NextCards named = CardAdvisor.of(OPTICS, ERRORS).forTargets(List.of(TARGET), 10);

    assertThat(named.cards()).hasSizeLessThan(10);
    double before = named.expectedDeltaE00();
    for (NextCard card : named.cards()) {
      assertThat(card.expectedDeltaE00()).isLessThanOrEqualTo(0.998 * before);
      before = card.expectedDeltaE00();
    }
    assertThat(named.cards().get(0).expectedDeltaE00()).isLessThan(0.8 * named.expectedDeltaE00());
  }

  @Test
  void onlyChosenPaintsAreMixedAndAskedFor() {
    Swatch grey = new Swatch.OfLab(INVENTED.colour(InventedCards.parts("white", 3, "black", 1)));
    PaintChoice choice = PaintChoice.ALL.withOnly(Set.of("white", "black"));

    NextCards targets =
        CardAdvisor.of(OPTICS, ERRORS).withChoice(choice).forTargets(List.of(grey), 2);
    NextCards whole = CardAdvisor.of(OPTICS, ERRORS).withChoice(choice).forShelf(1, 2);

    for (NextCards named : List.of(targets, whole)) {
      assertThat(named.cards()).isNotEmpty();
      assertThat(
              Stream.concat(named.wanted().stream(), named.cards().stream().map(NextCard::recipe)))
          .allMatch(recipe -> Set.of("white", "black").containsAll(recipe.names()));
    }
  }

  @Test
  void progressRisesToTheEnd() {
    List<Double> heard = new ArrayList<>();

    CardAdvisor.of(OPTICS, ERRORS)
        .forTargets(List.of(TARGET), 2, Control.PLAIN.withProgress(heard::add));

    assertThat(heard).isSorted().endsWith(1.0).hasSizeGreaterThanOrEqualTo(2);
    assertThat(heard.get(0)).isBetween(0.2, 0.5);
  }

  @Test
  void workThatIsStoppedEndsAtTheNextColour() {
    CardAdvisor advisor = CardAdvisor.of(OPTICS, ERRORS);
    Control stopped = Control.PLAIN.withCancelled(() -> true);

    assertThatExceptionOfType(CancellationException.class)
        .isThrownBy(() -> advisor.forTargets(List.of(TARGET), 2, stopped));
    assertThatExceptionOfType(CancellationException.class)
        .isThrownBy(() -> advisor.forShelf(1, 2, stopped));
  }

  // Both wanted paints alone, and each pair of which one is wanted in five ratios: 2 + 3 · 5.
  @Test
  void theCardsArePairsWithWantedPaintsOfOneMedium() {
    List<Paint> paints = new ArrayList<>(SHELF.paints());
    Swatch black = new Swatch.OfLab(INVENTED.pigment("black").colour());
    paints.add(Paint.of("enamel black", Medium.ENAMEL, black));
    ShelfOptics optics = ShelfOptics.estimate(InventedCards.shelf(paints));
    List<WantedMix> wanted =
        Stream.of(recipe("white", 3, "oxide 0", 1), recipe("oxide 0", 1))
            .map(recipe -> WantedMix.of(recipe, predictor(optics)))
            .toList();

    List<Recipe> cards = PossibleCards.of(optics, PaintChoice.ALL, wanted);

    assertThat(cards).hasSize(17).doesNotHaveDuplicates();
    assertThat(cards.get(0)).as("wanted most often").isEqualTo(recipe("oxide 0", 1));
    assertThat(cards)
        .contains(
            recipe("white", 1), recipe("white", 1, "black", 8), recipe("oxide 0", 3, "black", 1))
        .noneMatch(card -> card.names().contains("enamel black"));
    PaintChoice withoutBlack = PaintChoice.ALL.withWithout(Set.of("black"));
    assertThat(PossibleCards.of(optics, withoutBlack, wanted)).hasSize(7);
    // What is wanted is admitted, whatever is chosen besides.
    PaintChoice blackAlone = PaintChoice.ALL.withOnly(Set.of("black"));
    assertThat(PossibleCards.of(optics, blackAlone, wanted)).hasSize(17);
  }

  // On a shelf of forty: the two wanted alone, and with each other and the lightest, 2 + 3 · 5.
  @Test
  void onALargeShelfWantedPaintsArePairedWithTheLightestAlone() {
    List<Paint> paints = new ArrayList<>(SHELF.paints());
    paints.remove(0);
    for (int i = 0; i < 38; i++) {
      Swatch grey = new Swatch.OfLab(Lab.ofD65(20 + 2 * i, 0, 0));
      paints.add(Paint.of("grey " + i, Medium.ACRYLIC, grey));
    }
    Swatch white = new Swatch.OfLab(Lab.ofD65(99, 0, 0));
    paints.add(20, Paint.of("enamel white", Medium.ENAMEL, white));
    ShelfOptics optics = ShelfOptics.estimate(InventedCards.shelf(paints));
    WantedMix wanted = WantedMix.of(recipe("black", 3, "oxide 0", 1), predictor(optics));

    List<Recipe> cards = PossibleCards.of(optics, PaintChoice.ALL, List.of(wanted));

    assertThat(cards).hasSize(17);
    assertThat(cards.stream().flatMap(card -> card.names().stream()))
        .containsOnly("black", "oxide 0", "grey 37");
  }

  @Test
  void aSampleHasMixesOfTwoOrThreePaintsOfOneMediumEachPaintAboutAsOften() {
    List<Paint> paints = new ArrayList<>(shelf("white", "black", "oxide 0", "earth 0").paints());
    for (String name : List.of("enamel white", "enamel black")) {
      Swatch colour = new Swatch.OfLab(INVENTED.pigment(name.substring(7)).colour());
      paints.add(Paint.of(name, Medium.ENAMEL, colour));
    }
    ShelfOptics optics = ShelfOptics.estimate(InventedCards.shelf(paints));

    List<Recipe> sample = ShelfSample.of(optics, PaintChoice.ALL, 3);

    // 60 mixes, four of six of them acrylic as four of the six paints are.
    assertThat(sample).hasSize(60);
    assertThat(sample.stream().filter(mix -> medium(mix, 0) == Medium.ACRYLIC)).hasSize(40);
    Set<Integer> counts = new TreeSet<>();
    Map<String, Integer> uses = new TreeMap<>();
    for (Recipe mix : sample) {
      assertThat(mix.drops().size()).isBetween(2, 3);
      for (int i = 0; i < mix.drops().size(); i++) {
        assertThat(medium(mix, i)).isEqualTo(medium(mix, 0));
        counts.add(mix.drops().get(i).count());
        uses.merge(mix.drops().get(i).paint().name(), 1, Integer::sum);
      }
    }
    assertThat(counts).containsExactly(1, 2, 3, 4, 5, 6);
    // About 100 uses among four acrylics, and 40 among two enamels.
    assertThat(uses.get("white")).isBetween(20, 30);
    assertThat(uses.get("earth 0")).isBetween(20, 30);
    assertThat(uses.get("enamel black")).isEqualTo(20);
    assertThat(sample).isNotEqualTo(ShelfSample.of(optics, PaintChoice.ALL, 4));
    assertThat(Set.copyOf(sample.stream().map(Recipe::names).toList())).hasSizeGreaterThan(8);
    PaintChoice acrylics = PaintChoice.ALL.withMedium(Medium.ACRYLIC);
    assertThat(ShelfSample.of(optics, acrylics, 3))
        .hasSize(60)
        .allMatch(mix -> medium(mix, 0) == Medium.ACRYLIC);
  }

  private static Medium medium(Recipe mix, int part) {
    return mix.drops().get(part).paint().medium();
  }

  @Test
  void aLargeShelfHasThreeMixesForEachPaintAndAtMost240() {
    assertThat(ShelfSample.of(greys(30), PaintChoice.ALL, 1)).hasSize(90);
    assertThat(ShelfSample.of(greys(100), PaintChoice.ALL, 1)).hasSize(240);
  }

  private static ShelfOptics greys(int count) {
    List<Paint> greys = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Swatch grey = new Swatch.OfLab(Lab.ofD65(20 + 70.0 * i / count, 0, 0));
      greys.add(Paint.of("grey " + i, Medium.ACRYLIC, grey));
    }
    return ShelfOptics.estimate(InventedCards.shelf(greys));
  }

  @Test
  void aShelfWithoutPaintToMixIsRefused() {
    ShelfOptics bare =
        ShelfOptics.estimate(InventedCards.shelf(List.of(Paint.of("unseen", Medium.ACRYLIC))));

    assertThatIllegalArgumentException()
        .isThrownBy(() -> CardAdvisor.of(bare, ERRORS).forShelf(1, 1))
        .withMessage("the shelf 'invented' has no paint that can be computed with");
  }
}
