package io.github.swatchwright.metamorphic;

import static io.github.swatchwright.metamorphic.Cases.COUNT;
import static io.github.swatchwright.metamorphic.Cases.ROUNDING;
import static io.github.swatchwright.metamorphic.Cases.apart;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.coat.Base;
import io.github.swatchwright.coat.Coat;
import io.github.swatchwright.coat.CoatPredictor;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.mix.Prediction;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Mixes and coats don't depend on how paints are named, ordered, written down or counted. */
@Tag("statistics")
class MixesAskedOtherwiseTest {
  private static Prediction predicted(Shelf shelf, Mix mix) {
    return MixPredictor.of(ShelfOptics.estimate(shelf), TristimulusWeights.D65).predict(mix);
  }

  private static Mix on(Shelf shelf, Mix mix) {
    return new Mix(
        mix.parts().stream()
            .map(part -> new Mix.Part(shelf.paint(part.paint().name()), part.drops()))
            .toList());
  }

  private static void assertSame(Prediction one, Prediction other) {
    assertThat(apart(one.lab(), other.lab())).isLessThan(ROUNDING);
    // The interval is the root of a sum of squares, which doubles its digits' loss.
    assertThat(Math.abs(one.intervalDeltaE00() - other.intervalDeltaE00())).isLessThan(1e-6);
  }

  @Test
  void theOrderOfShelfAndMix() {
    Cases.each(
        COUNT,
        random -> {
          Shelf shelf = Cases.shelf(random, 3);
          Mix mix = Cases.mix(random, shelf.paints());
          List<Mix.Part> turned = new ArrayList<>(mix.parts());
          Collections.reverse(turned);
          assertSame(
              predicted(shelf, mix), predicted(Cases.shuffled(shelf, random), new Mix(turned)));
        });
  }

  @Test
  void theNamesOfThePaints() {
    Cases.each(
        COUNT,
        random -> {
          Shelf shelf = Cases.shelf(random, 2);
          List<Paint> renamed =
              shelf.paints().stream().map(paint -> paint.withName("x" + paint.name())).toList();
          Mix mix = Cases.mix(random, shelf.paints());
          Mix same =
              new Mix(
                  mix.parts().stream()
                      .map(p -> new Mix.Part(p.paint().withName("x" + p.paint().name()), p.drops()))
                      .toList());
          assertSame(
              predicted(shelf, mix), predicted(new Shelf("y", renamed, shelf.surface()), same));
        });
  }

  @Test
  void paintsThatAreNotInTheMix() {
    Cases.each(
        COUNT,
        random -> {
          Shelf shelf = Cases.shelf(random, 2);
          Mix mix = Cases.mix(random, shelf.paints());
          List<Paint> more = new ArrayList<>(shelf.paints());
          more.add(random.nextInt(3), Cases.paint(random, "Another"));
          Shelf larger = new Shelf(shelf.name(), more, shelf.surface());
          assertSame(predicted(shelf, mix), predicted(larger, mix));
        });
  }

  @Test
  void theFactorOfAllParts() {
    Cases.each(
        COUNT,
        random -> {
          Shelf shelf = Cases.shelf(random, 2);
          Mix mix = Cases.mix(random, shelf.paints());
          double factor = Math.exp(3 * random.nextGaussian());
          Mix scaled =
              new Mix(
                  mix.parts().stream()
                      .map(part -> new Mix.Part(part.paint(), part.drops() * factor))
                      .toList());
          assertThat(apart(predicted(shelf, mix).lab(), predicted(shelf, scaled).lab()))
              .isLessThan(ROUNDING);
        });
  }

  /** A statement is the mean. 0.1: the rounding of 8-bit channels is of that size. */
  @Test
  void aPaintAloneIsItsMasstone() {
    Cases.each(
        COUNT,
        random -> {
          Shelf shelf = Cases.shelf(random, 2);
          for (Paint paint : shelf.paints()) {
            Lab stated = paint.masstone().orElseThrow().lab();
            Lab computed = predicted(shelf, Mix.of(paint)).lab();
            assertThat(Ciede2000.deltaE(stated, computed)).as("%s", paint).isLessThan(0.1);
          }
        });
  }

  @Test
  void whatIsWrittenAndReadBack() {
    Cases.each(
        COUNT,
        random -> {
          Shelf shelf = Cases.shelf(random, 3);
          Shelf read = ShelfJson.parse(ShelfJson.toText(shelf), "written");
          assertThat(read).isEqualTo(shelf);
          Mix mix = Cases.mix(random, shelf.paints());
          assertThat(predicted(read, on(read, mix))).isEqualTo(predicted(shelf, mix));
        });
  }

  /**
   * So thick a film shows nothing of its base. 1e-3 in L*, far below sight: where a paint absorbs,
   * what shows through falls exponentially; in a band where it only scatters, as one part in S·X.
   */
  @Test
  void fiftyCoatsAreTheMasstone() {
    int[] compared = new int[1];
    Cases.each(
        COUNT,
        random -> {
          Shelf shelf = Cases.shelf(random, 2);
          ShelfOptics optics = ShelfOptics.estimate(shelf);
          CoatPredictor coats = CoatPredictor.of(optics, TristimulusWeights.D65);
          Mix mix = Cases.mix(random, shelf.paints());
          Coat thick = new Coat(mix, 50, 0, 1);
          if (coats.coatsToHide(Coat.of(mix)) < 5) {
            Lab film = coats.last(new Base.OfSwatch(Cases.swatch(random)), List.of(thick)).lab();
            assertThat(apart(film, predicted(shelf, mix).lab())).isLessThan(1e-3);
            compared[0]++;
          }
        });
    assertThat(compared[0]).isGreaterThan(COUNT / 2);
  }

  /** Kubelka's films add up: n coats and m coats of one paint are n + m coats. */
  @Test
  void coatsOfOnePaintAddUp() {
    Cases.each(
        COUNT,
        random -> {
          Shelf shelf = Cases.shelf(random, 1);
          CoatPredictor coats =
              CoatPredictor.of(ShelfOptics.estimate(shelf), TristimulusWeights.D65);
          Mix mix = Mix.of(shelf.paints().get(0));
          double first = 0.1 + 2 * random.nextDouble();
          double second = 0.1 + 2 * random.nextDouble();
          Base base = new Base.OfSwatch(Cases.swatch(random));
          Lab one = coats.last(base, List.of(new Coat(mix, first + second, 0, 1))).lab();
          Lab two =
              coats
                  .last(base, List.of(new Coat(mix, first, 0, 1), new Coat(mix, second, 0, 1)))
                  .lab();
          assertThat(apart(one, two)).isLessThan(1e-6);
        });
  }

  /** A seed of one case makes the same case again; others make others. */
  @Test
  void casesDiffer() {
    assertThat(Cases.shelf(new Random(1), 2)).isEqualTo(Cases.shelf(new Random(1), 2));
    assertThat(Cases.shelf(new Random(1), 2)).isNotEqualTo(Cases.shelf(new Random(2), 2));
  }
}
