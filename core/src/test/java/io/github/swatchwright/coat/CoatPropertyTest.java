package io.github.swatchwright.coat;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.spectrum.TristimulusWeights;
import io.github.swatchwright.testdata.DemoShelf;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;

/** What holds for any stack of coats. */
class CoatPropertyTest {
  private static final Shelf SHELF = ShelfJson.parse(DemoShelf.text(), DemoShelf.SOURCE);
  private static final List<Paint> PAINTS =
      SHELF.paints().stream().filter(paint -> paint.whyNotComputable().isEmpty()).toList();
  private static final CoatPredictor PREDICTOR =
      CoatPredictor.of(ShelfOptics.estimate(SHELF), TristimulusWeights.D65);

  private static Mix paint(Random random) {
    return Mix.of(PAINTS.get(random.nextInt(PAINTS.size())));
  }

  private static Coat coat(Random random) {
    return new Coat(
        paint(random),
        0.05 + 3 * random.nextDouble(),
        random.nextInt(3) == 0 ? 20 * random.nextDouble() : 0,
        random.nextInt(3) == 0 ? random.nextDouble() : 1);
  }

  @Property(tries = 60, shrinking = ShrinkingMode.OFF)
  void noStackReflectsMoreThanAllOfTheLight(@ForAll long seed) {
    Random random = new Random(seed);
    List<Coat> coats = new ArrayList<>();
    for (int i = 0; i <= random.nextInt(4); i++) {
      coats.add(coat(random));
    }
    for (CoatStep step : PREDICTOR.predict(new Base.OfMix(paint(random)), coats)) {
      for (double reflected : step.prediction().reflectance().toArray()) {
        assertThat(reflected).isBetween(0.0, 1.0);
      }
      assertThat(step.contrastRatio()).isBetween(0.0, 1.0);
    }
  }

  @Property(tries = 60, shrinking = ShrinkingMode.OFF)
  void aThickerCoatNeverHidesLess(@ForAll long seed) {
    Random random = new Random(seed);
    Base base = new Base.OfMix(paint(random));
    Coat thin = coat(random);
    Coat thick =
        new Coat(
            thin.mix(), thin.coats() * (1 + random.nextDouble()), thin.thinner(), thin.coverage());
    Coat lessThinned = new Coat(thin.mix(), thin.coats(), thin.thinner() / 2, thin.coverage());
    double before = hiding(base, thin);
    // 1e-12 for rounding: the ratio saturates.
    assertThat(hiding(base, thick)).isGreaterThanOrEqualTo(before - 1e-12);
    assertThat(hiding(base, lessThinned)).isGreaterThanOrEqualTo(before - 1e-12);
  }

  private static double hiding(Base base, Coat coat) {
    return PREDICTOR.predict(base, List.of(coat)).get(0).contrastRatio();
  }
}
