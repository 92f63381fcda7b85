package io.github.swatchwright.photo;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.spectrum.Bands;
import io.github.swatchwright.spectrum.Illuminant;
import io.github.swatchwright.spectrum.Reflectance;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * Pairs of Munsell colours, near and far, through the invented camera: how far each is off, how far
 * their difference is off, and one of them read beside the other, whose colour is known. The error
 * model's figures were set on scenes with other seeds than this one; on those, 77 to 93 % of a
 * scene's colours lay in the 80 % interval.
 */
class TwoPatchesTest {
  private static final int COLOURS = 96;
  private static final int TRAINING = 48;
  private static final int CHART = 24;
  private static final int CARD = COLOURS + CHART;
  private static final int SCENES = 12;
  private static final long SEED = 1943;

  /** How well the known patch is known: a hand-held meter, sd. */
  private static final double KNOWN = 0.5;

  /** How much of another colour is mixed into a colour, to get one near to it. */
  private static final double[] SHARES = {0.02, 0.05, 0.1, 0.2, 0.4, 1};

  /** Upper ends of the classes of pairs, ΔE00. */
  private static final double[] CLASSES = {4, 10, 25, 200};

  private static final Map<String, Figures> FIGURES = new LinkedHashMap<>();

  /** Errors in ΔE00 of a class of pairs. */
  private static final class Figures {
    private final List<Double> alone = new ArrayList<>();
    private final List<Double> difference = new ArrayList<>();
    private final List<Double> beside = new ArrayList<>();
    private int held;
    private int differencesHeld;

    void add(PatchDifference apart, PhotoColour read, Lab truth, Lab truthOfOther) {
      Lab shifted =
          Lab.ofD65(
              truthOfOther.l() + apart.one().l() - apart.other().l(),
              truthOfOther.a() + apart.one().a() - apart.other().a(),
              truthOfOther.b() + apart.one().b() - apart.other().b());
      alone.add(Ciede2000.deltaE(apart.one(), truth));
      double differenceError = Ciede2000.deltaE(shifted, truth);
      difference.add(differenceError);
      differencesHeld += differenceError <= apart.intervalDeltaE00() ? 1 : 0;
      double error = Ciede2000.deltaE(read.lab(), truth);
      beside.add(error);
      held += error <= read.intervalDeltaE00() ? 1 : 0;
    }

    static double median(List<Double> errors) {
      return errors.stream().sorted().toList().get(errors.size() / 2);
    }

    double heldShare() {
      return (double) held / beside.size();
    }

    double differencesHeldShare() {
      return (double) differencesHeld / difference.size();
    }
  }

  @BeforeAll
  static void shoot() throws IOException {
    Random random = new Random(SEED);
    List<Reflectance> drawn = MunsellColours.drawn(COLOURS + TRAINING, SEED);
    List<Reflectance> scene = pairs(drawn);
    scene.addAll(MunsellColours.chart(CHART - 6, SEED + 1));
    scene.add(Reflectance.constant(0.18));
    for (Illuminant light : List.of(Illuminant.D65, Illuminant.A, Illuminant.LED_B3)) {
      for (int i = 0; i < SCENES; i++) {
        SyntheticCamera camera = new SyntheticCamera(random, drawn.subList(COLOURS, drawn.size()));
        measure(camera.shoot(scene, light, 2 * random.nextDouble() - 1), scene, random);
      }
    }
    System.out.print(table());
  }

  private static List<Reflectance> pairs(List<Reflectance> drawn) {
    List<Reflectance> pairs = new ArrayList<>();
    for (int i = 0; i < COLOURS / 2; i++) {
      double share = SHARES[i % SHARES.length];
      double[] mixed = new double[Bands.COUNT];
      for (int band = 0; band < mixed.length; band++) {
        mixed[band] =
            (1 - share) * drawn.get(i).at(band) + share * drawn.get(COLOURS - 1 - i).at(band);
      }
      pairs.add(drawn.get(i));
      pairs.add(Reflectance.of(mixed));
    }
    return pairs;
  }

  private static void measure(ArgbPhoto photo, List<Reflectance> scene, Random random) {
    List<ChartPatch> chart = new ArrayList<>();
    for (int i = COLOURS; i < CARD; i++) {
      Lab truth = truth(scene, i);
      readable(photo, i).ifPresent(sample -> chart.add(new ChartPatch(sample.mean(), truth)));
    }
    RegionSample card = readable(photo, CARD).orElseThrow();
    Map<String, PhotoCorrection> corrections = new LinkedHashMap<>();
    corrections.put("none", new NoReference());
    corrections.put("grey", GreyCorrection.of(List.of(new NeutralPatch(card, 18))));
    corrections.put("chart", ChartCorrection.of(chart));
    for (int i = 0; i < COLOURS; i += 2) {
      Optional<RegionSample> one = readable(photo, i);
      Optional<RegionSample> other = readable(photo, i + 1);
      if (one.isPresent() && other.isPresent()) {
        pair(corrections, one.get(), other.get(), truth(scene, i), truth(scene, i + 1), random);
      }
    }
  }

  private static void pair(
      Map<String, PhotoCorrection> corrections,
      RegionSample one,
      RegionSample other,
      Lab truth,
      Lab truthOfOther,
      Random random) {
    double apart = Ciede2000.deltaE(truth, truthOfOther);
    int which = 0;
    while (apart > CLASSES[which]) {
      which++;
    }
    String pairs = "to ΔE00 " + (int) CLASSES[which];
    Lab known =
        Lab.ofD65(
            truthOfOther.l() + KNOWN * random.nextGaussian(),
            truthOfOther.a() + KNOWN * random.nextGaussian(),
            truthOfOther.b() + KNOWN * random.nextGaussian());
    corrections.forEach(
        (name, correction) -> {
          PhotoCorrection beside =
              BesideCorrection.of(correction, new KnownPatch(other, known, KNOWN));
          for (String key : List.of(name + " " + pairs, name)) {
            FIGURES
                .computeIfAbsent(key, none -> new Figures())
                .add(
                    PatchDifference.of(correction, one, other),
                    beside.colour(one),
                    truth,
                    truthOfOther);
          }
        });
  }

  private static Lab truth(List<Reflectance> scene, int patch) {
    return TristimulusWeights.D65.xyz(scene.get(patch)).toLab();
  }

  /** A patch whose colour the file holds: neither clipped nor too strong. */
  private static Optional<RegionSample> readable(ArgbPhoto photo, int patch) {
    try {
      return Optional.of(RegionSampler.sample(photo, SyntheticCamera.middle(patch)))
          .filter(read -> read.shares().clipped() <= NeutralPatch.MOST_CLIPPED)
          .filter(read -> !read.shares().isCrushed());
    } catch (IllegalArgumentException clippedOrBlack) {
      return Optional.empty();
    }
  }

  private static Figures figures(String pairs) {
    return Objects.requireNonNull(FIGURES.get(pairs));
  }

  private static String table() {
    StringBuilder table =
        new StringBuilder("Median ΔE00: one alone, the difference, read beside; 80 % hold\n");
    FIGURES.forEach(
        (key, f) ->
            table.append(
                String.format(
                    Locale.ROOT,
                    "%-20s %5d pairs  %6.2f  %6.2f  %6.2f  %5.1f %%  %5.1f %%%n",
                    key,
                    f.alone.size(),
                    Figures.median(f.alone),
                    Figures.median(f.difference),
                    Figures.median(f.beside),
                    100 * f.differencesHeldShare(),
                    100 * f.heldShare())));
    return table.toString();
  }

  @Test
  @DisplayName("Munsell renotation: the difference of like colours is three times surer")
  void differencesOfLikeColoursAreSurer() {
    for (String reference : List.of("none", "grey")) {
      Figures alike = figures(reference + " to ΔE00 4");
      assertThat(Figures.median(alike.difference)).isLessThan(Figures.median(alike.alone) / 3);
      Figures near = figures(reference + " to ΔE00 10");
      assertThat(Figures.median(near.difference)).isLessThan(Figures.median(near.alone));
    }
  }

  @Test
  @DisplayName("Munsell renotation: read beside a known patch, no class of pairs is worse")
  void besideIsNeverWorse() {
    FIGURES.forEach(
        (key, figures) ->
            assertThat(Figures.median(figures.beside))
                .as(key)
                // The known patch itself is off by ΔE00 0.8 (sd 0.5 on each axis), which chart
                // readings, themselves off by less, gain nothing from and lose a little by.
                .isLessThan(1.05 * Figures.median(figures.alone) + 0.2));
  }

  @Test
  @DisplayName("Munsell renotation: 80 % intervals of differences and beside hold 74 to 92 %")
  void intervalsBesideAreHonest() {
    for (String reference : List.of("none", "grey", "chart")) {
      Figures figures = figures(reference);
      assertThat(figures.heldShare()).as(reference).isBetween(0.74, 0.92);
      assertThat(figures.differencesHeldShare()).as(reference).isBetween(0.74, 0.92);
    }
  }
}
