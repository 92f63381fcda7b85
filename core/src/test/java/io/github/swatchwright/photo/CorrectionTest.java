package io.github.swatchwright.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.LinearRgb;
import io.github.swatchwright.colour.RgbSpace;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.difference.Ciede2000;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class CorrectionTest {
  private static final Region PATCH = new Region(0, 0, 16, 16);

  private static RegionSample flat(LinearRgb light) {
    int argb = 0xFF000000 | light.encode().toPacked();
    int[] pixels = new int[16 * 16];
    Arrays.fill(pixels, argb);
    return RegionSampler.sample(new ArgbPhoto(16, 16, pixels, RgbSpace.SRGB), PATCH);
  }

  private static LinearRgb dimAndWarm(LinearRgb c) {
    return new LinearRgb(0.9 * c.red(), 0.6 * c.green(), 0.35 * c.blue());
  }

  @Test
  void oneGreyPatchUndoesAWarmDimLight() {
    RegionSample card = flat(dimAndWarm(new LinearRgb(0.18, 0.18, 0.18)));
    LinearRgb rust = new LinearRgb(0.25, 0.07, 0.03);
    PhotoColour colour =
        GreyCorrection.of(List.of(new NeutralPatch(card, 18))).colour(flat(dimAndWarm(rust)));

    // 8-bit steps of two flat patches: half a unit at most at these levels.
    assertThat(Ciede2000.deltaE(colour.lab(), rust.toXyz().toLab())).isLessThan(0.5);
    assertThat(colour.lightnessKnown()).isTrue();
  }

  @Test
  void aGreyScaleAlsoFitsTheToneCurve() {
    List<NeutralPatch> scale = new ArrayList<>();
    for (double y : new double[] {4, 9, 18, 36, 70}) {
      double light = 0.8 * Math.pow(y / 100, 1.25);
      scale.add(new NeutralPatch(flat(new LinearRgb(light, light, 0.9 * light)), y));
    }
    double seen = 0.8 * Math.pow(0.27, 1.25);
    LinearRgb corrected = GreyCorrection.of(scale).apply(new LinearRgb(seen, seen, 0.9 * seen));

    // 8-bit steps of the darkest patch are 2 % of its light.
    assertThat(corrected.green()).isCloseTo(0.27, within(0.003));
    assertThat(corrected.blue()).isCloseTo(0.27, within(0.003));
  }

  @Test
  void withoutReferenceLightnessIsUnknownAndTheIntervalWide() {
    PhotoColour colour = new NoReference().colour(flat(new LinearRgb(0.25, 0.07, 0.03)));

    assertThat(colour.lightnessKnown()).isFalse();
    assertThat(colour.intervalDeltaE00()).isBetween(8.0, 15.0);
  }

  @Test
  void aClippedGreyPatchIsRefused() {
    int[] pixels = new int[16 * 16];
    Arrays.fill(pixels, 0, 128, 0xFFFFFFFF);
    Arrays.fill(pixels, 128, 256, 0xFFF0F0F0);
    RegionSample card = RegionSampler.sample(new ArgbPhoto(16, 16, pixels, RgbSpace.SRGB), PATCH);

    assertThatIllegalArgumentException()
        .isThrownBy(() -> new NeutralPatch(card, 18))
        .withMessage("the grey patch 0,0,16,16 is clipped in 50 % of its pixels: too bright");
  }

  @Test
  void aColouredGreyPatchIsRefusedButALampsColourIsNot() {
    RegionSample green = flat(new LinearRgb(0.1, 0.3, 0.1));
    RegionSample magenta = flat(new LinearRgb(0.3, 0.1, 0.3));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new NeutralPatch(green, 18))
        .withMessageContaining("is coloured");
    assertThatIllegalArgumentException().isThrownBy(() -> new NeutralPatch(magenta, 18));
    RegionSample redBrown = flat(Srgb.parse("#8A4B2A").decode());
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new NeutralPatch(redBrown, 18))
        .withMessageContaining("it is seen as #8A4B2A, and no usual lamp");

    assertThat(new NeutralPatch(flat(new LinearRgb(0.4, 0.18, 0.05)), 18).luminance())
        .isEqualTo(18);
  }

  private static List<ChartPatch> chart() {
    Random random = new Random(4);
    List<ChartPatch> chart = new ArrayList<>();
    for (int i = 0; i < 24; i++) {
      LinearRgb known =
          new LinearRgb(
              0.05 + 0.8 * random.nextDouble(),
              0.05 + 0.8 * random.nextDouble(),
              0.05 + 0.8 * random.nextDouble());
      LinearRgb seen =
          new LinearRgb(
              0.7 * known.red() + 0.1 * known.green(),
              0.6 * known.green() + 0.05 * known.blue(),
              0.1 * known.green() + 0.4 * known.blue());
      chart.add(new ChartPatch(seen, known.toXyz().toLab()));
    }
    return chart;
  }

  @Test
  void aChartUndoesChannelsThatLeakIntoEachOther() {
    List<ChartPatch> chart = chart();
    ChartCorrection correction = ChartCorrection.of(chart);

    // The distortion is a matrix, and so is its inverse: only rounding is left.
    assertThat(correction.residualDeltaE00()).isLessThan(1e-6);
    Lab lab = correction.apply(chart.get(5).seen()).toXyz().toLab();
    assertThat(Ciede2000.deltaE(lab, chart.get(5).known())).isLessThan(1e-6);
  }

  @Test
  void aChartInTheWrongOrderIsRefused() {
    List<ChartPatch> chart = chart();
    List<Lab> known = new ArrayList<>(chart.stream().map(ChartPatch::known).toList());
    // Known colours as the photo has them, but for half of the patches, which are exchanged.
    List<ChartPatch> wrong = new ArrayList<>();
    Collections.shuffle(known.subList(0, 11), new Random(1));
    for (int i = 0; i < known.size(); i++) {
      wrong.add(new ChartPatch(LinearRgb.ofXyz(chart.get(i).known().toXyz()), known.get(i)));
    }

    assertThatIllegalArgumentException()
        .isThrownBy(() -> ChartCorrection.of(wrong))
        .withMessageStartingWith("the chart doesn't fit the photo");
  }

  @Test
  void aChartOfFewOrEqualPatchesIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ChartCorrection.of(chart().subList(0, 5)))
        .withMessage("the chart has 5 patches, must have at least 12");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ChartCorrection.of(Collections.nCopies(24, chart().get(0))))
        .withMessage("the patches of the chart are too alike to fit by");
  }
}
