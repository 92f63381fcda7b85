package io.github.swatchwright.photo;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.spectrum.Illuminant;
import io.github.swatchwright.spectrum.Reflectance;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * Munsell renotation colours (Newhall, Nickerson and Judd 1943) through an invented camera, against
 * the colours that they have under daylight. The error models were set on scenes with other seeds
 * than this one.
 */
class SyntheticCameraTest {
  private static final int TEST_COLOURS = 96;
  private static final int TRAINING_COLOURS = 48;
  private static final int CHART_COLOURS = 24;

  /** Marks figures of those colours that an sRGB file can hold. */
  private static final String HELD = ", in gamut";

  private static final int SCENES = 12;
  private static final long SEED = 1943;
  private static final List<Illuminant> LIGHTS =
      List.of(Illuminant.D65, Illuminant.A, Illuminant.LED_B3);
  private static final Map<String, Figures> BY_REFERENCE = new LinkedHashMap<>();

  /** How far colours were off, by the reference used. */
  private static final class Figures {
    private final List<Double> errors = new ArrayList<>();
    private int held;

    void add(PhotoColour colour, Lab truth) {
      double error = Ciede2000.deltaE(colour.lab(), truth);
      errors.add(error);
      held += error <= colour.intervalDeltaE00() ? 1 : 0;
    }

    double quantile(double share) {
      return errors.stream().sorted().toList().get((int) (share * errors.size()));
    }

    double heldShare() {
      return (double) held / errors.size();
    }
  }

  @BeforeAll
  static void shoot() throws IOException {
    Random random = new Random(SEED);
    List<Reflectance> drawn = MunsellColours.drawn(TEST_COLOURS + TRAINING_COLOURS, SEED);
    List<Reflectance> training = drawn.subList(TEST_COLOURS, drawn.size());
    List<Reflectance> scene = new ArrayList<>(drawn.subList(0, TEST_COLOURS));
    scene.addAll(MunsellColours.chart(CHART_COLOURS - 6, SEED + 1));
    scene.add(Reflectance.constant(0.18));
    for (Illuminant light : LIGHTS) {
      for (int i = 0; i < SCENES; i++) {
        SyntheticCamera camera = new SyntheticCamera(random, training);
        double stops = 2 * random.nextDouble() - 1;
        measure(camera.shoot(scene, light, stops), scene, light);
      }
    }
    StringBuilder table =
        new StringBuilder("ΔE00 by reference and light: median, p90, held by the 80 % interval\n");
    BY_REFERENCE.forEach(
        (key, figures) ->
            table.append(
                String.format(
                    Locale.ROOT,
                    "%-18s %5d colours  %6.2f  %6.2f  %5.1f %%%n",
                    key,
                    figures.errors.size(),
                    figures.quantile(0.5),
                    figures.quantile(0.9),
                    100 * figures.heldShare())));
    System.out.print(table);
  }

  private static void measure(ArgbPhoto photo, List<Reflectance> scene, Illuminant light) {
    RegionSample card = RegionSampler.sample(photo, SyntheticCamera.middle(scene.size() - 1));
    List<ChartPatch> chart = new ArrayList<>();
    for (int i = TEST_COLOURS; i < TEST_COLOURS + CHART_COLOURS; i++) {
      readable(photo, i)
          .ifPresent(sample -> chart.add(new ChartPatch(sample.mean(), truth(scene, sample))));
    }
    Map<String, PhotoCorrection> corrections = new LinkedHashMap<>();
    corrections.put("none", new NoReference());
    corrections.put("grey", GreyCorrection.of(List.of(new NeutralPatch(card, 18))));
    corrections.put("chart", ChartCorrection.of(chart));
    corrections.forEach(
        (name, correction) -> {
          for (int i = 0; i < TEST_COLOURS; i++) {
            readable(photo, i)
                .ifPresent(
                    sample -> {
                      PhotoColour colour = correction.colour(sample);
                      Lab truth = truth(scene, sample);
                      boolean held = !sample.shares().isCrushed();
                      figures(name).add(colour, truth);
                      figures(name + (held ? HELD : ", too strong")).add(colour, truth);
                      figures(name + ", " + light).add(colour, truth);
                    });
          }
        });
  }

  private static Figures figures(String key) {
    return BY_REFERENCE.computeIfAbsent(key, none -> new Figures());
  }

  private static Lab truth(List<Reflectance> scene, RegionSample sample) {
    int patch =
        sample.region().y() / SyntheticCamera.PATCH * SyntheticCamera.COLUMNS
            + sample.region().x() / SyntheticCamera.PATCH;
    return TristimulusWeights.D65.xyz(scene.get(patch)).toLab();
  }

  /** A patch whose colour the file still holds: hardly any of its pixels clipped. */
  private static Optional<RegionSample> readable(ArgbPhoto photo, int patch) {
    try {
      RegionSample sample = RegionSampler.sample(photo, SyntheticCamera.middle(patch));
      return Optional.of(sample)
          .filter(read -> read.shares().clipped() <= NeutralPatch.MOST_CLIPPED);
    } catch (IllegalArgumentException clippedOrBlack) {
      return Optional.empty();
    }
  }

  @Test
  @DisplayName("Munsell renotation: a grey card at least halves the error of no reference")
  void greyHalvesTheError() {
    assertThat(figures("grey").quantile(0.5)).isLessThan(figures("none").quantile(0.5) / 2);
    assertThat(figures("grey" + HELD).quantile(0.9))
        .isLessThan(figures("none" + HELD).quantile(0.9) / 2);
  }

  @Test
  @DisplayName("Munsell renotation: a colour chart at least halves the error of a grey card")
  void chartHalvesTheErrorAgain() {
    assertThat(figures("chart").quantile(0.5)).isLessThan(figures("grey").quantile(0.5) / 2);
    assertThat(figures("chart" + HELD).quantile(0.9))
        .isLessThan(figures("grey" + HELD).quantile(0.9) / 2);
  }

  @Test
  @DisplayName("Munsell renotation: the 80 % interval holds 74 to 86 % of the colours")
  void intervalsAreHonest() {
    for (String reference : List.of("none", "grey", "chart")) {
      assertThat(figures(reference).heldShare()).as(reference).isBetween(0.74, 0.86);
    }
  }
}
