package io.github.swatchwright.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.mix.SyntheticPigments.Pigment;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;

/** What holds for every mix of every paint. */
class MixPropertyTest {
  private static final Shelf SHELF =
      Shelf.of(
          "invented",
          SyntheticPigments.shelf(11).stream().map(Pigment::withContrastRatio).toList());
  private static final MixPredictor PREDICTOR =
      MixPredictor.of(ShelfOptics.estimate(SHELF), TristimulusWeights.D65);

  private static List<Mix.Part> parts(Random random) {
    List<Paint> paints = new ArrayList<>(SHELF.paints());
    Collections.shuffle(paints, random);
    return paints.subList(0, 1 + random.nextInt(5)).stream()
        .map(paint -> new Mix.Part(paint, Math.exp(6 * random.nextDouble() - 2)))
        .toList();
  }

  @Property(tries = 300, shrinking = ShrinkingMode.OFF)
  void aMixReflectsBetweenNothingAndAllOfTheLight(@ForAll long seed) {
    Prediction prediction = PREDICTOR.predict(new Mix(parts(new Random(seed))));
    for (double reflected : prediction.reflectance().toArray()) {
      assertThat(reflected).isBetween(0.0, 1.0);
    }
    assertThat(prediction.lab().l()).isBetween(0.0, 100.0);
    assertThat(prediction.intervalDeltaE00()).isPositive();
  }

  @Property(tries = 300, shrinking = ShrinkingMode.OFF)
  void theOrderOfThePartsDoesNotMatter(@ForAll long seed) {
    Random random = new Random(seed);
    List<Mix.Part> parts = parts(random);
    List<Mix.Part> others = new ArrayList<>(parts);
    Collections.shuffle(others, random);
    assertSame(PREDICTOR.predict(new Mix(parts)), PREDICTOR.predict(new Mix(others)));
  }

  @Property(tries = 300, shrinking = ShrinkingMode.OFF)
  void onlyTheRatioOfThePartsMatters(@ForAll long seed) {
    Random random = new Random(seed);
    List<Mix.Part> parts = parts(random);
    double factor = Math.exp(4 * random.nextDouble() - 2);
    List<Mix.Part> scaled =
        parts.stream().map(p -> new Mix.Part(p.paint(), p.drops() * factor)).toList();
    MixPredictor exact = PREDICTOR.withDropScatter(0);
    assertSame(exact.predict(new Mix(parts)), exact.predict(new Mix(scaled)));
  }

  /** The same sums in another order; the interval goes through a square root besides. */
  private static void assertSame(Prediction one, Prediction other) {
    assertThat(other.lab().l()).isCloseTo(one.lab().l(), within(1e-10));
    assertThat(other.lab().a()).isCloseTo(one.lab().a(), within(1e-10));
    assertThat(other.lab().b()).isCloseTo(one.lab().b(), within(1e-10));
    assertThat(other.intervalDeltaE00()).isCloseTo(one.intervalDeltaE00(), within(1e-6));
  }
}
