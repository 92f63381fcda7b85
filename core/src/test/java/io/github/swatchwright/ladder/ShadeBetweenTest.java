package io.github.swatchwright.ladder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.paint.PaintChoice;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.spectrum.TristimulusWeights;
import io.github.swatchwright.testdata.DemoShelf;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class ShadeBetweenTest {
  private static final Shelf SHELF = ShelfJson.parse(DemoShelf.text(), "demo shelf");
  private static final ShelfOptics OPTICS = ShelfOptics.estimate(SHELF);
  private static final MixPredictor PREDICTOR = MixPredictor.of(OPTICS, TristimulusWeights.D65);

  private static Optional<Mix> between(String from, String to, PaintChoice choice) {
    Mix first = Mix.parse(from, SHELF);
    Mix last = Mix.parse(to, SHELF);
    return new ShadeBetween(PREDICTOR, OPTICS, choice)
        .of(first, PREDICTOR.predict(first).lab(), last, PREDICTOR.predict(last).lab());
  }

  private static List<String> names(Mix mix) {
    return mix.parts().stream().map(part -> part.paint().name()).toList();
  }

  @Test
  @DisplayName("orange goes to black by way of a brown or a red, never of a wash or a varnish")
  void orangeGoesToBlackByBrown() {
    Mix via = between("Bright orange", "Lamp black", PaintChoice.ALL).orElseThrow();

    assertThat(names(via)).startsWith("Bright orange").hasSize(2);
    assertThat(names(via).get(1))
        .isIn("Red oxide", "Burnt umber", "Raw umber", "Boot-topping red", "Quay-mud brown");
  }

  @Test
  @DisplayName("the way doesn't lead by a paint that was left out")
  void leavesOutWhatIsLeftOut() {
    String usual =
        names(between("Bright orange", "Lamp black", PaintChoice.ALL).orElseThrow()).get(1);
    Optional<Mix> other =
        between("Bright orange", "Lamp black", PaintChoice.ALL.withWithout(Set.of(usual)));

    assertThat(other.map(ShadeBetweenTest::names).orElse(List.of())).doesNotContain(usual);
  }

  @Test
  @DisplayName("where the ends' own mixes pass the middle, there is no detour")
  void goesStraightWhereThatIsNear() {
    assertThat(between("Deckhouse cream", "Quay-mud brown", PaintChoice.ALL)).isEmpty();
  }

  @Test
  @DisplayName("colours on the straight line lie on it, from end to end, evenly in ΔE00")
  void straightWayIsEven() {
    Lab from = Lab.ofD65(53, 36, 49);
    Lab to = Lab.ofD65(13, 5, 7);
    List<Lab> way = StraightWay.evenly(from, to, 5);

    assertThat(way).hasSize(5).startsWith(from).endsWith(to);
    for (int i = 1; i < 5; i++) {
      Lab lab = way.get(i);
      double share = (lab.l() - 53) / (13 - 53);
      assertThat(lab.a()).isCloseTo(36 + share * (5 - 36), within(1e-9));
      // Sums over short pieces and the distance across them differ by the curve of ΔE00, a few %.
      assertThat(Ciede2000.deltaE(way.get(i - 1), lab) / Ciede2000.deltaE(way.get(0), way.get(1)))
          .isCloseTo(1, within(0.15));
    }
  }
}
