package io.github.swatchwright.calibrate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.mix.SyntheticPigments;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.PaintChoice;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Single pots of a few invented paints, whose true colours are known. */
class WrongPotTest {
  private static final InventedCards INVENTED = new InventedCards(700, 0, 0);
  private static final double METER = 0.3;

  /** White, black, an oxide, and an enamel that looks like the black. */
  private static final ShelfOptics OPTICS = calibrated();

  private static ShelfOptics calibrated() {
    List<Paint> paints =
        new ArrayList<>(
            Stream.of("white", "black", "oxide 0", "organic 0")
                .map(name -> INVENTED.pigment(name).withContrastRatio())
                .toList());
    Swatch black = new Swatch.OfLab(INVENTED.pigment("black").colour());
    paints.add(Paint.of("enamel black", Medium.ENAMEL, black).withSwatchError(0.5));
    List<TestCard> cards = new ArrayList<>();
    for (String name : List.of("black", "oxide 0", "organic 0")) {
      for (int white : new int[] {1, 5}) {
        cards.add(INVENTED.painted(InventedCards.parts("white", white, name, 1)));
      }
    }
    Shelf shelf = InventedCards.shelf(paints);
    return ShelfOptics.estimate(Calibration.of(shelf, new CardSet(cards)).shelf());
  }

  private static Corrector corrector() {
    return Corrector.of(OPTICS, SyntheticPigments.VIEWING.weights());
  }

  private static Lab truth(Object... namesAndAmounts) {
    return INVENTED.colour(InventedCards.parts(namesAndAmounts));
  }

  private static Correction correct(Corrector corrector, String pot, Lab measured, Lab target) {
    return corrector.correct(
        Mix.parse(pot, OPTICS.shelf()),
        new Swatch.OfLab(measured),
        METER,
        new Swatch.OfLab(target));
  }

  private static List<String> added(Correction correction) {
    return correction.additions().stream()
        .map(addition -> addition.drops().count() + " " + addition.drops().paint().name())
        .toList();
  }

  // White 8 and black 1 is to be white 8 and black 3.
  @Test
  void theDropsThatWereForgottenAreAdded() {
    Correction correction =
        correct(
            corrector(),
            "white:8, black:1",
            truth("white", 8, "black", 1),
            truth("white", 8, "black", 3));

    assertThat(added(correction)).containsExactly("2 black");
    assertThat(correction.drops()).isEqualTo(2);
    assertThat(correction.now())
        .isCloseTo(
            Ciede2000.deltaE(truth("white", 8, "black", 1), truth("white", 8, "black", 3)),
            within(1e-9));
    assertThat(correction.deltaE00()).isLessThanOrEqualTo(1);
    assertThat(correction.fresh()).isEmpty();
    assertThat(correction.startAfresh()).isFalse();
  }

  // Of a large pot several numbers of drops come near enough; the fewest are taken, not the
  // nearest.
  @Test
  void theSmallestAdditionThatGetsThereIsTaken() {
    Lab target = truth("white", 32, "black", 2);

    Correction correction =
        correct(corrector(), "white:20, black:2", truth("white", 20, "black", 2), target);

    assertThat(correction.additions()).hasSize(1);
    assertThat(correction.additions().get(0).drops().paint().name()).isEqualTo("white");
    assertThat(correction.drops()).isLessThan(12);
    assertThat(correction.deltaE00()).isLessThanOrEqualTo(1);
    Lab oneFewer = truth("white", 19 + correction.drops(), "black", 2);
    // What the calibrated shelf still misses of the truth.
    assertThat(Ciede2000.deltaE(oneFewer, target)).isGreaterThan(0.8);
  }

  @Test
  void twoForgottenPaintsAreAddedOneAfterTheOther() {
    Lab target = truth("white", 10, "black", 1, "oxide 0", 3);

    Correction correction = correct(corrector(), "white:10", truth("white", 10), target);

    assertThat(added(correction)).containsExactlyInAnyOrder("1 black", "3 oxide 0");
    Correction.Addition last = correction.additions().get(1);
    assertThat(last.predicted()).isEqualTo(correction.predicted());
    assertThat(last.deltaE00()).isEqualTo(correction.deltaE00()).isLessThanOrEqualTo(1);
    Correction.Addition first = correction.additions().get(0);
    assertThat(first.deltaE00()).isGreaterThan(last.deltaE00() + 2);
    int black = first.drops().paint().name().equals("black") ? 1 : 0;
    Lab afterOne = truth("white", 10, black == 1 ? "black" : "oxide 0", black == 1 ? 1 : 3);
    // What the calibrated shelf still misses of the truth.
    assertThat(Ciede2000.deltaE(first.predicted(), afterOne)).isLessThan(1.5);
  }

  // A small pot is at most added twelve drops to, however far its target is.
  @Test
  void noMoreDropsAreAddedThanAPainterWouldCount() {
    Correction far =
        correct(
            corrector(),
            "black:1, white:1",
            truth("black", 1, "white", 1),
            truth("black", 1, "white", 100));

    assertThat(added(far)).containsExactly("12 white");
    assertThat(far.fresh()).isPresent();
  }

  // A drop of black scatters by 8 %: the pot can't be expected nearer than about that moves it.
  @Test
  void theScatterOfWhatIsAddedIsExpectedToo() {
    Lab target = truth("white", 10, "black", 1);
    double byAFew = Ciede2000.deltaE(target, truth("white", 10, "black", 1.08));

    Correction correction = correct(corrector(), "white:10", truth("white", 10), target);

    assertThat(added(correction)).containsExactly("1 black");
    // Half of the deviations of a normal distribution are beyond 0.67 standard deviations.
    assertThat(correction.expectedDeltaE00()).isGreaterThan(0.67 * byAFew);
  }

  @Test
  void aPotThatIsNearEnoughIsLeftAlone() {
    Lab measured = truth("white", 8, "black", 1);
    Lab near = Lab.ofD65(measured.l() + 0.9, measured.a(), measured.b());

    Correction correction = correct(corrector(), "white:8, black:1", measured, near);

    assertThat(correction.now()).isBetween(0.5, 1.0);
    assertThat(correction.additions()).isEmpty();
    assertThat(correction.predicted())
        .satisfies(lab -> assertThat(Ciede2000.deltaE(lab, measured)).isLessThan(0.3));
  }

  @Test
  void whatIsInThePotMayBeAddedAndOtherPaintsOnlyIfTheyAreChosen() {
    Corrector whiteAlone = corrector().withChoice(PaintChoice.ALL.withOnly(Set.of("white")));
    Lab target = truth("white", 8, "black", 3);

    assertThat(
            added(correct(whiteAlone, "white:8, black:1", truth("white", 8, "black", 1), target)))
        .containsExactly("2 black");
    // Only white is left to add to white, and that doesn't darken it.
    Correction white = correct(whiteAlone, "white:8", truth("white", 8), target);
    assertThat(white.additions()).allMatch(a -> a.drops().paint().name().equals("white"));
    assertThat(white.deltaE00()).isGreaterThan(2);
  }

  @Test
  void paintOfAnotherMediumIsNotAdded() {
    Corrector blacks =
        corrector().withChoice(PaintChoice.ALL.withOnly(Set.of("white", "enamel black")));

    Correction correction =
        correct(blacks, "white:8", truth("white", 8), truth("white", 8, "black", 2));

    assertThat(correction.additions()).noneMatch(a -> a.drops().paint().medium() == Medium.ENAMEL);
  }

  // Two drops of black take eighteen of white to become a light grey; ten of a new pot do it too.
  @Test
  void aNewPotHoldsAsMuchAndIsTakenWhereItNeedsFewerDrops() {
    Lab target = truth("white", 30, "black", 1);

    Correction correction =
        correct(corrector(), "black:2, white:4", truth("black", 2, "white", 4), target);

    FreshPot fresh = correction.fresh().orElseThrow();
    double once =
        fresh.recipe().drops().stream()
            .mapToInt(d -> d.count())
            .reduce(WrongPotTest::gcd)
            .orElseThrow();
    assertThat(fresh.recipe().total()).isGreaterThanOrEqualTo(6);
    // One time fewer wouldn't fill the six drops.
    assertThat(fresh.recipe().total() * (once - 1) / once).isLessThan(6);
    assertThat(Ciede2000.deltaE(fresh.predicted(), target))
        .isCloseTo(fresh.deltaE00(), within(1e-9));
    assertThat(correction.startAfresh()).isTrue();
  }

  private static int gcd(int a, int b) {
    return b == 0 ? a : gcd(b, a % b);
  }

  // Two of black and one of white: seven of white make it 4 : 1, and so do five drops of a new pot.
  // Those would scatter, though, and the pot that was measured is known.
  @Test
  void aPotThatIsSurerIsMendedAlthoughANewOneTakesFewerDrops() {
    Lab target = truth("white", 4, "black", 1);

    Correction correction =
        correct(corrector(), "black:2, white:1", truth("black", 2, "white", 1), target);

    assertThat(correction.deltaE00()).isLessThanOrEqualTo(1);
    FreshPot fresh = correction.fresh().orElseThrow();
    assertThat(fresh.recipe().total()).isLessThan(correction.drops());
    assertThat(fresh.expectedDeltaE00()).isGreaterThan(correction.expectedDeltaE00());
    assertThat(correction.startAfresh()).isFalse();
  }

  // One of each: seven of white make it 8 : 1, and a new pot of that takes nine.
  @Test
  void aPotIsMendedWhereANewOneTakesMoreDrops() {
    Lab target = truth("white", 8, "black", 1);

    Correction correction =
        correct(corrector(), "black:1, white:1", truth("black", 1, "white", 1), target);

    assertThat(correction.deltaE00()).isLessThanOrEqualTo(1);
    assertThat(correction.fresh().orElseThrow().recipe().total())
        .isGreaterThanOrEqualTo(correction.drops());
    assertThat(correction.startAfresh()).isFalse();
  }

  // The last of fourteen paints is missing, and black: more paints than are tried in pairs.
  @Test
  void onALargeShelfThePaintsThatHelpAreFoundWhereverTheyStand() {
    ShelfOptics all = ShelfOptics.estimate(INVENTED.shelf());
    MixPredictor predictor = MixPredictor.of(all, SyntheticPigments.VIEWING.weights());
    Mix pot = Mix.parse("white:10", all.shelf());
    Lab target = predictor.predict(Mix.parse("white:10, black:1, band 2:2", all.shelf())).lab();

    Correction correction =
        Corrector.of(all, SyntheticPigments.VIEWING.weights())
            .correct(
                pot,
                new Swatch.OfLab(predictor.predict(pot).lab()),
                METER,
                new Swatch.OfLab(target));

    assertThat(correction.deltaE00()).isLessThanOrEqualTo(1);
    assertThat(correction.drops()).isLessThanOrEqualTo(3);
  }

  @Test
  void aColourThatNothingReachesIsNoReasonForANewPot() {
    Correction correction =
        correct(corrector(), "white:8", truth("white", 8), Lab.ofD65(60, 0, -90));

    assertThat(correction.deltaE00()).isGreaterThan(2);
    assertThat(correction.fresh()).isPresent();
    assertThat(correction.expectedDeltaE00()).isGreaterThan(correction.deltaE00() - 1);
    assertThat(correction.startAfresh()).isFalse();
  }

  @Test
  void anErrorOfZeroIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                corrector()
                    .correct(
                        Mix.parse("white:8", OPTICS.shelf()),
                        new Swatch.OfLab(truth("white", 8)),
                        0,
                        new Swatch.OfLab(truth("white", 8))))
        .withMessageStartingWith("error is 0.0");
  }
}
