package io.github.swatchwright.coat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.PaintChoice;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import io.github.swatchwright.testdata.DemoShelf;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class BasePlanTest {
  private static final Shelf SHELF = ShelfJson.parse(DemoShelf.text(), DemoShelf.SOURCE);
  private static final CoatPredictor PREDICTOR =
      CoatPredictor.of(ShelfOptics.estimate(SHELF), TristimulusWeights.D65);
  private static final BaseFinder FINDER = BaseFinder.of(PREDICTOR);
  private static final PaintChoice GREYS =
      PaintChoice.ALL.withOnly(Set.of("Dredger grey", "Hull black", "Enamel off-white"));
  private static final List<Coat> FILTER = Coats.parse("Blue filter:2", SHELF);
  private static final Swatch END = new Swatch.OfLab(Lab.ofD65(45, -1, -4));

  private static Lab end(Base base) {
    return PREDICTOR.last(base, FILTER).lab();
  }

  @Test
  void thePreHighlightEndsAsMuchDarkerAndLighterAsWanted() {
    BasePlan plan = BasePlan.of(FINDER, END, FILTER, GREYS, 5);

    PreHighlight ends = plan.preHighlight().orElseThrow();
    // The search ends within ΔE00 0.01.
    assertThat(end(new Base.OfSwatch(ends.darkest())).l()).isCloseTo(40, within(0.02));
    assertThat(end(new Base.OfSwatch(ends.lightest())).l()).isCloseTo(50, within(0.02));
    assertThat(end(new Base.OfSwatch(ends.lightest())).a()).isCloseTo(-1, within(0.02));
    assertThat(end(new Base.OfSwatch(ends.lightest())).b()).isCloseTo(-4, within(0.02));
    assertThat(plan.colour().end()).isEqualTo(END.lab());
    assertThat(plan.base()).isEqualTo(plan.recipes().get(0).toBase());
  }

  // White spirit of the filter lifts enamel, so that the base is acrylic: then its highlights are.
  @Test
  void thePreHighlightIsOfTheBasesMedium() {
    BasePlan plan = BasePlan.of(FINDER, END, FILTER, GREYS, 5);

    assertThat(plan.base().medium()).contains(Medium.ACRYLIC);
    for (BasePlan part : List.of(plan.darkest().orElseThrow(), plan.lightest().orElseThrow())) {
      assertThat(part.recipes()).isNotEmpty();
      assertThat(part.recipes())
          .allSatisfy(recipe -> assertThat(recipe.toBase().medium()).contains(Medium.ACRYLIC));
    }
  }

  @Test
  void withoutSpreadThereIsNoPreHighlight() {
    BasePlan plan = BasePlan.of(FINDER, END, FILTER, GREYS, 0);

    assertThat(plan.preHighlight()).isEmpty();
    assertThat(plan.recipes()).isNotEmpty();
  }

  @Test
  void theEndsOfAWhiteAndOfABlackStayWithinLightness() {
    assertThat(of(98).lightest().orElseThrow().colour().end().l()).isEqualTo(100);
    assertThat(of(2).darkest().orElseThrow().colour().end().l()).isZero();
  }

  private static BasePlan of(double l) {
    return BasePlan.of(FINDER, new Swatch.OfLab(Lab.ofD65(l, 0, 0)), FILTER, GREYS, 5);
  }

  // Each base looks the same below paint that hides, so that none is mixed.
  @Test
  void belowCoatsThatHideTheBaseIsOnlyAColour() {
    BasePlan plan = BasePlan.of(FINDER, END, Coats.parse("Red oxide:8", SHELF), GREYS, 5);

    assertThat(plan.recipes()).isEmpty();
    assertThat(plan.base()).isEqualTo(new Base.OfSwatch(new Swatch.OfLab(plan.colour().base())));
    assertThat(plan.preHighlight()).isPresent();
  }
}
