package io.github.swatchwright.mix;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.estimate.PaintedPatch;
import io.github.swatchwright.estimate.ShelfFit;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.mix.SyntheticPigments.Pigment;
import io.github.swatchwright.optics.OpticalConstants;
import io.github.swatchwright.paint.Make;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.Bands;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.Function;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Intervals on paints of other kinds than those on which their widths were set: ready-mixed paints,
 * and pigments whose spectra are random curves of no family.
 */
@Tag("statistics")
class OtherFamiliesTest {
  private static final int SHELVES = 10;
  private static final int PAINTS = 10;
  private static final double ERROR = 0.5;
  private static final double AMOUNT_ERROR = 0.05;

  /** Predictions against the truth. */
  private static final class Tally {
    private final DescriptiveStatistics errors = new DescriptiveStatistics();
    private final DescriptiveStatistics radii = new DescriptiveStatistics();
    private int held;

    double held() {
      return (double) held / errors.getN();
    }

    void print(String name) {
      System.out.printf(
          Locale.ROOT,
          "other families: %-44s median %5.2f  p90 %5.2f  80 %% interval holds %4.1f %%"
              + " (median radius %.2f)  (%d mixes)%n",
          name,
          errors.getPercentile(50),
          errors.getPercentile(90),
          100 * held(),
          radii.getPercentile(50),
          errors.getN());
    }
  }

  /** White, and paints of it with one or two pigments and more or less binder. */
  private static List<Pigment> readyMixed(long seed) {
    Random random = new Random(seed);
    List<Pigment> pigments = SyntheticPigments.shelf(seed + 4000);
    List<Pigment> paints = new ArrayList<>(List.of(pigments.get(0)));
    while (paints.size() < PAINTS) {
      Pigment first = pigments.get(1 + random.nextInt(13));
      Pigment second = pigments.get(1 + random.nextInt(13));
      OpticalConstants mixed =
          OpticalConstants.mix(
              new OpticalConstants[] {pigments.get(0).truth(), first.truth(), second.truth()},
              new double[] {
                0.5 + random.nextDouble(), 0.4 * random.nextDouble(), 0.1 * random.nextDouble()
              });
      paints.add(new Pigment("mixed " + paints.size(), scaled(mixed, 0.2 * random.nextGaussian())));
    }
    return paints;
  }

  private static OpticalConstants scaled(OpticalConstants constants, double logFactor) {
    double[] k = new double[Bands.COUNT];
    double[] s = new double[Bands.COUNT];
    for (int band = 0; band < Bands.COUNT; band++) {
      k[band] = constants.k(band) * Math.exp(logFactor);
      s[band] = constants.s(band) * Math.exp(logFactor);
    }
    return OpticalConstants.of(k, s);
  }

  /** White, and paints whose ln K wanders smoothly over three decades, at any level of S. */
  private static List<Pigment> wandering(long seed) {
    Random random = new Random(seed);
    List<Pigment> paints = new ArrayList<>(List.of(SyntheticPigments.shelf(seed + 4000).get(0)));
    while (paints.size() < PAINTS) {
      double level = Math.log(0.02) + Math.log(40) * random.nextDouble();
      double slope = -1.5 * random.nextDouble();
      double ratio = Math.log(0.6) + 1.2 * random.nextGaussian();
      double[] heights = random.doubles(3, -1, 1).toArray();
      double[] phases = random.doubles(3, 0, 2 * Math.PI).toArray();
      double[] k = new double[Bands.COUNT];
      double[] s = new double[Bands.COUNT];
      for (int band = 0; band < Bands.COUNT; band++) {
        double nm = Bands.wavelengthNm(band);
        double wave = ratio;
        for (int i = 0; i < heights.length; i++) {
          wave += 2.2 / (i + 1) * heights[i] * Math.sin((i + 1) * (nm - 380) / 110 + phases[i]);
        }
        double logS = level + slope * Math.log(nm / 550);
        s[band] = Math.exp(logS);
        k[band] = Math.exp(logS + wave);
      }
      paints.add(new Pigment("wandering " + paints.size(), OpticalConstants.of(k, s)));
    }
    return paints;
  }

  private static Paint noisy(Paint paint, Random random) {
    Lab lab = blurred(paint.masstone().orElseThrow().lab(), random);
    Paint noisy =
        Paint.of(paint.name(), paint.medium(), new Swatch.OfLab(lab))
            .withMake(paint.make())
            .withSwatchError(ERROR);
    return paint.hiding().map(noisy::withHiding).orElse(noisy);
  }

  private static Lab blurred(Lab lab, Random random) {
    return Lab.ofD65(
        Math.min(100, Math.max(0, lab.l() + ERROR * random.nextGaussian())),
        lab.a() + ERROR * random.nextGaussian(),
        lab.b() + ERROR * random.nextGaussian());
  }

  private static PaintedPatch tint(Pigment white, Pigment other, double parts, Random random) {
    OpticalConstants truth =
        OpticalConstants.mix(
            new OpticalConstants[] {white.truth(), other.truth()},
            new double[] {
              parts * Math.exp(AMOUNT_ERROR * random.nextGaussian()),
              Math.exp(AMOUNT_ERROR * random.nextGaussian())
            });
    Map<String, Double> volumes = new LinkedHashMap<>();
    volumes.put(white.name(), parts);
    volumes.put(other.name(), 1.0);
    return new PaintedPatch(
        volumes,
        AMOUNT_ERROR,
        new Swatch.OfLab(blurred(SyntheticPigments.VIEWING.lab(truth.opaque()), random)),
        ERROR,
        Optional.empty(),
        OptionalDouble.empty());
  }

  private static void weigh(ShelfOptics optics, List<Pigment> paints, Random random, Tally tally) {
    MixPredictor predictor =
        MixPredictor.of(optics, SyntheticPigments.VIEWING.weights()).withDropScatter(0);
    for (int i = 0; i < 220; i++) {
      Map<Pigment, Double> mix = new LinkedHashMap<>();
      int size = 2 + random.nextInt(2);
      while (mix.size() < size) {
        mix.put(paints.get(random.nextInt(PAINTS)), 1.0 + random.nextInt(6));
      }
      List<Mix.Part> parts = new ArrayList<>();
      mix.forEach(
          (paint, drops) -> parts.add(new Mix.Part(optics.shelf().paint(paint.name()), drops)));
      Lab truth =
          SyntheticPigments.VIEWING.lab(
              OpticalConstants.mix(
                      mix.keySet().stream().map(Pigment::truth).toArray(OpticalConstants[]::new),
                      mix.values().stream().mapToDouble(drops -> drops).toArray())
                  .opaque());
      Prediction prediction = predictor.predict(new Mix(parts));
      double error = Ciede2000.deltaE(truth, prediction.lab());
      tally.errors.addValue(error);
      tally.radii.addValue(prediction.intervalDeltaE00());
      tally.held += error <= prediction.intervalDeltaE00() ? 1 : 0;
    }
  }

  private static List<Tally> climb(
      String name, Function<Long, List<Pigment>> family, Function<Pigment, Paint> known) {
    Tally before = new Tally();
    Tally one = new Tally();
    Tally two = new Tally();
    for (long seed = 0; seed < SHELVES; seed++) {
      Random random = new Random(seed);
      List<Pigment> paints = family.apply(seed);
      Shelf shelf =
          Shelf.of(
              "invented", paints.stream().map(paint -> noisy(known.apply(paint), random)).toList());
      ShelfOptics prior = ShelfOptics.estimate(shelf);
      List<PaintedPatch> cards = new ArrayList<>();
      for (Pigment paint : paints.subList(1, PAINTS)) {
        cards.add(tint(paints.get(0), paint, 5, random));
      }
      weigh(prior, paints, random, before);
      weigh(fitted(prior, cards), paints, random, one);
      for (Pigment paint : paints.subList(1, PAINTS)) {
        cards.add(tint(paints.get(0), paint, 1, random));
      }
      weigh(fitted(prior, cards), paints, random, two);
    }
    before.print(name);
    one.print(name + ", a 1:5 card each");
    two.print(name + ", a 1:1 card as well");
    return List.of(before, one, two);
  }

  private static ShelfOptics fitted(ShelfOptics prior, List<PaintedPatch> cards) {
    return ShelfOptics.estimate(ShelfFit.of(prior, cards).shelf());
  }

  @Test
  void intervalsOfReadyMixedPaintsAreNotTooNarrow() {
    assertHeld(
        climb(
            "ready-mixed, swatch and make",
            OtherFamiliesTest::readyMixed,
            paint -> paint.swatch(Make.READY_MIXED)));
    assertHeld(
        climb(
            "ready-mixed, make not stated",
            OtherFamiliesTest::readyMixed,
            paint -> paint.swatch(Make.UNSTATED)));
  }

  @Test
  void intervalsOfPigmentsOfNoFamilyAreNotTooNarrow() {
    assertHeld(
        climb(
            "wandering spectra, contrast ratio",
            OtherFamiliesTest::wandering,
            Pigment::withContrastRatio));
  }

  /**
   * Without a card they may be wide: nothing tells that these paints scatter more evenly over the
   * bands than those that set the widths, nor that they are ready-mixed. Cards tell; what then is
   * too wide by more than a tenth would be a fault.
   */
  private static void assertHeld(List<Tally> tallies) {
    for (Tally tally : tallies) {
      assertThat(tally.errors.getN()).isGreaterThanOrEqualTo(2000);
      assertThat(tally.held()).isGreaterThanOrEqualTo(0.74);
    }
    for (Tally tally : tallies.subList(1, tallies.size())) {
      assertThat(tally.held()).isLessThanOrEqualTo(0.9);
    }
  }
}
