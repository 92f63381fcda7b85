package io.github.swatchwright.ladder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.coat.Base;
import io.github.swatchwright.coat.Coat;
import io.github.swatchwright.coat.CoatPredictor;
import io.github.swatchwright.coat.Coats;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.colour.Xyz;
import io.github.swatchwright.difference.Cie76;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.paint.PaintChoice;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import io.github.swatchwright.testdata.DemoShelf;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class CoverageTest {
  private static final Shelf SHELF = ShelfJson.parse(DemoShelf.text(), "demo shelf");
  private static final ShelfOptics OPTICS = ShelfOptics.estimate(SHELF);
  private static final LadderPlanner PLANNER = LadderPlanner.of(OPTICS, TristimulusWeights.D65);

  private static LadderRequest request() {
    return LadderRequest.between(
        new Shade.OfMix(Mix.parse("Bright orange:3, Yellow oxide:1", SHELF)),
        new Shade.OfMix(Mix.parse("Red oxide:2, Burnt umber:1", SHELF)),
        4);
  }

  private static Swatch colour(String hex) {
    return new Swatch.OfSrgb(Srgb.parse(hex));
  }

  private static double[] coverages(Ladder ladder) {
    return ladder.rungs().stream().mapToDouble(Rung::coverage).toArray();
  }

  private static double[] visible(Ladder ladder) {
    return ladder.rungs().stream().mapToDouble(Rung::visibleShare).toArray();
  }

  private static Lab average(List<Lab> colours, double[] shares) {
    double x = 0;
    double y = 0;
    double z = 0;
    for (int i = 0; i < shares.length; i++) {
      Xyz xyz = colours.get(i).toXyz();
      x += shares[i] * xyz.x();
      y += shares[i] * xyz.y();
      z += shares[i] * xyz.z();
    }
    return new Xyz(x, y, z, colours.get(0).white()).toLab();
  }

  @Test
  @DisplayName("even: four shades of a quarter each want coverages of 1, 1/2, 1/3 and 1/4")
  void evenShares() {
    Ladder ladder = PLANNER.plan(request());

    assertThat(coverages(ladder))
        .containsExactly(new double[] {1, 0.5, 1 / 3.0, 0.25}, within(1e-12));
    assertThat(visible(ladder))
        .containsExactly(new double[] {0.25, 0.25, 0.25, 0.25}, within(1e-12));
  }

  @Test
  @DisplayName("wanted shares come out, and given passes give those shares again")
  void sharesToPassesAndBack() {
    List<Double> wanted = List.of(0.3, 0.25, 0.2, 0.1);
    Ladder ladder =
        PLANNER.plan(
            request()
                .withBase(new Base.OfSwatch(colour("#656A6C")))
                .withCoverage(CoverageWish.ofShares(wanted)));
    Ladder again =
        PLANNER.plan(
            request()
                .withBase(new Base.OfSwatch(colour("#656A6C")))
                .withCoverage(
                    CoverageWish.ofPasses(Arrays.stream(coverages(ladder)).boxed().toList())));

    assertThat(visible(ladder)).containsExactly(new double[] {0.3, 0.25, 0.2, 0.1}, within(1e-12));
    assertThat(ladder.baseShare()).isCloseTo(0.15, within(1e-12));
    assertThat(visible(again)).containsExactly(visible(ladder), within(1e-12));
  }

  @Test
  @DisplayName("the look is the average of XYZ by visible share")
  void lookIsTheAverageByArea() {
    Ladder ladder = PLANNER.plan(request().withCoverage(CoverageWish.FALLING));
    Lab expected =
        average(
            ladder.rungs().stream().map(rung -> rung.prediction().lab()).toList(), visible(ladder));

    assertThat(Ciede2000.deltaE(ladder.look(), expected)).isLessThan(1e-6);
  }

  @Test
  @DisplayName("with a wash over all, the look is that of the same coats one over another")
  void lookUnderAWashAgreesWithTheStackOfCoats() {
    List<Coat> washes = Coats.parse("Harbour-dirt wash:3@1:4", SHELF);
    Base base = new Base.OfSwatch(colour("#656A6C"));
    Ladder ladder = PLANNER.plan(request().withBase(base).withWashes(washes));
    List<Coat> coats = new ArrayList<>();
    for (Rung rung : ladder.rungs()) {
      // 1000 coats hide, whatever the paint.
      coats.add(
          rung.wash()
              .map(w -> new Coat(w.mix(), w.coats(), w.thinner(), rung.coverage()))
              .orElse(new Coat(rung.pot(), 1000, 0, rung.coverage())));
    }
    Lab stacked =
        CoatPredictor.of(OPTICS, TristimulusWeights.D65)
            .predict(base, coats)
            .get(coats.size() - 1)
            .prediction()
            .lab();

    assertThat(Ciede2000.deltaE(ladder.look(), stacked)).isLessThan(1e-6);
  }

  @Test
  @DisplayName("a wanted average that the shades can give is given")
  void wantedAverageIsMet() {
    // A pot large enough that whole drops don't move its shades.
    LadderRequest large =
        request()
            .withPot(
                PotRule.onePot().withLeastDrops(40).withMostDrops(600).withMillilitresForAll(10));
    Ladder bare = PLANNER.plan(large);
    List<Lab> shades = bare.rungs().stream().map(rung -> rung.prediction().lab()).toList();
    Lab wanted = average(shades, new double[] {0.5, 0.1, 0.3, 0.1});
    Ladder ladder = PLANNER.plan(large.withCoverage(CoverageWish.ofLook(new Swatch.OfLab(wanted))));

    // The pot is planned again for the shares found, and its whole drops move the shades: the
    // average is sought of the shades that there are in the end. In CIELAB's own distance, in
    // which it is sought, a grid of all their shares comes no nearer than the 0.1 that the pull
    // towards usual shares costs. 0.8 is what half of the observers notice (ISO/TR 28642, from
    // memory).
    List<Lab> last = ladder.rungs().stream().map(rung -> rung.prediction().lab()).toList();
    assertThat(Cie76.deltaE(ladder.look(), wanted)).isLessThan(nearestOfGrid(last, wanted) + 0.1);
    assertThat(Ciede2000.deltaE(ladder.look(), wanted)).isLessThan(0.8);
  }

  /** The least ΔE*ab of an average of four colours, over shares in steps of 2.5 %. */
  private static double nearestOfGrid(List<Lab> four, Lab wanted) {
    int steps = 40;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= steps; i++) {
      for (int j = 0; i + j <= steps; j++) {
        for (int k = 0; i + j + k <= steps; k++) {
          double[] tried = {i, j, k, steps - i - j - k};
          Arrays.setAll(tried, share -> tried[share] / steps);
          least = Math.min(least, Cie76.deltaE(average(four, tried), wanted));
        }
      }
    }
    return least;
  }

  @Test
  @DisplayName("a wanted average out of reach is neared as a grid of shares can't better")
  void nearestAverageAgreesWithAGrid() {
    List<Lab> colours = List.of(Lab.ofD65(55, 40, 50), Lab.ofD65(35, 25, 25), Lab.ofD65(20, 8, 8));
    Lab wanted = Lab.ofD65(40, 10, 35);
    double[] shares = NearestAverage.shares(colours, wanted, new double[] {0.5, 0.3, 0.2});
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= 200; i++) {
      for (int j = 0; i + j <= 200; j++) {
        double[] tried = {i / 200.0, j / 200.0, (200 - i - j) / 200.0};
        least = Math.min(least, Ciede2000.deltaE(average(colours, tried), wanted));
      }
    }

    // Near is measured in weighted XYZ, ΔE00 is not: far from the colour they differ a little.
    assertThat(Ciede2000.deltaE(average(colours, shares), wanted)).isLessThan(1.1 * least);
  }

  @Test
  @DisplayName("for a subject, a wanted average never makes a pass cover more than the one before")
  void fallingSharesStayFalling() {
    for (String wanted : List.of("#5A3226", "#8A4B2A", "#C86A28")) {
      Ladder ladder =
          PLANNER.plan(
              request()
                  .withSubject(Subject.RUST)
                  .withCoverage(CoverageWish.ofLook(colour(wanted))));
      double[] coverages = coverages(ladder);
      for (int i = 1; i < coverages.length; i++) {
        assertThat(coverages[i]).isLessThanOrEqualTo(coverages[i - 1] + 1e-12);
      }
    }
  }

  @Test
  @DisplayName("shares of a photo's colours go to the rungs nearest to them")
  void sharesOfShadesAreAllotted() {
    Ladder bare = PLANNER.plan(request());
    List<Shade> shades = new ArrayList<>();
    for (int rung : new int[] {3, 0, 1}) {
      shades.add(new Shade.OfColour(new Swatch.OfLab(bare.rungs().get(rung).prediction().lab())));
    }
    PaintChoice choice =
        PaintChoice.ALL.withOnly(
            Set.of("Bright orange", "Yellow oxide", "Red oxide", "Burnt umber"));
    Ladder ladder =
        PLANNER.plan(
            LadderRequest.of(shades, 4)
                .withOrder(LadderOrder.LIGHT_TO_DARK)
                .withPot(PotRule.recipes())
                .withChoice(choice)
                .withCoverage(CoverageWish.ofShades(List.of(5.0, 1.0, 2.0))));

    double[] visible = visible(ladder);
    assertThat(Arrays.stream(visible).sum()).isCloseTo(1, within(1e-12));
    // 5/8, 1/8 and 2/8, of which a rung that is near but not the same passes a part on.
    assertThat(visible[3]).isCloseTo(0.625, within(0.1));
    assertThat(visible[0]).isCloseTo(0.125, within(0.1));
    assertThat(visible[1]).isCloseTo(0.25, within(0.1));
  }

  @Property(tries = 200)
  void projectionLiesOnTheSimplexAndKeepsOrder(
      @ForAll @Size(5) List<@DoubleRange(min = -2, max = 3) Double> values) {
    double[] given = values.stream().mapToDouble(Double::doubleValue).toArray();
    double[] projected = NearestAverage.projected(given);

    assertThat(Arrays.stream(projected).sum()).isCloseTo(1, within(1e-12));
    for (int i = 0; i < given.length; i++) {
      assertThat(projected[i]).isNotNegative();
      for (int j = 0; j < given.length; j++) {
        if (given[i] > given[j]) {
          assertThat(projected[i]).isGreaterThanOrEqualTo(projected[j]);
        }
      }
    }
  }

  @Test
  @DisplayName("coverages that can't be are refused")
  void refusesCoverages() {
    assertThatThrownBy(() -> CoverageWish.ofPasses(List.of(1.0, 1.5)))
        .hasMessage("coverage 2 is 1.5, must be within [0.0, 1.0]");
    assertThatThrownBy(
            () -> request().withCoverage(CoverageWish.ofPasses(List.of(0.9, 0.5, 0.3, 0.1))))
        .hasMessage("coverage 1 is 0.9, must be 1 unless a base is stated");
    assertThatThrownBy(
            () ->
                request()
                    .withCoverage(CoverageWish.ofPasses(List.of(1.0, 0.2, 0.3, 0.1)))
                    .withSubject(Subject.RUST))
        .hasMessage(
            "coverage 3 is 0.3, must be at most coverage 2, 0.2: each pass of rust covers less");
    assertThatThrownBy(
            () -> request().withCoverage(CoverageWish.ofShares(List.of(0.3, 0.3, 0.2, 0.1))))
        .hasMessageStartingWith("sum of shares is 0.9");
    assertThatThrownBy(() -> CoverageWish.ofShares(List.of(0.6, 0.6)))
        .hasMessageStartingWith("sum of shares is 1.2");
  }
}
