package io.github.swatchwright.coat;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.mix.Application;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.PaintChoice;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import io.github.swatchwright.testdata.DemoShelf;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class CoatPlanTest {
  private static final Shelf SHELF = ShelfJson.parse(DemoShelf.text(), DemoShelf.SOURCE);
  private static final CoatPredictor PREDICTOR =
      CoatPredictor.of(ShelfOptics.estimate(SHELF), TristimulusWeights.D65);
  private static final Base GREY = new Base.OfMix(Mix.parse("Dredger grey", SHELF));

  private static CoatPlan plan(String coats) {
    return CoatPlan.of(PREDICTOR, GREY, Coats.parse(coats, SHELF));
  }

  /** What to paint of one paint, to come half way to it. */
  private static CoatAdvice advice(String paint) {
    Swatch masstone = SHELF.paint(paint).masstone().orElseThrow();
    return CoatAdvisor.of(PREDICTOR)
        .withOnly(List.of(paint))
        .withMostCoats(2)
        .advise(GREY, List.of(), CoatGoal.ofColour(masstone, 0.5));
  }

  @Test
  void whatIsAddedLaterKeepsAllThatIsThere() {
    CoatPlan bare = plan("Bucket-chain rust:2, Red oxide:1");
    CoatAmounts amounts =
        CoatAmounts.of(100, Application.USUAL, Coats.parse("Bucket-chain rust:2", SHELF));
    CoatAdvice advice = advice("Red oxide");
    Chipping chipping = new Chipping(2, 0.2);
    BasePlan below =
        BasePlan.of(
            BaseFinder.of(PREDICTOR),
            new Swatch.OfLab(Lab.ofD65(45, 0, 0)),
            Coats.parse("Blue filter:1", SHELF),
            PaintChoice.ALL.withOnly(Set.of("Dredger grey")),
            0);

    CoatPlan all =
        bare.withAmounts(amounts).withAdvice(advice).withBelow(below).withChipping(chipping);

    assertThat(all.amounts()).contains(amounts);
    assertThat(all.advice()).contains(advice);
    assertThat(all.below()).contains(below);
    assertThat(all.chipping()).contains(chipping);
    assertThat(all.steps()).isEqualTo(bare.steps());
    assertThat(all.order()).isEqualTo(bare.order());
    assertThat(all.ends()).isEqualTo(PreHighlight.usual());
  }

  @Test
  void coatsAreLookedAtOverThePreHighlightThatIsSet() {
    Swatch dark = new Swatch.OfLab(Lab.ofD65(30, 10, 5));
    Swatch light = new Swatch.OfLab(Lab.ofD65(70, -5, 10));
    CoatPredictor over = PREDICTOR.withPreHighlight(new PreHighlight(dark, light));
    List<Coat> coats = Coats.parse("Blue filter:2, Whitewash wash:1", SHELF);

    CoatPlan plan = CoatPlan.of(over, GREY, coats);

    assertThat(plan.ends()).isEqualTo(new PreHighlight(dark, light));
    assertThat(plan.steps().get(1).overDarkest())
        .isEqualTo(PREDICTOR.last(new Base.OfSwatch(dark), coats).lab());
    assertThat(plan.steps().get(1).overLightest())
        .isEqualTo(PREDICTOR.last(new Base.OfSwatch(light), coats).lab());
  }

  @Test
  void onlyTheWornCoatIsChippedAndTheWaitIsThatOfTheCoatBelowIt() {
    CoatPlan plan = plan("Bucket-chain rust:2, Red oxide:1").withChipping(new Chipping(2, 0.2));

    assertThat(plan.chippingOf(1)).isEmpty();
    assertThat(plan.chippingOf(2))
        .hasSize(5)
        .first()
        .isEqualTo("Let the coat below dry: " + Wait.after(Medium.ENAMEL).words() + ".");
    CoatPlan first = plan("Red oxide:1").withChipping(new Chipping(1, 0.2));
    assertThat(first.chippingOf(1))
        .first()
        .isEqualTo("Let the coat below dry: " + Wait.after(Medium.ACRYLIC).words() + ".");
    assertThat(plan("Red oxide:1").chippingOf(1)).isEmpty();
  }

  @Test
  void theWorstOfEachCoatComesFirst() {
    CoatPlan plan = plan("Whitewash wash:2@1:4, Blue filter:3@1:15");

    assertThat(plan.orderOf(1)).extracting(OrderNote::verdict).containsOnly(SolventVerdict.SAFE);
    assertThat(plan.orderOf(2))
        .extracting(OrderNote::verdict)
        .containsExactly(SolventVerdict.CLASH, SolventVerdict.SAFE);
    assertThat(plan.orderOf(2)).extracting(OrderNote::upper).containsOnly(Medium.ENAMEL);
    assertThat(plan.orderOf(3)).isEmpty();
  }

  @Test
  void mediaAndCautionsAreThoseOfTheCoatsAndOfWhatIsAdvised() {
    CoatPlan acrylic = plan("Red oxide:1");
    assertThat(acrylic.media()).containsExactly(Medium.ACRYLIC);
    assertThat(acrylic.cautions()).containsExactly(Caution.ACRYLIC_MIST, Caution.DATA_SHEET);
    assertThat(acrylic.closingCautions()).containsExactly(Caution.DATA_SHEET);

    CoatPlan advised = acrylic.withAdvice(advice("Spud-leg brown"));
    assertThat(advised.media()).containsExactly(Medium.ACRYLIC, Medium.ENAMEL);
    assertThat(advised.cautions())
        .contains(Caution.ACRYLIC_MIST, Caution.FLAMES, Caution.OILY_RAGS, Caution.DATA_SHEET);
    assertThat(advised.closingCautions())
        .contains(Caution.FLAMES, Caution.OILY_RAGS, Caution.DATA_SHEET)
        .doesNotContain(Caution.ACRYLIC_MIST);
  }

  // An extractor is stricter than moving air: who is told of one isn't told of the other.
  @Test
  void movingAirIsEnoughOnlyWhereNothingIsSprayed() {
    CoatPlan brushed = plan("Blue filter:1");
    assertThat(brushed.cautionsOfSteps().get(0))
        .contains(Caution.FRESH_AIR)
        .doesNotContain(Caution.EXTRACTION);
    CoatPlan sprayedFirst = plan("Bucket-chain rust:1, Blue filter:1");
    assertThat(sprayedFirst.cautionsOfSteps().get(0)).contains(Caution.EXTRACTION);
    assertThat(sprayedFirst.cautionsOfSteps().get(1)).doesNotContain(Caution.FRESH_AIR);

    // As advised, and no step: a brushed wash first among the coats, then a sprayed one.
    CoatPlan advised = plan("Red oxide:1").withAdvice(advice("Harbour-dirt wash"));
    assertThat(advised.closingCautions()).contains(Caution.FRESH_AIR);
    CoatAdvice wash = advice("Harbour-dirt wash");
    CoatAdvice sprayed = advice("Spud-leg brown");
    List<CoatOption> both = List.of(wash.options().get(0), thick(sprayed.options().get(0)));
    CoatAdvice two = new CoatAdvice(wash.now(), wash.target(), wash.nowDeltaE00(), both);
    assertThat(plan("Red oxide:1").withAdvice(two).closingCautions())
        .contains(Caution.EXTRACTION)
        .doesNotContain(Caution.FRESH_AIR);
  }

  /** The same option, thinned so little that it is sprayed. */
  private static CoatOption thick(CoatOption option) {
    Coat coat = new Coat(option.coat().mix(), 1, 1, 1);
    return new CoatOption(
        coat, option.prediction(), option.deltaE00(), option.expectedDeltaE00(), option.order());
  }

  @Test
  void anOptionIsCalledByItsUseAndTellsItsWorst() {
    CoatOption option =
        CoatAdvisor.of(PREDICTOR)
            .withOnly(List.of("Blue filter"))
            .advise(GREY, Coats.parse("Whitewash wash:2", SHELF), CoatGoal.parseShift("L=-3, b=-4"))
            .options()
            .get(0);

    assertThat(option.use()).isEqualTo(CoatUse.FILTER);
    // Over the acrylic it would be safe; the enamel wash between is lifted.
    assertThat(option.worst().map(OrderNote::verdict)).contains(SolventVerdict.CLASH);
    assertThat(option.order()).extracting(OrderNote::coat).containsOnly(2);
  }
}
