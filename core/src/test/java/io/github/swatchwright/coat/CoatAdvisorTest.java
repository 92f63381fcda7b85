package io.github.swatchwright.coat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import io.github.swatchwright.testdata.DemoShelf;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CoatAdvisorTest {
  private static final Shelf SHELF = ShelfJson.parse(DemoShelf.text(), DemoShelf.SOURCE);
  private static final CoatPredictor PREDICTOR =
      CoatPredictor.of(ShelfOptics.estimate(SHELF), TristimulusWeights.D65);
  private static final CoatAdvisor ADVISOR = CoatAdvisor.of(PREDICTOR);
  private static final Base CREAM = new Base.OfMix(Mix.parse("Deckhouse cream", SHELF));

  private static Lab after(Base base, List<Coat> coats, Coat more) {
    List<Coat> all = new ArrayList<>(coats);
    all.add(more);
    return PREDICTOR.predict(base, all).get(coats.size()).prediction().lab();
  }

  @Test
  void whatOneCoatDoesIsFoundAgain() {
    Coat glaze = Coats.parse("Red oxide:2@1:5", SHELF).get(0);
    Swatch wanted = new Swatch.OfLab(after(CREAM, List.of(), glaze));

    CoatAdvice advice =
        CoatAdvisor.of(PREDICTOR).advise(CREAM, List.of(), CoatGoal.ofColour(wanted, 1));

    CoatOption best = advice.options().get(0);
    assertThat(best.coat().mix()).isEqualTo(glaze.mix());
    // Not always the same film: fewer coats are taken when they are as good within 0.1.
    double expectedOfTheGlaze =
        PREDICTOR
            .predict(CREAM, List.of(glaze))
            .get(0)
            .prediction()
            .spread()
            .expectedDeltaE00(advice.target());
    assertThat(best.expectedDeltaE00()).isLessThanOrEqualTo(expectedOfTheGlaze + 0.1);
  }

  // Over white each of 24 greys comes nearer to a dark red, and the red is the last of the shelf:
  // more paints gain something than are weighed.
  @Test
  void thePaintThatComesNearestIsAnOptionWhereverItStands() {
    List<Paint> paints = new ArrayList<>();
    for (int i = 0; i < 24; i++) {
      Swatch grey = new Swatch.OfLab(Lab.ofD65(25 + i, 0, 0));
      paints.add(Paint.of("grey " + i, Medium.ACRYLIC, grey));
    }
    Swatch red = new Swatch.OfLab(Lab.ofD65(35, 40, 25));
    paints.add(Paint.of("red", Medium.ACRYLIC, red));
    ShelfOptics optics = ShelfOptics.estimate(Shelf.of("greys", paints));
    Base white = new Base.OfSwatch(new Swatch.OfLab(Lab.ofD65(95, 0, 0)));

    CoatAdvice advice =
        CoatAdvisor.of(CoatPredictor.of(optics, TristimulusWeights.D65))
            .withMostCoats(3)
            .advise(white, List.of(), CoatGoal.ofColour(red, 1));

    assertThat(advice.options().get(0).coat().mix()).isEqualTo(Mix.parse("red", optics.shelf()));
  }

  @Test
  void anOptionIsWhatThePredictorSays() {
    List<Coat> before = Coats.parse("Whitewash wash:1@1:10", SHELF);

    CoatAdvice advice = ADVISOR.advise(CREAM, before, CoatGoal.ofShift(-10, 0, 0));

    assertThat(advice.target().l()).isCloseTo(advice.now().l() - 10, within(1e-12));
    assertThat(advice.options()).isNotEmpty();
    for (CoatOption option : advice.options()) {
      Lab lab = after(CREAM, before, option.coat());
      assertThat(option.prediction().lab()).isEqualTo(lab);
      assertThat(option.deltaE00())
          .isCloseTo(Ciede2000.deltaE(lab, advice.target()), within(1e-9))
          .isLessThan(advice.nowDeltaE00());
      assertThat(option.coat().coats()).isEqualTo(Math.rint(option.coat().coats()));
      assertThat(option.order()).isNotEmpty().allMatch(note -> note.coat() == 2);
    }
    assertThat(advice.options())
        .isSortedAccordingTo(Comparator.comparingDouble(CoatOption::expectedDeltaE00));
    assertThat(advice.options()).extracting(option -> option.coat().mix()).doesNotHaveDuplicates();
  }

  /** An option far worse than the best, ΔE00 5 or more, isn't worth a look. */
  @Test
  void noOptionIsFarWorseThanTheBestOrHardlyBetterThanNothing() {
    int left = 0;
    for (String goal : List.of("#8A4B2A", "#406080", "#C8C8B0", "#303030")) {
      Swatch wanted = new Swatch.OfSrgb(Srgb.parse(goal));
      CoatAdvice advice = ADVISOR.advise(CREAM, List.of(), CoatGoal.ofColour(wanted, 1));
      double best = advice.options().get(0).expectedDeltaE00();
      for (CoatOption option : advice.options()) {
        assertThat(option.expectedDeltaE00()).as(goal).isLessThanOrEqualTo(best + 5);
        assertThat(option.deltaE00()).as(goal).isLessThan(advice.nowDeltaE00() - 0.5);
        assertThat(option.order()).allMatch(note -> note.coat() == 1);
      }
      left += advice.options().size();
    }
    assertThat(left).isBetween(4, 40);
  }

  /** The same search by hand: every paint, coat and step of thinner through the predictor. */
  @Test
  void noTrialIsNearerThanTheBest() {
    List<String> names = List.of("Blue filter", "Red oxide");
    Swatch red = SHELF.paint("Red oxide").masstone().orElseThrow();
    CoatAdvice advice =
        ADVISOR
            .withOnly(names)
            .withMostCoats(3)
            .advise(CREAM, List.of(), CoatGoal.ofColour(red, 0.3));

    double least = advice.nowDeltaE00();
    double leastExpected = Double.MAX_VALUE;
    for (String name : names) {
      for (int coats = 1; coats <= 3; coats++) {
        for (double thinner : CoatUse.STEPS) {
          Coat coat = new Coat(Mix.parse(name, SHELF), coats, thinner, 1);
          CoatStep step = PREDICTOR.predict(CREAM, List.of(coat)).get(0);
          least = Math.min(least, Ciede2000.deltaE(step.prediction().lab(), advice.target()));
          leastExpected =
              Math.min(leastExpected, step.prediction().spread().expectedDeltaE00(advice.target()));
        }
      }
    }
    CoatOption best = advice.options().get(0);
    assertThat(best.deltaE00()).isGreaterThanOrEqualTo(least - 1e-9);
    // Fewer coats are taken when they are as good within 0.1.
    assertThat(best.expectedDeltaE00()).isBetween(leastExpected - 1e-9, leastExpected + 0.1);
  }

  @Test
  void halfWayIsHalfWay() {
    Swatch white = new Swatch.OfLab(Lab.ofD65(95, 0, 2));

    CoatAdvice advice = ADVISOR.advise(CREAM, List.of(), CoatGoal.ofColour(white, 0.5));

    assertThat(Ciede2000.deltaE(advice.target(), Lab.ofD65(95, 0, 2))).isGreaterThan(1);
    assertThat(advice.target().l()).isCloseTo((advice.now().l() + 95) / 2, within(1e-12));
    assertThat(advice.target().b()).isCloseTo((advice.now().b() + 2) / 2, within(1e-12));
  }

  // Four coats of 1 part paint to 5 of thinner are the same film as two of 1 to 2, and as one of 2
  // to 1 (X = 3 · coats ÷ (1 + t) = 2). Where thickness scatters, more coats are a little better.
  @Test
  void ofFilmsThatAreAsGoodTheOneWithTheFewestCoatsIsTaken() {
    Coat film = Coats.parse("Red oxide:4@1:5", SHELF).get(0);
    Swatch wanted = new Swatch.OfLab(after(CREAM, List.of(), film));
    CoatPredictor even = PREDICTOR.withCoatScatter(0.01);

    CoatAdvice advice =
        CoatAdvisor.of(even)
            .withOnly(List.of("Red oxide"))
            .advise(CREAM, List.of(), CoatGoal.ofColour(wanted, 1));

    assertThat(advice.options()).hasSize(1);
    assertThat(advice.options().get(0).coat().coats()).isEqualTo(1);
  }

  @Test
  void theMostCoatsAreTriedToo() {
    CoatAdvice advice =
        ADVISOR.withMostCoats(1).advise(CREAM, List.of(), CoatGoal.ofShift(-10, 0, 0));

    assertThat(advice.options()).isNotEmpty().allMatch(option -> option.coat().coats() == 1);
  }

  @Test
  void aShiftIsReadAsItIsWritten() {
    assertThat(CoatGoal.parseShift("L=3, b=-4")).isEqualTo(CoatGoal.ofShift(3, 0, -4));
    Lab target = CoatGoal.parseShift("a=2,b = -4").target(Lab.ofD65(50, 10, 20), PREDICTOR);
    assertThat(target).isEqualTo(Lab.ofD65(50, 12, 16));
    Swatch green = new Swatch.OfLab(Lab.ofD65(60, -30, 10));
    assertThat(CoatGoal.ofColour(green, 0.5).target(Lab.ofD65(50, 10, 20), PREDICTOR))
        .isEqualTo(Lab.ofD65(55, -10, 15));
  }

  @Test
  void whatNoPaintCanDoHasNoOptions() {
    Lab base = PREDICTOR.predict(CREAM).lab();
    CoatAdvice advice =
        ADVISOR
            .withOnly(List.of("Lamp black"))
            .advise(CREAM, List.of(), CoatGoal.ofShift(97 - base.l(), 0, 0));

    assertThat(advice.options()).isEmpty();
  }

  @Test
  void thinningHasTheWordsOfTheTrade() {
    // Thinner to paint, common practice: spray to 2:1, glaze 3:1 to 10:1, wash 10:1, filter to
    // 20:1.
    assertThat(CoatUse.STEPS.stream().map(CoatUse::of).map(CoatUse::word))
        .containsExactly(
            "coat", "coat", "coat", "glaze", "glaze", "glaze", "wash", "filter", "filter");
  }

  @ParameterizedTest(name = "{0} is refused: {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          b=0|the shift is 0, must move L*, a* or b*
          c=4|the shift 'c=4' is not of the form L=1, a=2, b=-3 (each at most once)
          b=1, b=2|the shift 'b=1, b=2' is not of the form L=1, a=2, b=-3 (each at most once)
          b=cool|'cool' in the shift 'b=cool' is not a number
          b=NaN|shift in b* is NaN, must be within [-200.0, 200.0]
          """)
  void shiftsThatCannotBeAreRefused(String text, String message) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> CoatGoal.parseShift(text))
        .withMessage(message);
  }

  @Test
  void aShiftOutOfTheRangeOfLightnessIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ADVISOR.advise(CREAM, List.of(), CoatGoal.ofShift(90, 0, 0)))
        .withMessageStartingWith("L* after the shift is 1")
        .withMessageEndingWith("must be within [0.0, 100.0]");
  }
}
