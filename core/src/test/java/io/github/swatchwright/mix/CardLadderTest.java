package io.github.swatchwright.mix;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.estimate.PaintedPatch;
import io.github.swatchwright.estimate.ShelfFit;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.mix.SyntheticPigments.Pigment;
import io.github.swatchwright.optics.OpticalConstants;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * What test cards buy, and whether the intervals say so: mixes of two and three paints against a
 * known truth, over six invented shelves.
 */
@Tag("statistics")
class CardLadderTest {
  private static final int SHELVES = 6;
  private static final int MIXES = 340;
  private static final double AMOUNT_ERROR = 0.05;
  private static final double COLOUR_ERROR = 0.5;
  private static final double INSTRUMENT_ERROR = 0.05;

  private final Map<String, Rung> rungs = new LinkedHashMap<>();

  /** How wrong predictions were, and how often their intervals held the truth. */
  private static final class Rung {
    private final DescriptiveStatistics errors = new DescriptiveStatistics();
    private final DescriptiveStatistics radii = new DescriptiveStatistics();
    private int held;

    double median() {
      return errors.getPercentile(50);
    }

    double held() {
      return (double) held / errors.getN();
    }
  }

  @Test
  void errorsFallWithEveryCardAndIntervalsHoldFourFifths() {
    for (long seed = 101; seed < 101 + SHELVES; seed++) {
      climb(seed);
    }
    rungs.forEach(
        (name, rung) ->
            System.out.printf(
                Locale.ROOT,
                "card ladder: %-28s median %5.2f  p90 %5.2f  80 %% interval holds %4.1f %%"
                    + " (median radius %.2f)  (%d mixes)%n",
                name,
                rung.median(),
                rung.errors.getPercentile(90),
                100 * rung.held(),
                rung.radii.getPercentile(50),
                rung.errors.getN()));
    // The bounds that are aimed at.
    assertThat(rung("+ one 1:5 card each").median()).isLessThanOrEqualTo(2.1);
    assertThat(rung("+ a 1:1 card each").median()).isLessThanOrEqualTo(1.5);
    assertThat(rung("ladders with reflectances").median()).isLessThanOrEqualTo(0.5);
    assertThat(rung("+ one 1:5 card each").median())
        .isLessThan(0.7 * rung("swatch and contrast ratio").median());
    assertThat(rung("+ a 1:1 card each").median())
        .isLessThan(0.9 * rung("+ one 1:5 card each").median());
    assertThat(rung("ladders with reflectances").median())
        .isLessThan(0.5 * rung("+ a 1:1 card each").median());
    assertThat(rung("+ 20 measured mixes").median())
        .isLessThan(0.9 * rung("ladders with reflectances").median());
    for (Rung rung : rungs.values()) {
      assertThat(rung.errors.getN()).isGreaterThanOrEqualTo(2000);
      assertThat(rung.held()).isBetween(0.74, 0.86);
    }
  }

  private Rung rung(String name) {
    return rungs.computeIfAbsent(name, any -> new Rung());
  }

  private void climb(long seed) {
    Random random = new Random(seed);
    List<Pigment> pigments = SyntheticPigments.shelf(seed);
    List<Map<String, Double>> wanted = mixes(pigments, random);
    List<Paint> measured =
        pigments.stream().map(pigment -> noisy(pigment.withContrastRatio(), random)).toList();
    Shelf shelf = Shelf.of("invented", measured);
    test("swatch and contrast ratio", ShelfOptics.estimate(shelf), pigments, wanted);

    List<PaintedPatch> cards = tints(pigments, 5, false, random);
    test("+ one 1:5 card each", fit(shelf, cards), pigments, wanted);
    cards.addAll(tints(pigments, 1, false, random));
    test("+ a 1:1 card each", fit(shelf, cards), pigments, wanted);

    List<Paint> spectra =
        pigments.stream()
            .map(
                pigment ->
                    pigment
                        .withContrastRatio()
                        .withMasstone(reflectance(pigment.truth(), random))
                        .withSwatchError(INSTRUMENT_ERROR))
            .toList();
    Shelf instrument = Shelf.of("invented", spectra);
    List<PaintedPatch> ladders = new ArrayList<>();
    for (double white : new double[] {1, 5, 20}) {
      ladders.addAll(tints(pigments, white, true, random));
    }
    test("ladders with reflectances", fit(instrument, ladders), pigments, wanted);
    List<Map<String, Double>> pots = mixes(pigments, random);
    for (int count : new int[] {5, 10, 20}) {
      List<PaintedPatch> all = new ArrayList<>(ladders);
      for (Map<String, Double> pot : pots.subList(0, count)) {
        all.add(card(pot, pigments, true, new Random(seed + all.size())));
      }
      test("+ " + count + " measured mixes", fit(instrument, all), pigments, wanted);
    }
  }

  private static ShelfOptics fit(Shelf shelf, List<PaintedPatch> cards) {
    return ShelfOptics.estimate(ShelfFit.of(ShelfOptics.estimate(shelf), cards).shelf());
  }

  private static Paint noisy(Paint paint, Random random) {
    Lab lab = paint.masstone().orElseThrow().lab();
    return paint.withMasstone(new Swatch.OfLab(blurred(lab, random)));
  }

  private static Lab blurred(Lab lab, Random random) {
    return Lab.ofD65(
        Math.min(100, Math.max(0, lab.l() + COLOUR_ERROR * random.nextGaussian())),
        lab.a() + COLOUR_ERROR * random.nextGaussian(),
        lab.b() + COLOUR_ERROR * random.nextGaussian());
  }

  private static Swatch reflectance(OpticalConstants truth, Random random) {
    double[] seen = SyntheticPigments.VIEWING.seen(truth.opaque()).toArray();
    for (int i = 0; i < seen.length; i++) {
      double error = 3.0 / 116 * Math.cbrt(seen[i] * seen[i]) * INSTRUMENT_ERROR;
      seen[i] = Math.max(1e-4, Math.min(1, seen[i] + error * random.nextGaussian()));
    }
    return new Swatch.OfReflectance(380, 10, seen);
  }

  private static List<PaintedPatch> tints(
      List<Pigment> pigments, double white, boolean spectrum, Random random) {
    List<PaintedPatch> cards = new ArrayList<>();
    for (Pigment pigment : pigments.subList(1, pigments.size())) {
      Map<String, Double> volumes = new LinkedHashMap<>();
      volumes.put(pigments.get(0).name(), white);
      volumes.put(pigment.name(), 1.0);
      cards.add(card(volumes, pigments, spectrum, random));
    }
    return cards;
  }

  private static PaintedPatch card(
      Map<String, Double> volumes, List<Pigment> pigments, boolean spectrum, Random random) {
    Map<String, Double> poured = new LinkedHashMap<>();
    volumes.forEach(
        (name, volume) ->
            poured.put(name, volume * Math.exp(AMOUNT_ERROR * random.nextGaussian())));
    OpticalConstants truth = mixed(poured, pigments);
    Swatch seen =
        spectrum
            ? reflectance(truth, random)
            : new Swatch.OfLab(blurred(SyntheticPigments.VIEWING.lab(truth.opaque()), random));
    return new PaintedPatch(
        volumes,
        AMOUNT_ERROR,
        seen,
        spectrum ? INSTRUMENT_ERROR : COLOUR_ERROR,
        Optional.empty(),
        OptionalDouble.empty());
  }

  private static OpticalConstants mixed(Map<String, Double> volumes, List<Pigment> pigments) {
    List<OpticalConstants> parts = new ArrayList<>();
    List<Double> amounts = new ArrayList<>();
    for (Pigment pigment : pigments) {
      Double volume = volumes.get(pigment.name());
      if (volume != null) {
        parts.add(pigment.truth());
        amounts.add(volume);
      }
    }
    return OpticalConstants.mix(
        parts.toArray(OpticalConstants[]::new),
        amounts.stream().mapToDouble(amount -> amount).toArray());
  }

  private static List<Map<String, Double>> mixes(List<Pigment> pigments, Random random) {
    List<Map<String, Double>> mixes = new ArrayList<>();
    while (mixes.size() < MIXES) {
      Map<String, Double> mix = new LinkedHashMap<>();
      int paints = 2 + random.nextInt(2);
      while (mix.size() < paints) {
        mix.put(pigments.get(random.nextInt(pigments.size())).name(), 1.0 + random.nextInt(6));
      }
      mixes.add(mix);
    }
    return mixes;
  }

  private void test(
      String name, ShelfOptics optics, List<Pigment> pigments, List<Map<String, Double>> mixes) {
    MixPredictor predictor =
        MixPredictor.of(optics, SyntheticPigments.VIEWING.weights()).withDropScatter(0);
    for (Map<String, Double> volumes : mixes) {
      List<Mix.Part> parts = new ArrayList<>();
      volumes.forEach(
          (paint, drops) -> parts.add(new Mix.Part(optics.shelf().paint(paint), drops)));
      Prediction prediction = predictor.predict(new Mix(parts));
      Lab truth = SyntheticPigments.VIEWING.lab(mixed(volumes, pigments).opaque());
      double error = Ciede2000.deltaE(truth, prediction.lab());
      rung(name).errors.addValue(error);
      rung(name).radii.addValue(prediction.intervalDeltaE00());
      rung(name).held += error <= prediction.intervalDeltaE00() ? 1 : 0;
    }
  }
}
