package io.github.swatchwright.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.LinearRgb;
import io.github.swatchwright.colour.RgbSpace;
import io.github.swatchwright.difference.Ciede2000;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A chart of 24 invented colours, 30 pixels a patch, in a photo whose channels leak. */
class ChartTest {
  private static final int COLUMNS = 6;
  private static final int ROWS = 4;
  private static final int PATCH = 30;
  private static final Region WHERE = new Region(40, 20, COLUMNS * PATCH, ROWS * PATCH);

  private static List<LinearRgb> colours() {
    Random random = new Random(9);
    List<LinearRgb> colours = new ArrayList<>();
    for (int i = 0; i < COLUMNS * ROWS; i++) {
      colours.add(
          new LinearRgb(
              0.05 + 0.7 * random.nextDouble(),
              0.05 + 0.7 * random.nextDouble(),
              0.05 + 0.7 * random.nextDouble()));
    }
    return colours;
  }

  private static ArgbPhoto photo(List<LinearRgb> colours, int clipped) {
    int[] argb = new int[300 * 200];
    Arrays.fill(argb, 0xFF808080);
    for (int y = 0; y < WHERE.height(); y++) {
      for (int x = 0; x < WHERE.width(); x++) {
        int patch = y / PATCH * COLUMNS + x / PATCH;
        LinearRgb c = colours.get(patch);
        LinearRgb seen =
            new LinearRgb(
                0.8 * c.red() + 0.1 * c.green(),
                0.7 * c.green() + 0.05 * c.blue(),
                0.1 * c.green() + 0.5 * c.blue());
        argb[(WHERE.y() + y) * 300 + WHERE.x() + x] =
            patch < clipped ? -1 : 0xFF000000 | seen.encode().toPacked();
      }
    }
    return new ArgbPhoto(300, 200, argb, RgbSpace.SRGB);
  }

  private static List<Lab> known() {
    return colours().stream().map(colour -> colour.toXyz().toLab()).toList();
  }

  @Test
  void patchesInAGridAreFoundInThePhoto() {
    ArgbPhoto photo = photo(colours(), 0);
    Chart chart = Chart.ofGrid(COLUMNS, known());
    List<ChartPatch> seen = chart.seenIn(photo, Illumination.even(), WHERE);

    assertThat(seen).hasSize(24);
    ChartCorrection correction = ChartCorrection.of(seen);
    // 8-bit steps.
    assertThat(correction.residualDeltaE00()).isLessThan(0.5);
    for (ChartPatch patch : seen) {
      Lab lab = correction.apply(patch.seen()).toXyz().toLab();
      assertThat(Ciede2000.deltaE(lab, patch.known())).isLessThan(1);
    }
  }

  @Test
  void clippedPatchesAreLeftOutUntilTooFewAreLeft() {
    Chart chart = Chart.ofGrid(COLUMNS, known());
    assertThat(chart.seenIn(photo(colours(), 5), Illumination.even(), WHERE)).hasSize(19);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> chart.seenIn(photo(colours(), 13), Illumination.even(), WHERE))
        .withMessage(
            "of the chart's patches, 11 are neither clipped nor too dark, must be at least 12");
  }

  @Test
  void chartsOfFewPatchesOrOutsideTheirEdgesAreRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Chart.ofGrid(3, known().subList(0, 11)))
        .withMessage("the number of patches is 11, must be within [12, 2000]");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Chart.Patch(0.9, 0, 0.2, 0.1, known().get(0)))
        .withMessageStartingWith("width is 0.2, must be within [0.0, 0.1");
    Chart chart = Chart.ofGrid(COLUMNS, known());
    assertThatIllegalArgumentException()
        .isThrownBy(
            () -> chart.seenIn(photo(colours(), 0), Illumination.even(), new Region(0, 0, 4, 4)))
        .withMessage("a patch of the chart in 0,0,4,4 is smaller than a pixel");
  }
}
