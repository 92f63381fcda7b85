package io.github.swatchwright.coat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.paint.Finish;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.spectrum.Bands;
import io.github.swatchwright.spectrum.Reflectance;
import io.github.swatchwright.spectrum.TristimulusWeights;
import io.github.swatchwright.testdata.DemoShelf;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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

  // Ri .05, .2, .5 and .8 are seen as .059794, .127273, .314286 and .630769 (Saunderson with k1
  // .04,
  // k2 .6); gloss is without the leading .04, satin without half of it; L* by CIE 15, by hand to
  // two
  // digits.
  @ParameterizedTest(name = "Ri {0}: matt L* {1}, satin {2}, gloss {3} (by hand)")
  @CsvSource({
    "0.05, 29.36, 23.60, 15.38",
    "0.2, 42.35, 39.12, 35.45",
    "0.5, 62.87, 61.16, 59.37",
    "0.8, 83.48, 82.42, 81.33"
  })
  void darksLoseMoreLightnessUnderGlossThanLights(
      double internal, double matt, double satin, double gloss) {
    Map<Finish, Double> expected =
        Map.of(Finish.MATT, matt, Finish.SATIN, satin, Finish.GLOSS, gloss);
    expected.forEach(
        (varnish, l) -> {
          TopSurface top = new TopSurface(new Saunderson(0.04, 0.6), Finish.MATT, varnish);
          assertThat(lightness(top.applyAsDouble(internal))).isCloseTo(l, within(0.01));
        });
  }

  // A red that is .05 inside up to 580 nm and .5 beyond: seen .059794 and .314286 matt, .039794 and
  // .294286 satin, .019794 and .274286 gloss (Saunderson, by hand). Chroma comes from these by the
  // CIE tables alone, without the class that is tested.
  @Test
  @DisplayName("a matt red gains chroma under satin, and more under gloss (Saunderson, by hand)")
  void glossSaturatesARed() {
    double[] internal = red(0.05, 0.5);
    double matt = chroma(red(0.059794, 0.314286));
    double satin = chroma(red(0.039794, 0.294286));
    double gloss = chroma(red(0.019794, 0.274286));
    Map<Finish, Double> expected =
        Map.of(Finish.MATT, matt, Finish.SATIN, satin, Finish.GLOSS, gloss);

    assertThat(satin).isGreaterThan(matt + 3);
    assertThat(gloss).isGreaterThan(satin + 3);
    expected.forEach(
        (varnish, chroma) -> {
          TopSurface top = new TopSurface(new Saunderson(0.04, 0.6), Finish.MATT, varnish);
          // Six digits of reflectance leave three of chroma.
          assertThat(chroma(Arrays.stream(internal).map(top).toArray()))
              .isCloseTo(chroma, within(0.01));
        });
  }

  private static double[] red(double dark, double light) {
    double[] values = new double[Bands.COUNT];
    Arrays.setAll(values, band -> band <= 20 ? dark : light);
    return values;
  }

  private static double chroma(double[] seen) {
    Lab lab = TristimulusWeights.D65.xyz(seen).toLab();
    return Math.hypot(lab.a(), lab.b());
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
