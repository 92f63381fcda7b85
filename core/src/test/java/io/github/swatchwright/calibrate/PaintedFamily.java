package io.github.swatchwright.calibrate;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.mix.SyntheticPigments;
import io.github.swatchwright.mix.SyntheticPigments.Pigment;
import io.github.swatchwright.optics.Film;
import io.github.swatchwright.optics.OpticalConstants;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.Bands;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;

/**
 * Invented paints of one family, whose constants are known, and an invented painter, who errs as
 * real ones do: amounts scatter by 3 %, a bottle is stronger on one day than on another, mixes obey
 * the model to ΔE00 0.4 or so, smoothly over the bands, and the meter repeats to 0.2.
 */
final class PaintedFamily {
  private static final double AMOUNT_ERROR = 0.03;
  private static final double MODEL_ERROR = 0.33;
  private static final double MODEL_NM = 80;
  private static final double REPEAT_ERROR = 0.2;

  final List<Pigment> paints;
  final Random random;
  private final Map<String, Double> logStrengths = new LinkedHashMap<>();

  private PaintedFamily(List<Pigment> paints, Random random) {
    this.paints = paints;
    this.random = random;
  }

  /** A white, and transparent to opaque single pigments whose strength follows no rule. */
  static PaintedFamily pigments(long seed, int count) {
    Random random = new Random(seed);
    List<Pigment> paints = new ArrayList<>();
    for (long i = 0; paints.size() < count; i++) {
      for (Pigment pigment : SyntheticPigments.shelf(10_000 + 31 * seed + i)) {
        boolean isWhite = pigment.name().equals("white");
        if (paints.size() < count && (paints.isEmpty() || !isWhite)) {
          paints.add(isWhite ? pigment : new Pigment(pigment.name() + "/" + i, pigment.truth()));
        }
      }
    }
    return new PaintedFamily(paints, random);
  }

  /** The same, but one pigment in five is ten to thirty times as strong as its colour tells. */
  static PaintedFamily withStrongOrganics(long seed, int count) {
    PaintedFamily family = pigments(seed, count);
    for (int i = 1; i < count; i++) {
      Pigment pigment = family.paints.get(i);
      if (isStrong(i)) {
        double factor = 10 + 20 * family.random.nextDouble();
        family.paints.set(i, new Pigment("strong " + i, scaled(pigment.truth(), Math.log(factor))));
      }
    }
    return family;
  }

  static boolean isStrong(int place) {
    return place % 5 == 3;
  }

  /** A white, and paints that were mixed from that white and one or two pigments, thinned a bit. */
  static PaintedFamily readyMixed(long seed, int count) {
    PaintedFamily pigments = pigments(seed + 500, 14);
    Random random = pigments.random;
    OpticalConstants base = pigments.paints.get(0).truth();
    List<Pigment> paints = new ArrayList<>(List.of(pigments.paints.get(0)));
    while (paints.size() < count) {
      OpticalConstants first = pigments.paints.get(1 + random.nextInt(13)).truth();
      OpticalConstants second = pigments.paints.get(1 + random.nextInt(13)).truth();
      double white = Math.pow(random.nextDouble(), 2);
      OpticalConstants mixed =
          OpticalConstants.mix(
              new OpticalConstants[] {base, first, second},
              new double[] {white, 0.4 * random.nextDouble(), 0.15 * random.nextDouble()});
      paints.add(new Pigment("mixed " + paints.size(), scaled(mixed, 0.2 * random.nextGaussian())));
    }
    return new PaintedFamily(paints, random);
  }

  static OpticalConstants scaled(OpticalConstants constants, double logFactor) {
    double[] k = new double[Bands.COUNT];
    double[] s = new double[Bands.COUNT];
    for (int band = 0; band < Bands.COUNT; band++) {
      k[band] = constants.k(band) * Math.exp(logFactor);
      s[band] = constants.s(band) * Math.exp(logFactor);
    }
    return OpticalConstants.of(k, s);
  }

  /** From now on every bottle is another strength, with that sd of ln strength. */
  void nextDay(double sd) {
    for (Pigment paint : paints) {
      logStrengths.merge(paint.name(), sd * random.nextGaussian(), Double::sum);
    }
  }

  /** From now on a bottle is that strong, as a share of what it was. */
  void weaken(String name, double share) {
    logStrengths.merge(name, Math.log(share), Double::sum);
  }

  Pigment paint(String name) {
    return paints.stream().filter(paint -> paint.name().equals(name)).findFirst().orElseThrow();
  }

  double strength(String name) {
    return Math.exp(logStrengths.getOrDefault(name, 0.0));
  }

  /** What the mix is, as its paints are today and without anybody's errors. */
  OpticalConstants truth(List<TestCard.Part> parts) {
    return OpticalConstants.mix(
        parts.stream()
            .map(part -> scaled(paint(part.paint()).truth(), Math.log(strength(part.paint()))))
            .toArray(OpticalConstants[]::new),
        parts.stream().mapToDouble(TestCard.Part::amount).toArray());
  }

  Lab colour(List<TestCard.Part> parts) {
    return SyntheticPigments.VIEWING.lab(truth(parts).opaque());
  }

  /** A card measured as a reflectance of 31 bands. */
  TestCard rung(List<TestCard.Part> parts) {
    double[] seen = painted(truth(poured(parts)).opaque());
    return card(parts, new Swatch.OfReflectance(400, 10, Arrays.copyOfRange(seen, 2, 33)));
  }

  /** A card measured as a colour, with the meter's error. */
  TestCard colourCard(List<TestCard.Part> parts) {
    return card(parts, new Swatch.OfLab(measured(truth(poured(parts)).opaque())));
  }

  /** One film over a grey base, measured as a colour. */
  TestCard film(String name, double base, double coats) {
    double[] below = new double[Bands.COUNT];
    Arrays.fill(below, SyntheticPigments.VIEWING.surface().internal(base));
    double[] over = new double[Bands.COUNT];
    Arrays.fill(over, base);
    List<TestCard.Part> parts = List.of(new TestCard.Part(name, 1));
    double thickness = coats * Film.COAT * Math.exp(0.1 * random.nextGaussian());
    return new TestCard(
        parts,
        PartsBy.VOLUME,
        new Swatch.OfLab(measured(truth(parts).filmOver(thickness, below))),
        Optional.of(new Swatch.OfReflectance(Bands.FIRST_NM, Bands.STEP_NM, over)),
        OptionalDouble.of(coats));
  }

  Lab measured(double[] internal) {
    Lab lab = SyntheticPigments.VIEWING.weights().xyz(painted(internal)).toLab();
    double sd = 0.5;
    return Lab.ofD65(
        Math.min(100, Math.max(0, lab.l() + sd * random.nextGaussian())),
        lab.a() + sd * random.nextGaussian(),
        lab.b() + sd * random.nextGaussian());
  }

  /** What is seen, with what the model misses and the meter adds. */
  private double[] painted(double[] internal) {
    double[] seen = SyntheticPigments.VIEWING.seen(internal).toArray();
    double phase = 2 * Math.PI * random.nextDouble();
    double slow = random.nextGaussian();
    double wave = random.nextGaussian();
    for (int band = 0; band < seen.length; band++) {
      double missed =
          MODEL_ERROR * (0.7 * slow + wave * Math.cos(phase + band * Bands.STEP_NM / MODEL_NM));
      double unit = 3.0 / 116 * Math.cbrt(seen[band] * seen[band]);
      double error = missed + REPEAT_ERROR * random.nextGaussian();
      seen[band] = Math.max(1e-3, Math.min(1, seen[band] + unit * error));
    }
    return seen;
  }

  List<TestCard.Part> poured(List<TestCard.Part> parts) {
    return parts.stream()
        .map(
            part ->
                new TestCard.Part(
                    part.paint(), part.amount() * Math.exp(AMOUNT_ERROR * random.nextGaussian())))
        .toList();
  }

  private static TestCard card(List<TestCard.Part> parts, Swatch measured) {
    return new TestCard(parts, PartsBy.VOLUME, measured, Optional.empty(), OptionalDouble.empty());
  }

  /** Three or four paints, the first of them white. */
  List<TestCard.Part> recipe() {
    Map<String, Double> parts = new LinkedHashMap<>();
    parts.put(paints.get(0).name(), 2.0 + random.nextInt(5));
    int size = 3 + random.nextInt(2);
    while (parts.size() < size) {
      parts.put(paints.get(1 + random.nextInt(paints.size() - 1)).name(), 1.0 + random.nextInt(3));
    }
    return parts.entrySet().stream()
        .map(part -> new TestCard.Part(part.getKey(), part.getValue()))
        .toList();
  }

  /** A paint of which nothing is written down but its name. */
  static Paint unseen(Paint paint) {
    return Paint.of(paint.name(), paint.medium())
        .withFinish(paint.finish())
        .withMake(paint.make())
        .withDropMillilitres(paint.dropMillilitres());
  }
}
