package io.github.swatchwright.ladder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.coat.Base;
import io.github.swatchwright.coat.Caution;
import io.github.swatchwright.coat.CoatPredictor;
import io.github.swatchwright.coat.Coats;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.ladder.LadderWarning.Kind;
import io.github.swatchwright.mix.Control;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.paint.PaintChoice;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import io.github.swatchwright.testdata.DemoShelf;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Ladders of two or three paints in small pots, worked through as a painter would by hand. */
class SmallLadderTest {
  private static final Shelf SHELF = ShelfJson.parse(DemoShelf.text(), DemoShelf.SOURCE);
  private static final ShelfOptics OPTICS = ShelfOptics.estimate(SHELF);
  private static final MixPredictor PREDICTOR = MixPredictor.of(OPTICS, TristimulusWeights.D65);
  private static final LadderRequest REQUEST =
      LadderRequest.between(mix("Bright orange"), mix("Burnt umber"), 3)
          .withPot(PotRule.onePot().withMostDrops(20))
          .withChoice(only("Bright orange", "Burnt umber"));

  private static Ladder plan(LadderRequest request) {
    return LadderPlanner.of(OPTICS, TristimulusWeights.D65).plan(request);
  }

  private static Shade mix(String text) {
    return new Shade.OfMix(Mix.parse(text, SHELF));
  }

  private static PaintChoice only(String... names) {
    return PaintChoice.ALL.withOnly(Set.of(names));
  }

  private static List<Kind> kinds(Ladder ladder) {
    return ladder.warnings().stream().map(LadderWarning::kind).toList();
  }

  private static final LadderRequest LET_DOWN =
      LadderRequest.between(mix("Deckhouse cream"), mix("Lamp black:1, Deckhouse cream:6"), 3)
          .withPot(PotRule.onePot().withMostDrops(12))
          .withChoice(only("Lamp black", "Deckhouse cream"));

  private static final LadderRequest BLACK_AND_WHITE =
      LadderRequest.between(mix("Lamp black"), mix("Titanium white"), 3)
          .withPot(PotRule.onePot().withMostDrops(20))
          .withChoice(only("Lamp black", "Titanium white"));

  /** Each pot from what is kept of the one before, as a painter pours it; drops by paint. */
  @Test
  void eachPotHoldsWhatIsKeptAndWhatIsAdded() {
    for (LadderRequest request :
        List.of(REQUEST, REQUEST.withPot(PotRule.recipes().withMostDrops(20)), LET_DOWN)) {
      Ladder ladder = plan(request);
      Map<String, Double> cup = new LinkedHashMap<>();
      double poured = 0;
      double spare = 0;
      for (int i = 0; i < ladder.rungs().size(); i++) {
        Rung rung = ladder.rungs().get(i);
        double before = cup.values().stream().mapToDouble(Double::doubleValue).sum();
        cup.replaceAll((paint, drops) -> drops * rung.keep() / Math.max(1, before));
        for (Recipe.Drops some : rung.add()) {
          cup.merge(some.paint().name(), (double) some.count(), Double::sum);
          poured += some.count();
        }
        ladder.letDown().ifPresent(down -> addLetDown(cup, down, rung.letDown()));
        cup.values().removeIf(drops -> drops == 0);
        assertThat(parts(rung.pot())).containsExactlyInAnyOrderEntriesOf(rounded(cup));

        // 0.4 ml for all of the area is 8.89 drops of 0.045 ml; 0.9 of a pot reaches the model.
        double need = rung.coverage() * 0.4 / 0.045;
        assertThat(rung.dropsNeeded()).isCloseTo(need, within(1e-9));
        int kept = i + 1 < ladder.rungs().size() ? ladder.rungs().get(i + 1).keep() : 0;
        assertThat(rung.potDrops() * 0.9 + 1e-9).isGreaterThanOrEqualTo(need);
        assertThat(rung.spare()).isCloseTo(rung.potDrops() - need - kept, within(1e-9));
        assertThat(rung.potDrops()).isBetween(6 - 1e-9, (double) request.pot().mostDrops());
        spare += rung.spare();
      }
      int letDown = ladder.letDown().map(LetDown::count).orElse(0);
      assertThat(ladder.drops()).isEqualTo((int) poured + letDown);
      assertThat(ladder.dropsNeeded())
          .isCloseTo((1 + 1 / 2.0 + 1 / 3.0) * 0.4 / 0.045, within(1e-9));
      assertThat(spare).isPositive();
    }
    assertThat(plan(LET_DOWN).letDown()).isPresent();
    assertThat(plan(REQUEST).letDown()).isEmpty();
  }

  private static void addLetDown(Map<String, Double> cup, LetDown down, int drops) {
    double each = (double) drops / (down.strongDrops() + down.mildDrops());
    cup.merge(down.strong().name(), each * down.strongDrops(), Double::sum);
    cup.merge(down.mild().name(), each * down.mildDrops(), Double::sum);
  }

  private static Map<String, Long> parts(Mix mix) {
    Map<String, Double> drops = new LinkedHashMap<>();
    mix.parts().forEach(part -> drops.put(part.paint().name(), part.drops()));
    return rounded(drops);
  }

  /** To nine digits. */
  private static Map<String, Long> rounded(Map<String, Double> drops) {
    Map<String, Long> rounded = new LinkedHashMap<>();
    drops.forEach((paint, count) -> rounded.put(paint, Math.round(1e9 * count)));
    return rounded;
  }

  // 13 drops: 8.9 are painted, 3 kept. The drop that is over is told in whole, what is spare of two
  // paints in tenths.
  @Test
  void theUseOfEachPotIsToldInWholeDrops() {
    Ladder ladder = plan(REQUEST);

    assertThat(ladder.rungs().get(0).potDrops()).isEqualTo(13);
    assertThat(ladder.rungs().get(1).keep()).isEqualTo(3);
    assertThat(ladder.useOfPot(0)).isEqualTo("9 to paint with, 3 to keep, 1 over");
    assertThat(ladder.useOfPot(2)).isEqualTo("3 to paint with, 3 over");
    // 6 drops half and half, of which 4.44 are painted: 0.78 of each are left.
    assertThat(ladder.rungs().get(1).spareText()).isEqualTo("Bright orange:0.8, Burnt umber:0.8");
    assertThat(ladder.rungs().get(0).coat().coverage()).isEqualTo(1);
    assertThat(ladder.rungs().get(1).coat().mix()).isEqualTo(ladder.rungs().get(1).pot());
  }

  @Test
  void stepsAreCountedBetweenTheColoursOfTheRungs() {
    Ladder ladder = plan(REQUEST);
    List<Lab> labs =
        ladder.rungs().stream().map(rung -> PREDICTOR.predict(rung.pot()).lab()).toList();
    double first = Ciede2000.deltaE(labs.get(0), labs.get(1));
    double second = Ciede2000.deltaE(labs.get(1), labs.get(2));

    assertThat(ladder.rungs().get(0).step()).isEmpty();
    assertThat(ladder.rungs().get(1).step().orElseThrow()).isCloseTo(first, within(1e-9));
    assertThat(ladder.evenStep()).isCloseTo((first + second) / 2, within(1e-9));
    assertThat(ladder.unevenness())
        .isCloseTo(Math.abs(first - second) / (first + second), within(1e-9));
  }

  /** By hand: one drop more or less of either paint of a recipe of its own. */
  @Test
  void oneDropMoreOrLessMovesARungByWhatItIsSaidTo() {
    Rung rung = plan(REQUEST.withPot(PotRule.recipes().withMostDrops(20))).rungs().get(1);
    int[] drops = rung.add().stream().mapToInt(Recipe.Drops::count).toArray();
    double most = 0;
    for (int paint = 0; paint < 2; paint++) {
      for (int off : new int[] {-1, 1}) {
        int[] wrong = drops.clone();
        wrong[paint] += off;
        String text =
            rung.add().get(0).paint().name()
                + ":"
                + wrong[0]
                + ", "
                + rung.add().get(1).paint().name()
                + ":"
                + wrong[1];
        most =
            Math.max(
                most,
                Ciede2000.deltaE(
                    PREDICTOR.predict(Mix.parse(text, SHELF)).lab(), rung.prediction().lab()));
      }
    }
    assertThat(rung.oneDrop()).isCloseTo(most, within(1e-6));
  }

  @Test
  void nearlyBlackAndNearlyWhiteEndsAndUnevenStepsAreWarnedOf() {
    Ladder ladder = plan(BLACK_AND_WHITE);

    assertThat(ladder.warnings())
        .extracting(warning -> warning.rung() + " " + warning.kind().word())
        .containsExactly("1 nearly-black", "3 nearly-white", "2 step-uneven", "3 step-uneven");
    // The darkest that a surface of k1 shows has L* 116·k1^⅓ − 16.
    double darkest = 116 * Math.cbrt(OPTICS.surface().k1()) - 16;
    assertThat(ladder.warnings().get(0).text())
        .contains(String.format(Locale.ROOT, "no less than %.1f", darkest));
    assertThat(kinds(plan(BLACK_AND_WHITE.withMargin(0))))
        .containsExactly(Kind.STEP_UNEVEN, Kind.STEP_UNEVEN);
    assertThat(kinds(plan(REQUEST))).isEmpty();
  }

  @Test
  void anEndThatThePaintsDoNotReachIsWarnedOf() {
    Shade pink = new Shade.OfColour(new Swatch.OfLab(Lab.ofD65(60, 60, -20)));
    Ladder first = plan(new Ends(pink, mix("Burnt umber")).request());
    Ladder last = plan(new Ends(mix("Burnt umber"), pink).request());

    assertThat(first.warnings().get(0).kind()).isEqualTo(Kind.END_OUT_OF_REACH);
    assertThat(first.warnings().get(0).rung()).isEqualTo(1);
    assertThat(last.warnings())
        .filteredOn(warning -> warning.kind() == Kind.END_OUT_OF_REACH)
        .extracting(LadderWarning::rung)
        .containsExactly(3);
    assertThat(last.to()).isEqualTo(Lab.ofD65(60, 60, -20));
  }

  private record Ends(Shade from, Shade to) {
    LadderRequest request() {
      return LadderRequest.between(from, to, 3)
          .withPot(PotRule.onePot().withMostDrops(20))
          .withChoice(only("Bright orange", "Burnt umber"));
    }
  }

  @Test
  void anAverageThatTheShadesDoNotReachIsWarnedOf() {
    Swatch blue = new Swatch.OfLab(Lab.ofD65(40, 0, -30));
    Ladder ladder = plan(REQUEST.withCoverage(CoverageWish.ofLook(blue)));

    assertThat(kinds(ladder)).contains(Kind.LOOK_OUT_OF_REACH);
    assertThat(ladder.wantedLook()).contains(Lab.ofD65(40, 0, -30));
    assertThat(plan(REQUEST).wantedLook()).isEmpty();
  }

  // 3 : 2 : 1 of three shades, the lightest first. By hand: passes of 1, 1/2 · … in turn.
  @Test
  void rustGoesFromLightToDarkAndIsSeenOnLessAndLess() {
    Ladder ladder =
        plan(
            LadderRequest.between(mix("Burnt umber"), mix("Bright orange"), 3)
                .withPot(PotRule.onePot().withMostDrops(20))
                .withChoice(only("Bright orange", "Burnt umber"))
                .withSubject(Subject.RUST));

    assertThat(ladder.rungs().stream().mapToDouble(rung -> rung.prediction().lab().l()).boxed())
        .isSortedAccordingTo(Comparator.reverseOrder());
    assertThat(ladder.rungs().stream().mapToDouble(Rung::visibleShare).toArray())
        .containsExactly(new double[] {1 / 2.0, 1 / 3.0, 1 / 6.0}, within(1e-12));
    assertThat(Subject.RUST.word()).isEqualTo("rust");
    assertThat(Stream.of(Subject.FADING, Subject.RUBBER, Subject.METAL).map(Subject::order))
        .containsOnly(LadderOrder.DARK_TO_LIGHT);
  }

  @Test
  void theOtherOrderIsTheSameRequestTurnedRound() {
    Ladder turned = plan(REQUEST.withOrder(LadderOrder.DARK_TO_LIGHT));

    assertThat(turned.from()).isEqualTo(plan(REQUEST).to());
    assertThat(turned.rungs().get(0).prediction().lab().l())
        .isLessThan(turned.rungs().get(2).prediction().lab().l());
    assertThat(plan(REQUEST.withOrder(LadderOrder.LIGHT_TO_DARK))).isEqualTo(plan(REQUEST));
  }

  // Quarters: three shades and the base.
  @Test
  void aBaseShowsBetweenThePasses() {
    Base base = new Base.OfMix(Mix.parse("Bucket-chain rust", SHELF));
    Ladder ladder = plan(REQUEST.withBase(base));

    assertThat(ladder.baseShare()).isCloseTo(0.25, within(1e-12));
    assertThat(ladder.base())
        .contains(CoatPredictor.of(OPTICS, TristimulusWeights.D65).predict(base).lab());
    assertThat(plan(REQUEST).base()).isEmpty();
    assertThat(plan(REQUEST).baseShare()).isZero();
    // Acrylic over enamel wants care: it is warned of at the first rung, and once.
    assertThat(ladder.warnings())
        .filteredOn(warning -> warning.kind() == Kind.SOLVENT)
        .extracting(LadderWarning::rung)
        .containsExactly(1);
  }

  @Test
  void aWashIsARungOfItsOwnOverTheLast() {
    LadderRequest request =
        LadderRequest.between(mix("Bright orange"), mix("Red oxide"), 4)
            .withPot(PotRule.onePot().withMostDrops(20))
            .withChoice(only("Bright orange", "Red oxide"))
            .withWashes(Coats.parse("Harbour-dirt wash:2@1:3", SHELF));
    Ladder ladder = plan(request);

    Rung wash = ladder.rungs().get(3);
    assertThat(wash.wash()).contains(request.washes().get(0));
    assertThat(wash.coat()).isEqualTo(request.washes().get(0));
    assertThat(wash.prediction().lab())
        .isEqualTo(
            CoatPredictor.of(OPTICS, TristimulusWeights.D65)
                .last(new Base.OfMix(ladder.rungs().get(2).pot()), request.washes())
                .lab());
    assertThat(wash.step().orElseThrow())
        .isCloseTo(
            Ciede2000.deltaE(wash.prediction().lab(), ladder.rungs().get(2).prediction().lab()),
            within(1e-9));
    // Two coats of a quarter of paint over the share that it covers.
    assertThat(wash.amount().paintMillilitres())
        .isCloseTo(wash.coverage() * 0.4 * 2 / 4, within(1e-12));
    assertThat(wash.amount().thinnerMillilitres())
        .isCloseTo(wash.coverage() * 0.4 * 2 * 3 / 4, within(1e-12));
    assertThat(wash.oneDrop()).isZero();
    // Means and drops are those of the pot alone.
    assertThat(ladder.evenStep())
        .isCloseTo(
            ladder.rungs().subList(1, 3).stream()
                .mapToDouble(rung -> rung.step().orElseThrow())
                .average()
                .orElseThrow(),
            within(1e-9));
    assertThat(ladder.dropsNeeded())
        .isCloseTo(
            ladder.rungs().subList(0, 3).stream().mapToDouble(Rung::dropsNeeded).sum(),
            within(1e-9));
    assertThat(ladder.cautionsOfRungs().get(0)).containsExactly(Caution.ACRYLIC_MIST);
    assertThat(ladder.cautionsOfRungs().get(3)).contains(Caution.FRESH_AIR, Caution.OILY_RAGS);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> plan(request.withWashes(Coats.parse("Whitewash wash:3", SHELF))))
        .withMessageMatching("the wash of rung 4 takes L\\* from .* to .*, must go on falling");
  }

  @Test
  void aSecondWashOfWhiteSpiritIsWarnedOf() {
    LadderRequest request =
        LadderRequest.between(mix("Bucket-chain rust"), mix("Spud-leg brown"), 3)
            .withPot(PotRule.onePot().withMostDrops(24))
            .withChoice(only("Bucket-chain rust", "Spud-leg brown"))
            .withWashes(Coats.parse("Harbour-dirt wash:2@1:4", SHELF));

    assertThat(plan(request).warnings())
        .filteredOn(warning -> warning.kind() == Kind.SOLVENT)
        .extracting(
            warning -> warning.rung() + warning.text().replaceFirst("^.*?, ([^:]*):.*", " $1"))
        .containsExactly("3 oil over enamel");
  }

  // By hand: a pot twice as large, recipes of their own, and the most rungs below the wanted ones.
  @Test
  void whatWouldDoInsteadIsWhatDoes() {
    LadderRequest request =
        LadderRequest.between(mix("Quay-mud brown"), mix("Quay-mud brown:6, Deckhouse cream:1"), 10)
            .withPot(PotRule.onePot().withMostDrops(10))
            .withChoice(only("Quay-mud brown", "Deckhouse cream"));
    Map<String, LadderRequest> does = new LinkedHashMap<>();
    PotRule pot = request.pot();
    addIfPlanned(does, "a pot of up to 20 drops", request.withPot(pot.withMostDrops(20)));
    addIfPlanned(does, "a separate recipe for each rung", request.withPot(pot.withSeparate()));
    int rungs = 9;
    while (!addIfPlanned(does, rungs + " rungs", request.withRungs(rungs))) {
      rungs--;
    }

    assertThatExceptionOfType(NoLadderException.class)
        .isThrownBy(() -> plan(request))
        .withMessageEndingWith("these would do: " + String.join(", or ", does.keySet()))
        .satisfies(
            refusal -> {
              assertThat(refusal.reason()).isEqualTo(NoLadderException.Reason.STEPS_TOO_SMALL);
              assertThat(refusal.instead()).containsExactlyElementsOf(does.values());
            });
  }

  private static boolean addIfPlanned(
      Map<String, LadderRequest> does, String words, LadderRequest other) {
    try {
      assertThat(plan(other).rungs()).hasSize(other.rungs());
      does.put(words, other);
      return true;
    } catch (NoLadderException e) {
      return false;
    }
  }

  @Test
  void aMixThatIsDarkerThanBothEndsLeavesNoLadder() {
    LadderRequest request =
        LadderRequest.between(mix("Phthalo green"), mix("Signal red"), 4)
            .withPot(PotRule.onePot().withMostDrops(20))
            .withChoice(only("Phthalo green", "Signal red"));

    assertThatExceptionOfType(NoLadderException.class)
        .isThrownBy(() -> plan(request))
        .withMessageStartingWith("mixes between these ends don't get steadily lighter; ")
        .satisfies(
            refusal -> {
              assertThat(refusal.reason()).isEqualTo(NoLadderException.Reason.NOT_STEADY);
              assertThat(refusal.instead()).isEmpty();
            });
  }

  @Test
  void progressEndsAtOneAndAStopIsHeard() {
    List<Double> heard = new ArrayList<>();
    LadderPlanner planner = LadderPlanner.of(OPTICS, TristimulusWeights.D65);

    Ladder watched = planner.plan(REQUEST, Control.PLAIN.withProgress(heard::add));

    assertThat(watched).isEqualTo(plan(REQUEST));
    assertThat(heard).isSorted().endsWith(1.0);
    assertThatExceptionOfType(CancellationException.class)
        .isThrownBy(() -> planner.plan(REQUEST, Control.PLAIN.withCancelled(() -> true)));
  }

  @Test
  void requestsThatDoNotFitAreRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> REQUEST.withWashes(Coats.parse("Blue filter:1, Blue filter:1", SHELF)))
        .withMessage("washes are 2 of 3 rungs, must leave at least 2 rungs to mix");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> REQUEST.withCoverage(CoverageWish.ofPasses(List.of(1.0, 0.5))))
        .withMessage("there are 2 coverages, must be as many as rungs: 3");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> REQUEST.withCoverage(CoverageWish.ofShares(List.of(0.5, 0.5))))
        .withMessage("there are 2 shares, must be as many as rungs: 3");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> REQUEST.withCoverage(CoverageWish.ofShades(List.of(1.0, 1.0, 1.0))))
        .withMessage("there are 3 shares, must be as many as shades: 2");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> plan(REQUEST.withPot(PotRule.onePot().withMillilitresForAll(10))))
        .withMessage("the largest pot is 40 drops, must be at least 247 for what rung 1 covers");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new LetDown(SHELF.paint("Lamp black"), 0, SHELF.paint("Red oxide"), 4))
        .withMessage(
            "a let-down of 0 drops of 'Lamp black' in 4 of 'Red oxide', must be at least one drop"
                + " each of two paints");
    // Passes that don't fall are fine without a subject, and passes that stay the same with one.
    DoubleStream.of(0.5, 0.7)
        .forEach(
            second ->
                assertThat(
                        REQUEST
                            .withCoverage(CoverageWish.ofPasses(List.of(1.0, second, 0.5)))
                            .coverage())
                    .isNotNull());
    assertThat(
            REQUEST
                .withCoverage(CoverageWish.ofPasses(List.of(1.0, 0.5, 0.5)))
                .withSubject(Subject.RUST)
                .order())
        .isEqualTo(LadderOrder.LIGHT_TO_DARK);
  }
}
