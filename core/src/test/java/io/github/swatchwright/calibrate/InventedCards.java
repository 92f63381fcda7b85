package io.github.swatchwright.calibrate;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.mix.SyntheticPigments;
import io.github.swatchwright.mix.SyntheticPigments.Pigment;
import io.github.swatchwright.optics.Film;
import io.github.swatchwright.optics.OpticalConstants;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;

/** Cards painted with invented pigments whose constants are known. */
final class InventedCards {
  final List<Pigment> pigments;
  private final Random random;
  private final double amountError;
  private final double colourError;

  InventedCards(long seed, double amountError, double colourError) {
    pigments = SyntheticPigments.shelf(seed);
    random = new Random(seed + 7);
    this.amountError = amountError;
    this.colourError = colourError;
  }

  /** The shelf that its swatches and contrast ratios describe. */
  Shelf shelf() {
    return shelf(pigments.stream().map(Pigment::withContrastRatio).toList());
  }

  static Shelf shelf(List<Paint> paints) {
    return new Shelf("invented", paints, Optional.of(SyntheticPigments.VIEWING.surface()));
  }

  Pigment pigment(String name) {
    return pigments.stream().filter(p -> p.name().equals(name)).findFirst().orElseThrow();
  }

  OpticalConstants mixed(List<TestCard.Part> parts) {
    return OpticalConstants.mix(
        parts.stream().map(part -> pigment(part.paint()).truth()).toArray(OpticalConstants[]::new),
        parts.stream().mapToDouble(TestCard.Part::amount).toArray());
  }

  Lab colour(List<TestCard.Part> parts) {
    return SyntheticPigments.VIEWING.lab(mixed(parts).opaque());
  }

  /** A card at full hiding, measured as a colour. */
  TestCard painted(List<TestCard.Part> parts) {
    return card(parts, new Swatch.OfLab(blurred(colour(poured(parts)))));
  }

  /** A card at full hiding, measured as a reflectance without error. */
  TestCard measured(List<TestCard.Part> parts) {
    return card(parts, reflectance(mixed(parts).opaque()));
  }

  /** A film over a base of one reflectance, measured as a reflectance without error. */
  TestCard film(List<TestCard.Part> parts, double base, double coats) {
    Saunderson surface = SyntheticPigments.VIEWING.surface();
    double[] below = new double[36];
    Arrays.fill(below, surface.internal(base));
    double[] over = new double[36];
    Arrays.fill(over, base);
    return new TestCard(
        parts,
        PartsBy.VOLUME,
        reflectance(mixed(parts).filmOver(coats * Film.COAT, below)),
        Optional.of(new Swatch.OfReflectance(380, 10, over)),
        OptionalDouble.of(coats));
  }

  static Swatch reflectance(double[] internal) {
    return new Swatch.OfReflectance(380, 10, SyntheticPigments.VIEWING.seen(internal).toArray());
  }

  private static TestCard card(List<TestCard.Part> parts, Swatch measured) {
    return new TestCard(parts, PartsBy.VOLUME, measured, Optional.empty(), OptionalDouble.empty());
  }

  private List<TestCard.Part> poured(List<TestCard.Part> parts) {
    return parts.stream()
        .map(
            part ->
                new TestCard.Part(
                    part.paint(), part.amount() * Math.exp(amountError * random.nextGaussian())))
        .toList();
  }

  private Lab blurred(Lab lab) {
    return Lab.ofD65(
        Math.min(100, Math.max(0, lab.l() + colourError * random.nextGaussian())),
        lab.a() + colourError * random.nextGaussian(),
        lab.b() + colourError * random.nextGaussian());
  }

  static List<TestCard.Part> parts(Object... namesAndAmounts) {
    List<TestCard.Part> parts = new ArrayList<>();
    for (int i = 0; i < namesAndAmounts.length; i += 2) {
      parts.add(
          new TestCard.Part(
              (String) namesAndAmounts[i], ((Number) namesAndAmounts[i + 1]).doubleValue()));
    }
    return parts;
  }
}
