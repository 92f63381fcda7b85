package io.github.swatchwright.match;

import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.mix.SyntheticPigments;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.Predicate;

/** Shelves of invented single-pigment paints of any size, named by the seed that they come from. */
public final class InventedCatalogue {
  private InventedCatalogue() {}

  /** So many paints with colour and contrast ratio, in random order. */
  public static Shelf of(String name, int size, long seed) {
    return of(name, size, seed, pigment -> true);
  }

  /** The same without the strong colours: whites, blacks, oxides and earths. */
  public static Shelf ofDullColours(String name, int size, long seed) {
    return of(
        name,
        size,
        seed,
        pigment -> !pigment.name().startsWith("organic") && !pigment.name().startsWith("band"));
  }

  private static Shelf of(
      String name, int size, long seed, Predicate<SyntheticPigments.Pigment> wanted) {
    List<Paint> paints = new ArrayList<>();
    for (long from = seed; paints.size() < size; from++) {
      for (SyntheticPigments.Pigment pigment : SyntheticPigments.shelf(from)) {
        if (wanted.test(pigment)) {
          paints.add(paint(from + " " + pigment.name(), pigment.withContrastRatio()));
        }
      }
    }
    Collections.shuffle(paints, new Random(seed));
    return Shelf.of(name, paints.subList(0, size));
  }

  private static Paint paint(String name, Paint known) {
    return Paint.of(name, Medium.ACRYLIC, known.masstone().orElseThrow())
        .withMake(known.make())
        .withSwatchError(0.5)
        .withHiding(known.hiding().orElseThrow());
  }

  /** So many colours, each of a mix of two paints of the shelf and one that it may lack. */
  public static List<Swatch> targets(Shelf shelf, Shelf catalogue, int count, long seed) {
    Random random = new Random(seed);
    List<Swatch> targets = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      List<Paint> owned = new ArrayList<>(shelf.paints());
      Collections.shuffle(owned, random);
      Paint lacking = catalogue.paints().get(random.nextInt(catalogue.paints().size()));
      List<Paint> three = List.of(owned.get(0), owned.get(1), lacking);
      List<Mix.Part> parts =
          three.stream()
              .map(p -> new Mix.Part(p, 0.1 - Math.log(1 - random.nextDouble())))
              .toList();
      ShelfOptics optics = ShelfOptics.estimate(Shelf.of("three", three));
      targets.add(
          new Swatch.OfLab(
              MixPredictor.of(optics, TristimulusWeights.D65).predict(new Mix(parts)).lab()));
    }
    return targets;
  }
}
