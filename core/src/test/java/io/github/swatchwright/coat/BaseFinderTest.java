package io.github.swatchwright.coat;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.coat.BaseColour.Obstacle;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.optics.HidingPower;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.PaintChoice;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import io.github.swatchwright.testdata.DemoShelf;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class BaseFinderTest {
  private static final Shelf SHELF = ShelfJson.parse(DemoShelf.text(), DemoShelf.SOURCE);
  private static final CoatPredictor PREDICTOR =
      CoatPredictor.of(ShelfOptics.estimate(SHELF), TristimulusWeights.D65);
  private static final BaseFinder FINDER = BaseFinder.of(PREDICTOR);
  private static final List<String> WASHES =
      List.of("Whitewash wash", "Rust-brown wash", "Harbour-dirt wash", "Enamel off-white");

  private static final int CASES = 300;

  /** A mix of one to three acrylics, one to five drops of each. */
  private static Mix mix(Random random) {
    List<Paint> paints =
        SHELF.paints().stream()
            .filter(p -> p.medium() == Medium.ACRYLIC && p.whyNotComputable().isEmpty())
            .toList();
    List<Mix.Part> parts = new ArrayList<>();
    for (int i = 1 + random.nextInt(3); i > 0; i--) {
      Paint paint = paints.get(random.nextInt(paints.size()));
      if (parts.stream().noneMatch(part -> part.paint().equals(paint))) {
        parts.add(new Mix.Part(paint, 1 + random.nextInt(5)));
      }
    }
    return new Mix(parts);
  }

  /** One or two washes, then a filter; now and then so many coats that they hide. */
  private static List<Coat> coats(Random random) {
    List<Coat> coats = new ArrayList<>();
    for (int i = 1 + random.nextInt(2); i > 0; i--) {
      Paint wash = SHELF.paint(WASHES.get(random.nextInt(WASHES.size())));
      double thinner = wash.thinned() ? 0 : 4 + random.nextInt(12);
      int count = random.nextInt(8) == 0 ? 80 : 1 + random.nextInt(6);
      coats.add(new Coat(Mix.of(wash), count, thinner, 1));
    }
    coats.add(new Coat(Mix.of(SHELF.paint("Blue filter")), 1 + random.nextInt(4), 0, 1));
    return coats;
  }

  private static Lab end(Base base, List<Coat> coats) {
    return PREDICTOR.last(base, coats).lab();
  }

  // Where less than a hundredth of a difference shows, bases unlike each other end alike: there the
  // end counts. ΔE00 1 is a match (ISO/TR 28642, from memory); the search itself is far nearer.
  @Test
  void ofThreeHundredEndsTheBaseIsFoundAgainOrRefusedBecauseItIsHidden() {
    Random random = new Random(300);
    int hidden = 0;
    int hardly = 0;
    double worst = 0;
    for (int i = 0; i < CASES; i++) {
      Lab base = PREDICTOR.predict(new Base.OfMix(mix(random))).lab();
      List<Coat> coats = coats(random);
      Lab end = end(new Base.OfSwatch(new Swatch.OfLab(base)), coats);

      BaseColour found = FINDER.colour(new Swatch.OfLab(end), coats);

      if (found.contrastRatio() >= HidingPower.HIDES) {
        hidden++;
        assertThat(found.obstacle()).contains(Obstacle.HIDDEN);
        assertThat(FINDER.recipes(found, coats, PaintChoice.ALL)).isEmpty();
      } else {
        assertThat(found.isFound()).as("case %d: %s", i, found).isTrue();
        double missed = Ciede2000.deltaE(found.base(), base);
        if (found.shown() < BaseColour.HARDLY_SHOWN) {
          hardly++;
          assertThat(found.deltaE00()).isLessThan(0.01);
        } else {
          assertThat(missed).as("case %d: %s", i, found).isLessThanOrEqualTo(1);
          worst = Math.max(worst, missed);
        }
      }
    }
    assertThat(hidden).isPositive();
    System.out.printf(
        "%d ends: %d bases found again within ΔE00 %.4f, %d hidden, %d hardly shown%n",
        CASES, CASES - hidden - hardly, worst, hidden, hardly);
  }

  // The mix itself is among those looked for, so that nothing has to be missed but what the aim at
  // a smooth reflectance costs.
  @Test
  void paintForTheBaseEndsWhereTheMixThatWasPaintedEnded() {
    Random random = new Random(12);
    double worst = 0;
    double sum = 0;
    int cases = Integer.getInteger("base.cases", 4);
    for (int i = 0; i < cases; i++) {
      Mix mix = mix(random);
      List<Coat> coats = Coats.parse("Harbour-dirt wash:2, Blue filter:3", SHELF);
      Lab end = end(new Base.OfMix(mix), coats);

      BaseColour colour = FINDER.colour(new Swatch.OfLab(end), coats);
      List<BaseRecipe> recipes = FINDER.recipes(colour, coats, PaintChoice.ALL);

      assertThat(recipes).isNotEmpty();
      double nearest = recipes.stream().mapToDouble(BaseRecipe::deltaE00).min().orElseThrow();
      assertThat(nearest).as("%s ends at %s", mix.toText(), end).isLessThanOrEqualTo(1);
      worst = Math.max(worst, nearest);
      sum += nearest;
    }
    System.out.printf(
        "%d mixes: paint found ends ΔE00 %.2f away on average, %.2f at worst%n",
        cases, sum / cases, worst);
  }
}
