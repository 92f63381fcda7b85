package io.github.swatchwright.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.spectrum.TristimulusWeights;
import io.github.swatchwright.testdata.DemoShelf;
import org.junit.jupiter.api.Test;

class WholeDropsTest {
  private static final Shelf SHELF = ShelfJson.parse(DemoShelf.text(), DemoShelf.SOURCE);
  private static final MixPredictor PREDICTOR =
      MixPredictor.of(ShelfOptics.estimate(SHELF), TristimulusWeights.D65);

  private static WholeDrops drops(String mix) {
    return new WholeDrops(Mix.parse(mix, SHELF), PREDICTOR);
  }

  @Test
  void wholeRatiosAreMixedAsTheyAre() {
    assertThat(drops("Titanium white:3, Lamp black:1").enoughFor(0.5).orElseThrow().toText())
        .isEqualTo("Titanium white:9, Lamp black:3");
    assertThat(drops("Titanium white:3, Lamp black:1").offBy(Mix.parse("Lamp black:1", SHELF)))
        .isGreaterThan(10);
  }

  @Test
  void aTraceNeedsAPotThatIsLargeEnoughForADropOfIt() {
    WholeDrops trace = drops("Titanium white:40.3, Phthalo blue:1.01");

    assertThat(trace.enoughFor(0.2)).isEmpty();
    double least = trace.leastMillilitres(0.2).orElseThrow();
    assertThat(least).isBetween(1.0, 3.0); // 40 drops of 0.045 ml to one of blue
    assertThat(trace.enoughFor(least)).isPresent();
    assertThat(trace.offBy(trace.enoughFor(least).orElseThrow()))
        .isLessThanOrEqualTo(WholeDrops.NOT_SEEN);
  }

  /** By trial: a quarter of a drop more at a time. */
  @Test
  void noSmallerPotWouldDo() {
    WholeDrops trace = drops("Titanium white:40.3, Phthalo blue:1.01");
    double least = trace.leastMillilitres(0.2).orElseThrow();
    double drop = SHELF.paint("Titanium white").dropMillilitres();
    for (double volume = 0.2; volume < least - drop; volume += drop / 4) {
      assertThat(trace.enoughFor(volume)).as("%s ml", volume).isEmpty();
    }
  }

  @Test
  void someTracesAreTooSmallForAnyPot() {
    assertThat(drops("Titanium white:100000.3, Lamp black:0.37").leastMillilitres(99)).isEmpty();
  }

  @Test
  void thereIsNoPotOfNothing() {
    assertThatThrownBy(() -> drops("Titanium white:1").leastMillilitres(0))
        .hasMessageContaining("millilitres");
  }

  @Test
  void bottlesGiveNoMoreThanTheyHold() {
    assertThatThrownBy(() -> SHELF.taking("No such", 1)).hasMessageContaining("no paint");
    assertThat(SHELF.taking("Lamp black", 5)).isEqualTo(SHELF); // Nothing is written down of it.
  }
}
