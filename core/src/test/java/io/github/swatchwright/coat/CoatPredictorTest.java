package io.github.swatchwright.coat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.paint.Finish;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import io.github.swatchwright.testdata.DemoShelf;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CoatPredictorTest {
  private static final Shelf SHELF = ShelfJson.parse(DemoShelf.text(), DemoShelf.SOURCE);
  private static final ShelfOptics OPTICS = ShelfOptics.estimate(SHELF);
  private static final CoatPredictor PREDICTOR = CoatPredictor.of(OPTICS, TristimulusWeights.D65);
  private static final Base GREY = new Base.OfMix(Mix.parse("Dredger grey", SHELF));

  private static List<CoatStep> steps(String coats) {
    return PREDICTOR.predict(GREY, Coats.parse(coats, SHELF));
  }

  private static Lab last(String coats) {
    List<CoatStep> steps = steps(coats);
    return steps.get(steps.size() - 1).prediction().lab();
  }

  @Test
  void enoughCoatsLookLikeThePaintItself() {
    Lab masstone =
        MixPredictor.of(OPTICS, TristimulusWeights.D65)
            .predict(Mix.parse("Red oxide", SHELF))
            .lab();

    assertThat(Ciede2000.deltaE(masstone, last("Red oxide:200"))).isLessThan(1e-6);
  }

  /**
   * Derivatives are taken by a step of 1e-4 in one and by formula in the other; what another
   * surface would do, which isn't small, to first order in one and as a difference in the other.
   */
  @ParameterizedTest
  @CsvSource({"true, 0.1", "false, 2"})
  void paintThatHidesIsAsUncertainAsACoatAsByItself(boolean isSurfaceStated, double percent) {
    Paint red = Paint.of("Red", Medium.ACRYLIC, new Swatch.OfLab(Lab.ofD65(32, 50, 28)));
    Paint blue = Paint.of("Blue", Medium.ACRYLIC, new Swatch.OfLab(Lab.ofD65(20, 30, -50)));
    Optional<Saunderson> surface =
        isSurfaceStated ? Optional.of(new Saunderson(0.02, 0.4)) : Optional.empty();
    ShelfOptics optics = ShelfOptics.estimate(new Shelf("two", List.of(red, blue), surface));
    assertThat(optics.otherSurface().isPresent()).isNotEqualTo(isSurfaceStated);
    Mix purple = Mix.parse("Red:1, Blue:1", optics.shelf());
    double byItself =
        MixPredictor.of(optics, TristimulusWeights.D65)
            .withDropScatter(0)
            .predict(purple)
            .intervalDeltaE00();
    Base grey = new Base.OfSwatch(new Swatch.OfLab(Lab.ofD65(50, 0, 0)));
    double asACoat =
        CoatPredictor.of(optics, TristimulusWeights.D65)
            .last(grey, List.of(new Coat(purple, 60, 0, 1)))
            .intervalDeltaE00();
    assertThat(asACoat).isCloseTo(byItself, withinPercentage(percent));
  }

  @ParameterizedTest
  @CsvSource({"65, 20, -10, 2", "30, -8, 12, 1", "80, 0, 5, 0.5"})
  void aBareBaseIsAsUncertainAsItIsStatedToBe(double l, double a, double b, double error) {
    Base base = new Base.OfSwatch(new Swatch.OfLab(Lab.ofD65(l, a, b)), error);
    // To first order in one and by recovering another spectrum in the other.
    for (double sd : PREDICTOR.predict(base).spread().standardDeviations()) {
      assertThat(sd).isCloseTo(error, withinPercentage(3));
    }
  }

  @Test
  void theErrorOfABaseShowsThroughAThinCoatAndNotThroughPaintThatHides() {
    Swatch grey = new Swatch.OfLab(Lab.ofD65(50, 0, 0));
    for (String coats : List.of("Blue filter:1@1:15", "Dredger grey:8")) {
      List<Coat> over = Coats.parse(coats, SHELF);
      double sure = PREDICTOR.last(new Base.OfSwatch(grey, 0.01), over).intervalDeltaE00();
      double unsure = PREDICTOR.last(new Base.OfSwatch(grey, 3), over).intervalDeltaE00();
      if (coats.startsWith("Blue")) {
        assertThat(unsure).isGreaterThan(sure + 1);
      } else {
        assertThat(unsure).isCloseTo(sure, within(1e-3));
      }
    }
  }

  /** A light paint's K depends on 1 + R, which is near 1 for the dark ones above. */
  @Test
  void aLightPaintThatHidesIsAsUncertainAsByItself() {
    Swatch cream = new Swatch.OfLab(Lab.ofD65(88, 2, 15));
    ShelfOptics optics =
        ShelfOptics.estimate(
            new Shelf(
                "one",
                List.of(Paint.of("Cream", Medium.ACRYLIC, cream)),
                Optional.of(new Saunderson(0.02, 0.4))));
    Mix mix = Mix.parse("Cream", optics.shelf());
    double[] byItself =
        MixPredictor.of(optics, TristimulusWeights.D65).predict(mix).spread().standardDeviations();
    double[] asACoat =
        CoatPredictor.of(optics, TristimulusWeights.D65)
            .last(new Base.OfSwatch(cream), List.of(new Coat(mix, 400, 0, 1)))
            .spread()
            .standardDeviations();
    for (int axis = 0; axis < 3; axis++) {
      // Derivatives by a step of 1e-4 in one and by formula in the other.
      assertThat(asACoat[axis]).isCloseTo(byItself[axis], withinPercentage(0.1));
    }
  }

  // A colour beyond the lightest or the darkest that a surface can have would be cut off.
  @ParameterizedTest
  @CsvSource({"99.5, 1, 3", "14, 1, 5"})
  void aBaseThatIsNearlyWhiteOrBlackIsAsUncertainAsItIsStatedToBe(
      double l, double error, double percent) {
    Base base = new Base.OfSwatch(new Swatch.OfLab(Lab.ofD65(l, 0, 0)), error);

    assertThat(PREDICTOR.predict(base).spread().standardDeviations()[0])
        .isCloseTo(error, withinPercentage(percent));
  }

  // Four coats in one entry scatter by half as much each as one does: so do four by themselves,
  // whose errors of a quarter of the whole add up as squares.
  @Test
  void coatsOfOneEntryScatterAsCoatsByThemselvesDo() {
    Base sure = new Base.OfSwatch(new Swatch.OfLab(Lab.ofD65(60, 0, 0)), 1e-6);
    List<Coat> four = Coats.parse("Blue filter:4", SHELF);
    List<Coat> each = Collections.nCopies(4, Coats.parse("Blue filter:1", SHELF).get(0));
    for (int axis = 0; axis < 3; axis++) {
      assertThat(ofThickness(sure, four, axis))
          .isCloseTo(ofThickness(sure, each, axis), withinPercentage(0.1));
    }
  }

  /** The variance that the scatter of thickness adds on one axis. */
  private static double ofThickness(Base base, List<Coat> coats, int axis) {
    CoatPredictor even = PREDICTOR.withCoatScatter(0);
    double with = PREDICTOR.last(base, coats).spread().standardDeviations()[axis];
    double without = even.last(base, coats).spread().standardDeviations()[axis];
    return with * with - without * without;
  }

  @Test
  void aVarnishNeverHides() {
    assertThat(PREDICTOR.coatsToHide(Coats.parse("Wet-hull varnish:1", SHELF).get(0))).isInfinite();
  }

  @Test
  void twoPartsOfPaintToOneOfThinnerAreHalfAsMuchThinnerAsPaint() {
    assertThat(Coats.parse("Red oxide:1@2:1", SHELF).get(0).thinner()).isEqualTo(0.5);
  }

  @Test
  void manyThinCoatsEqualOneThick() {
    Lab one = last("Blue filter:3@1:15");
    Lab three = last("Blue filter:1@1:15, Blue filter:1@1:15, Blue filter:1@1:15");
    Lab thinner = last("Blue filter:6@1:31");

    assertThat(Ciede2000.deltaE(one, three)).isLessThan(1e-9);
    assertThat(Ciede2000.deltaE(one, thinner)).isLessThan(1e-9);
  }

  @Test
  void moreCoatsNeverHideLess() {
    SHELF.paints().stream()
        .filter(paint -> paint.whyNotComputable().isEmpty())
        .forEach(
            paint -> {
              double before = 0;
              for (CoatStep step :
                  steps(String.join(", ", Collections.nCopies(12, paint.name() + ":0.5")))) {
                assertThat(step.contrastRatio()).as(paint.name()).isBetween(before - 1e-12, 1.0);
                before = step.contrastRatio();
              }
            });
  }

  @Test
  void atItsCoatsToHideAPaintHides() {
    double coats = steps("Red oxide:1@1:2").get(0).coatsToHide();

    assertThat(steps("Red oxide:" + coats + "@1:2").get(0).contrastRatio())
        .isCloseTo(0.98, within(1e-6));
  }

  @Test
  void aSpongedCoatMixesByArea() {
    double bare = PREDICTOR.predict(GREY).reflectance().at(20);
    double full = steps("Red oxide:1").get(0).prediction().reflectance().at(20);
    double sponged = steps("Red oxide:1 over 30%").get(0).prediction().reflectance().at(20);

    assertThat(sponged).isCloseTo(0.3 * full + 0.7 * bare, within(1e-12));
  }

  @Test
  void whitewashLightensAndABlueFilterCools() {
    Lab grey = PREDICTOR.predict(GREY).lab();
    List<CoatStep> steps = steps("Whitewash wash:2@1:4, Blue filter:3@1:15");
    Lab washed = steps.get(0).prediction().lab();

    assertThat(washed.l()).isGreaterThan(grey.l());
    assertThat(steps.get(1).prediction().lab().b()).isLessThan(washed.b());
    assertThat(steps.get(1).overDarkest().l()).isLessThan(steps.get(1).overLightest().l());
  }

  @Test
  void anUnevenCoatWidensTheInterval() {
    CoatPredictor even = PREDICTOR.withCoatScatter(0);
    List<Coat> coats = Coats.parse("Whitewash wash:1@1:2", SHELF);

    double scattered = PREDICTOR.predict(GREY, coats).get(0).prediction().intervalDeltaE00();
    assertThat(even.predict(GREY, coats).get(0).prediction().intervalDeltaE00())
        .isGreaterThan(0)
        .isLessThan(scattered);
  }

  @Test
  void aGlossVarnishDarkensAMattPaint() {
    CoatPredictor varnished = PREDICTOR.withFinish(Finish.GLOSS);

    assertThat(varnished.predict(GREY).lab().l()).isLessThan(PREDICTOR.predict(GREY).lab().l());
  }

  @ParameterizedTest(name = "{0} is refused: {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          Red oxide:0|coats of 'Red oxide' is 0.0, must be a finite number above 0
          Red oxide:1@1:-2|thinner in 'Red oxide' is -2.0, must be within [0.0, 1000.0]
          Red oxide:1@0:2|paint in 'Red oxide:1@0:2' is 0.0, must be above 0
          Red oxide:1 over 130%|coverage of 'Red oxide' is 1.3, must be within [0.0, 1.0]
          Red oxide:two|'two' in the coat 'Red oxide:two' is not a number
          Red oxid:1|no paint 'Red oxid' on the shelf 'Harbour dredger, 1/72 (invented demo paints)'; nearest is 'Red oxide'
          Red oxide|'Red oxide' is not of the form Name:coats, Name:coats@paint:thinner or Name:coats@paint:thinner over 60%
          """)
  void coatsThatCannotBeAreRefused(String text, String message) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Coats.parse(text, SHELF))
        .withMessage(message);
  }
}
