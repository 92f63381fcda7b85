package io.github.swatchwright.coat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.paint.Finish;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.spectrum.Reflectance;
import io.github.swatchwright.spectrum.TristimulusWeights;
import io.github.swatchwright.testdata.DemoShelf;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class VarnishTest {
  private static final Shelf SHELF = ShelfJson.parse(DemoShelf.text(), "demo shelf");
  private static final CoatPredictor PREDICTOR =
      CoatPredictor.of(ShelfOptics.estimate(SHELF), TristimulusWeights.D65);

  private static double seen(Finish varnish) {
    return new TopSurface(new Saunderson(0.04, 0.6), Finish.MATT, varnish).applyAsDouble(0.05);
  }

  private static double lightness(double reflectance) {
    return TristimulusWeights.D65.xyz(Reflectance.constant(reflectance)).toLab().l();
  }

  // Rm = k1 + (1 − k1)(1 − k2)Ri/(1 − k2·Ri), worked by hand for k1 .04, k2 .6, Ri .05; without the
  // leading k1 where gloss mirrors it away, with half of it under satin. L* follows from CIE 15.
  @Test
  @DisplayName("a matt dark seen as .059794, L* 29, is .019794, L* 15, under gloss (by hand)")
  void glossTakesTheSurfacesOwnReflectionAway() {
    assertThat(seen(Finish.MATT)).isCloseTo(0.059794, within(5e-7));
    assertThat(seen(Finish.SATIN)).isCloseTo(0.039794, within(5e-7));
    assertThat(seen(Finish.GLOSS)).isCloseTo(0.019794, within(5e-7));
    assertThat(lightness(0.059794)).isCloseTo(29, within(0.5));
    assertThat(lightness(0.019794)).isCloseTo(15, within(0.5));
  }

  private static Lab last(String coats) {
    List<CoatStep> steps =
        PREDICTOR.predict(
            new Base.OfSwatch(SHELF.paint("Dredger grey").masstone().orElseThrow()),
            Coats.parse(coats, SHELF));
    return steps.get(steps.size() - 1).prediction().lab();
  }

  @Test
  void aMattRedIsDarkerAndMoreSaturatedTheGlossierItsVarnish() {
    Lab bare = last("Red oxide:4");
    Lab matt = last("Red oxide:4, Weathered-deck varnish:1");
    Lab satin = last("Red oxide:4, Half-sheen varnish:1");
    Lab gloss = last("Red oxide:4, Wet-hull varnish:1");

    assertThat(matt).isEqualTo(bare);
    assertThat(satin.l()).isBetween(gloss.l(), matt.l());
    assertThat(gloss.l()).isLessThan(matt.l() - 1);
    assertThat(Math.hypot(gloss.a(), gloss.b())).isGreaterThan(Math.hypot(matt.a(), matt.b()) + 1);
  }

  @Test
  void mattOverGlossBringsTheMattColourBack() {
    assertThat(last("Red oxide:4, Wet-hull varnish:1, Weathered-deck varnish:1"))
        .isEqualTo(last("Red oxide:4"));
  }

  // Upper .6 · (1 − .15) = .51 of the area; lower .8 of the other .49 = .392; base .098. By hand.
  @Test
  void chipsLeaveTheSharesWorkedByHand() {
    List<Coat> coats = Coats.parse("Red oxide:2 over 80%, Deckhouse cream:2 over 60%", SHELF);
    List<Coat> chipped = List.of(coats.get(0), coats.get(1).chipped(0.15));
    CoatPlan plan =
        CoatPlan.of(
            PREDICTOR,
            new Base.OfSwatch(SHELF.paint("Dredger grey").masstone().orElseThrow()),
            chipped);

    assertThat(plan.sharesOnTop())
        .containsExactly(new double[] {0.098, 0.392, 0.51}, within(1e-12));
    assertThat(plan.steps().get(1).patches().stream().mapToDouble(SeenPatch::share).sum())
        .isCloseTo(1, within(1e-12));
  }
}
