package io.github.swatchwright.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.paint.Effect;
import io.github.swatchwright.paint.Finish;
import io.github.swatchwright.paint.Make;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.List;
import org.junit.jupiter.api.Test;

class ShelfReachTest {

  private static Paint paint(String name, double l, double a, double b) {
    return Paint.of(name, Medium.ACRYLIC, new Swatch.OfLab(Lab.ofD65(l, a, b)))
        .withMake(Make.READY_MIXED);
  }

  private static ShelfReach reach(Paint... paints) {
    return ShelfReach.of(
        ShelfOptics.estimate(Shelf.of("bench", List.of(paints))), TristimulusWeights.D65);
  }

  @Test
  void blackAndWhiteReachGreysAndLeaveEveryHueAGap() {
    ShelfReach reach = reach(paint("White", 95, 0, 0), paint("Black", 15, 0, 0));

    assertThat(reach.gaps())
        .extracting(ShelfReach.Gap::name)
        .contains("middle blue", "light yellow", "dark green and teal", "middle red and orange")
        .doesNotContain("dark grey", "middle grey", "light grey");
    assertThat(reach.grid())
        .filteredOn(tried -> tried.lab().chroma() < 1)
        .allMatch(ShelfReach.GridColour::withinReach);
    assertThat(reach.share()).isBetween(0.005, 0.1);
    // The furthest colours are the strongest: gaps come in that order.
    assertThat(reach.gaps())
        .isSortedAccordingTo(
            (a, b) ->
                Double.compare(b.furthest().nearestDeltaE00(), a.furthest().nearestDeltaE00()));
  }

  @Test
  void aPaintClosesItsGap() {
    ShelfReach without = reach(paint("White", 95, 0, 0), paint("Black", 15, 0, 0));
    ShelfReach with =
        reach(paint("White", 95, 0, 0), paint("Black", 15, 0, 0), paint("Blue", 40, 10, -55));

    assertThat(without.gaps()).extracting(ShelfReach.Gap::name).contains("middle blue");
    assertThat(with.share()).isGreaterThan(without.share());
    assertThat(with.grid().stream().mapToDouble(ShelfReach.GridColour::nearestDeltaE00).sum())
        .isLessThan(
            without.grid().stream().mapToDouble(ShelfReach.GridColour::nearestDeltaE00).sum());
  }

  /**
   * Against the search through whole drops, which tries every recipe: a colour that it comes within
   * the limit of must not be called out of reach.
   */
  @Test
  void saysOfNoReachedColourThatItIsOutOfReach() {
    ShelfOptics optics =
        ShelfOptics.estimate(
            Shelf.of(
                "bench",
                List.of(
                    paint("White", 95, 0, 0),
                    paint("Black", 15, 0, 0),
                    paint("Red", 40, 55, 35),
                    paint("Ochre", 65, 12, 55),
                    paint("Blue", 35, 5, -40))));
    ShelfReach reach = ShelfReach.of(optics, TristimulusWeights.D65);
    Matcher matcher = Matcher.of(optics, TristimulusWeights.D65);
    int reached = 0;

    for (int i = 0; i < reach.grid().size(); i += 9) {
      ShelfReach.GridColour tried = reach.grid().get(i);
      MatchRequest request =
          MatchRequest.of(new Swatch.OfLab(tried.lab())).withMostDrops(12).withAlternatives(1);
      if (matcher.match(request).reach().nearestDeltaE00() <= ShelfReach.LIMIT) {
        reached++;
        assertThat(tried.withinReach()).as("%s", tried).isTrue();
      }
    }
    assertThat(reached).isGreaterThan(10);
  }

  @Test
  void isTheSameEveryTime() {
    Paint[] paints = {
      paint("White", 95, 0, 0), paint("Red", 40, 55, 35), paint("Blue", 30, 10, -45)
    };

    assertThat(reach(paints)).isEqualTo(reach(paints));
  }

  @Test
  void needsAPaintToComputeWith() {
    Paint brass =
        Paint.of("Brass", Medium.ACRYLIC)
            .withFinish(Finish.SATIN)
            .withMasstone(new Swatch.OfLab(Lab.ofD65(60, 5, 40)))
            .withEffect(Effect.METALLIC);

    assertThatThrownBy(() -> reach(brass))
        .hasMessage("the shelf 'bench' holds no paint that can be computed with");
  }
}
