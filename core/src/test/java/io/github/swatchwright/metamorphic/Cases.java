package io.github.swatchwright.metamorphic;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.paint.Hiding;
import io.github.swatchwright.paint.Make;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.function.Consumer;

/**
 * Invented cases by the thousand, for tests of the kind "asked in another way, the answer is the
 * same". Such tests need no known truth. Each case has a seed of its own, named when it fails.
 */
final class Cases {
  private static final List<Make> MAKES = List.of(Make.values());

  /** How many cases a test has. */
  static final int COUNT = 1000;

  /**
   * How many cases a test has that searches or fits: 200 in every build, and as many as {@code
   * -Dswatchwright.cases} says.
   */
  static final int DEAR = Integer.getInteger("swatchwright.cases", 200);

  /** Sums in another order, times the slope of what follows them. */
  static final double ROUNDING = 1e-9;

  private Cases() {}

  /** Tries a number of cases, each with the random numbers of its own seed. */
  static void each(int count, Consumer<Random> trial) {
    for (int seed = 0; seed < count; seed++) {
      try {
        trial.accept(new Random(seed));
      } catch (RuntimeException | AssertionError e) {
        throw new AssertionError("case " + seed + ": " + e.getMessage(), e);
      }
    }
  }

  /** A shelf of some paints that can be mixed with each other, its surface stated. */
  static Shelf shelf(Random random, int paints) {
    List<Paint> made = new ArrayList<>();
    for (int i = 0; i < paints; i++) {
      made.add(paint(random, "Paint " + i));
    }
    return new Shelf("invented", made, Optional.of(surface(random)));
  }

  private static Saunderson surface(Random random) {
    return new Saunderson(0.005 + 0.02 * random.nextDouble(), 0.3 + 0.2 * random.nextDouble());
  }

  /** A paint as a painter might write it down. */
  static Paint paint(Random random, String name) {
    Paint paint =
        Paint.of(name, Medium.ACRYLIC, swatch(random))
            .withMake(MAKES.get(random.nextInt(MAKES.size())))
            .withDropMillilitres(0.03 + 0.03 * random.nextDouble());
    return switch (random.nextInt(4)) {
      case 0 -> paint.withHiding(new Hiding.Coats(1 + random.nextInt(4)));
      case 1 -> paint.withHiding(new Hiding.ContrastRatio(0.5 + 0.45 * random.nextDouble()));
      case 2 -> paint.withSwatchError(0.1 + 3 * random.nextDouble());
      default -> paint;
    };
  }

  /** Neither the darkest nor the strongest of colours, which no surface leaves. */
  static Swatch swatch(Random random) {
    Srgb colour =
        Srgb.parse(
            String.format(
                Locale.ROOT, "#%02X%02X%02X", level(random), level(random), level(random)));
    return random.nextBoolean() ? new Swatch.OfSrgb(colour) : new Swatch.OfLab(colour.toLab());
  }

  private static int level(Random random) {
    return 60 + random.nextInt(170);
  }

  /** A mix of some of the paints. */
  static Mix mix(Random random, List<Paint> paints) {
    List<Paint> some = new ArrayList<>(paints);
    Collections.shuffle(some, random);
    return new Mix(
        some.subList(0, 1 + random.nextInt(some.size())).stream()
            .map(paint -> new Mix.Part(paint, 1 + random.nextInt(9)))
            .toList());
  }

  /** The same paints in another order. */
  static Shelf shuffled(Shelf shelf, Random random) {
    List<Paint> paints = new ArrayList<>(shelf.paints());
    Collections.shuffle(paints, random);
    return new Shelf(shelf.name(), paints, shelf.surface());
  }

  /** The largest difference of L*, a* and b*. */
  static double apart(Lab one, Lab other) {
    return Math.max(
        Math.abs(one.l() - other.l()),
        Math.max(Math.abs(one.a() - other.a()), Math.abs(one.b() - other.b())));
  }
}
