package io.github.swatchwright.ladder;

import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import io.github.swatchwright.testdata.DemoShelf;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/**
 * Shelves of some of the demo shelf's acrylics, and ends on them that differ by 12 L* or more: half
 * of them mixes, half of them the colours of mixes, for which a recipe is looked for again.
 */
final class RandomLadders {
  private static final Shelf DEMO = ShelfJson.parse(DemoShelf.text(), "demo shelf");
  private static final double LEAST_LIGHTNESS = 12;

  private final Random random;

  RandomLadders(long seed) {
    random = new Random(seed);
  }

  /**
   * A ladder to plan.
   *
   * @param optics the shelf
   * @param request what is asked for
   */
  record Case(ShelfOptics optics, LadderRequest request) {
    Ladder plan() {
      return LadderPlanner.of(optics, TristimulusWeights.D65).plan(request);
    }
  }

  /** Some of the demo shelf's acrylics. */
  ShelfOptics shelf(int paints) {
    List<Paint> acrylics = new ArrayList<>();
    for (Paint paint : DEMO.paints()) {
      if (paint.medium() == Medium.ACRYLIC && paint.whyNotComputable().isEmpty()) {
        acrylics.add(paint);
      }
    }
    Collections.shuffle(acrylics, random);
    return ShelfOptics.estimate(Shelf.of("some", acrylics.subList(0, paints)));
  }

  /** One to three paints, one to six drops of each. */
  Mix mix(ShelfOptics optics, int mostPaints) {
    List<Paint> paints = new ArrayList<>(optics.shelf().paints());
    Collections.shuffle(paints, random);
    return new Mix(
        paints.subList(0, 1 + random.nextInt(mostPaints)).stream()
            .map(paint -> new Mix.Part(paint, 1 + random.nextInt(6)))
            .toList());
  }

  Case next() {
    while (true) {
      ShelfOptics optics = shelf(5 + random.nextInt(4));
      MixPredictor predictor = MixPredictor.of(optics, TristimulusWeights.D65);
      Mix from = mix(optics, 2);
      Mix to = mix(optics, 2);
      double apart = predictor.predict(from).lab().l() - predictor.predict(to).lab().l();
      if (Math.abs(apart) >= LEAST_LIGHTNESS) {
        LadderRequest request =
            LadderRequest.between(
                    shade(from, predictor), shade(to, predictor), 3 + random.nextInt(4))
                .withPot(pot());
        return new Case(optics, request);
      }
    }
  }

  private PotRule pot() {
    return random.nextInt(5) == 0
        ? PotRule.separate()
        : PotRule.onePot().withUse(0.3 + 0.1 * random.nextInt(5));
  }

  private Shade shade(Mix mix, MixPredictor predictor) {
    return random.nextBoolean()
        ? new Shade.OfMix(mix)
        : new Shade.OfColour(new Swatch.OfLab(predictor.predict(mix).lab()));
  }
}
