package io.github.swatchwright.ladder;

import io.github.swatchwright.colour.Lab;
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
 * Ladders on several shelves: all of the demo shelf's acrylics, some of them, and these with
 * invented ready-mixed paints besides, 12 to 60 in all. The ends are mixes of one or two paints, or
 * the colours of such mixes, and differ by 12 L* or more.
 */
final class RandomLadders {
  private static final Shelf DEMO = ShelfJson.parse(DemoShelf.text(), "demo shelf");
  private static final double LEAST_LIGHTNESS = 12;
  private static final int[] SIZES = {18, 12, 15, 18, 24, 36, 60};

  private final Random random;
  private final List<ShelfOptics> shelves = new ArrayList<>();

  RandomLadders(long seed) {
    random = new Random(seed);
  }

  /** Ladders on one shelf. */
  RandomLadders(long seed, ShelfOptics shelf) {
    this(seed);
    shelves.add(shelf);
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

  private static List<Paint> acrylics() {
    List<Paint> acrylics = new ArrayList<>();
    for (Paint paint : DEMO.paints()) {
      if (paint.medium() == Medium.ACRYLIC && paint.whyNotComputable().isEmpty()) {
        acrylics.add(paint);
      }
    }
    return acrylics;
  }

  /** Some of the demo shelf's acrylics, and invented ones where there are more to be. */
  ShelfOptics shelf(int paints) {
    List<Paint> all = acrylics();
    Collections.shuffle(all, random);
    while (all.size() < paints) {
      all.add(invented(all.size()));
    }
    return ShelfOptics.estimate(Shelf.of("some", all.subList(0, paints)));
  }

  /** A dull colour, as most of a modeller's bottles hold. */
  private Paint invented(int number) {
    double chroma = Math.abs(14 * random.nextGaussian());
    double hue = 2 * Math.PI * random.nextDouble();
    Lab lab =
        Lab.ofD65(20 + 65 * random.nextDouble(), chroma * Math.cos(hue), chroma * Math.sin(hue));
    return Paint.of("Paint " + number, Medium.ACRYLIC, new Swatch.OfLab(lab));
  }

  /** One to some paints, one to six drops of each. */
  Mix mix(ShelfOptics optics, int mostPaints) {
    List<Paint> paints = new ArrayList<>(optics.shelf().paints());
    Collections.shuffle(paints, random);
    return new Mix(
        paints.subList(0, 1 + random.nextInt(mostPaints)).stream()
            .map(paint -> new Mix.Part(paint, 1 + random.nextInt(6)))
            .toList());
  }

  /** A ladder of 2 to 6 rungs, in one pot. */
  Case next() {
    if (shelves.isEmpty()) {
      for (int size : SIZES) {
        shelves.add(shelf(size));
      }
    }
    ShelfOptics optics = shelves.get(random.nextInt(shelves.size()));
    MixPredictor predictor = MixPredictor.of(optics, TristimulusWeights.D65);
    while (true) {
      Mix from = mix(optics, 2);
      Mix to = mix(optics, 2);
      double apart = predictor.predict(from).lab().l() - predictor.predict(to).lab().l();
      if (Math.abs(apart) >= LEAST_LIGHTNESS) {
        LadderRequest request =
            LadderRequest.between(
                shade(from, predictor), shade(to, predictor), 2 + random.nextInt(5));
        Subject[] subjects = {Subject.RUST, Subject.FADING, Subject.RUBBER};
        return new Case(optics, request.withSubject(subjects[random.nextInt(3)]));
      }
    }
  }

  private Shade shade(Mix mix, MixPredictor predictor) {
    return random.nextBoolean()
        ? new Shade.OfMix(mix)
        : new Shade.OfColour(new Swatch.OfLab(predictor.predict(mix).lab()));
  }
}
