package io.github.swatchwright.search;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.estimate.PaintOptics;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.paint.Make;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Invented paints of colours drawn from sRGB's gamut, every third of a single pigment. */
final class RandomShelf {
  private final ShelfOptics optics;
  private final MixPredictor predictor;
  private final Random random;

  RandomShelf(int paints, long seed) {
    this(paints, seed, TristimulusWeights.D65);
  }

  RandomShelf(int paints, long seed, TristimulusWeights light) {
    random = new Random(seed);
    List<Paint> shelf = new ArrayList<>();
    for (int i = 0; i < paints; i++) {
      shelf.add(paint("paint " + i, i % 3 == 0 ? Make.SINGLE_PIGMENT : Make.READY_MIXED));
    }
    optics = ShelfOptics.estimate(Shelf.of("invented", shelf));
    predictor = MixPredictor.of(optics, light);
  }

  private Paint paint(String name, Make make) {
    Paint plain = Paint.of(name, Medium.ACRYLIC, new Swatch.OfLab(colour()));
    double drop = Paint.USUAL_DROP_MILLILITRES * (random.nextInt(3) == 0 ? 1.25 : 1);
    return plain.withName(name).withMake(make).withDropMillilitres(drop);
  }

  /** A colour that sRGB can show, with L* from 8 to 96. */
  private Lab colour() {
    while (true) {
      Lab lab =
          Lab.ofD65(
              8 + 88 * random.nextDouble(),
              -80 + 160 * random.nextDouble(),
              -80 + 170 * random.nextDouble());
      if (lab.toSrgb().isDisplayable()) {
        return lab;
      }
    }
  }

  List<PaintOptics> paints() {
    return optics.paints();
  }

  MixPredictor predictor() {
    return predictor;
  }

  SearchSpace space(int mostPaints, int mostDrops) {
    return new SearchSpace(optics.paints(), predictor.viewing(), mostPaints, mostDrops);
  }

  /** The colour of three of the paints in random parts: within reach, near enough. */
  Lab mixedTarget() {
    List<Mix.Part> parts = new ArrayList<>();
    random
        .ints(0, optics.paints().size())
        .distinct()
        .limit(3)
        .forEach(
            i ->
                parts.add(
                    new Mix.Part(optics.paints().get(i).paint(), 0.5 + 5 * random.nextDouble())));
    return predictor.predict(new Mix(parts)).lab();
  }
}
