package io.github.swatchwright.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.optics.AreaCoverage;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class SpeckleTest {
  private static final Lab BASE = Lab.ofD65(60, 0, 0);
  private static final Lab RUST = Lab.ofD65(40, 25, 30);

  private static Speckle speckle(List<Double> coverages, long seed) {
    return Speckle.of(
        BASE, coverages.stream().map(coverage -> new Speckle.Pass(RUST, coverage)).toList(), seed);
  }

  private static Speckle pass(Landing landing, double coverage, long seed) {
    return Speckle.of(BASE, List.of(new Speckle.Pass(RUST, coverage, landing)), seed);
  }

  // Demichel's shares; each pass rounds to whole cells, of which there are 20,000.
  @Property(tries = 40)
  void everyColourShowsInItsShare(
      @ForAll @Size(max = Speckle.MOST_PASSES) List<@DoubleRange(max = 1) Double> coverages,
      @ForAll long seed) {
    double[] wanted =
        AreaCoverage.visibleShares(coverages.stream().mapToDouble(Double::doubleValue).toArray());
    assertThat(speckle(coverages, seed).shares())
        .containsExactly(wanted, within(Speckle.TOLERANCE));
  }

  // 10,000 cells, rounded once.
  @Property(tries = 40)
  void aStripShowsItsShare(@ForAll @DoubleRange(max = 1) double coverage, @ForAll long seed) {
    Speckle strip = Speckle.strip(BASE, new Speckle.Pass(RUST, coverage), seed);
    assertThat(strip.shares()[1]).isCloseTo(coverage, within(0.5 / 10_000 + 1e-12));
  }

  // Another program's drawing of the SVG file, at 50 pixels a millimetre. Its curves run through
  // the cells and aren't counted in them, so that the drawing itself has to show the share.
  @ParameterizedTest
  @EnumSource
  void theDrawnMarksHaveTheirShare(Landing landing) {
    for (double coverage : new double[] {0.02, 0.1, 0.3, 0.5, 0.75, 0.95}) {
      for (long seed = 1; seed <= 5; seed++) {
        SvgPicture drawn = SvgPicture.of(pass(landing, coverage, seed).toSvg());
        assertThat(drawn.share(new ScreenColour(RUST).hex()))
            .as("%s, seed %d", coverage, seed)
            .isCloseTo(coverage, within(Speckle.TOLERANCE));
      }
    }
  }

  // Four passes over each other, as on a ladder's card. Where curves of two passes cross, rounded
  // corners of cells go to one colour or the other by chance: the largest error seen over 5 seeds
  // and
  // 5 colours is 0.0026, half as much again is allowed. Pixels of the same passes are exact.
  @Test
  void passesOverEachOtherAreDrawnInTheirShares() {
    double[] coverages = {0.44, 0.25, 0.14, 0.07};
    double[] wanted = AreaCoverage.visibleShares(coverages);
    for (long seed = 1; seed <= 5; seed++) {
      List<Speckle.Pass> passes = new ArrayList<>();
      for (int i = 0; i < coverages.length; i++) {
        passes.add(new Speckle.Pass(Lab.ofD65(20 + 8 * i, 20, 20), coverages[i]));
      }
      SvgPicture drawn = SvgPicture.of(Speckle.of(BASE, passes, seed).toSvg());
      assertThat(drawn.share(new ScreenColour(BASE).hex())).isCloseTo(wanted[0], within(0.004));
      for (int i = 0; i < coverages.length; i++) {
        assertThat(drawn.share(new ScreenColour(passes.get(i).colour()).hex()))
            .isCloseTo(wanted[i + 1], within(0.004));
      }
    }
  }

  // The cards hold a picture for each rung, once for the screen and once for paper.
  @ParameterizedTest
  @EnumSource
  void filesAreSmall(Landing landing) {
    for (double coverage : new double[] {0.1, 0.3, 0.5, 0.8}) {
      assertThat(pass(landing, coverage, 3).toSvg().length()).isLessThan(16_000);
    }
  }

  // Half a pixel, in one colour below.
  @Test
  void pixelsOfAnySizeShowTheShare() {
    Speckle speckle = speckle(List.of(0.3), 4);
    for (int[] size : new int[][] {{512, 256}, {64, 32}, {37, 91}, {1, 1}}) {
      int[] pixels = speckle.pixels(size[0], size[1]);
      assertThat(pixels).hasSize(size[0] * size[1]);
      long rust = Arrays.stream(pixels).filter(pixel -> pixel == rgb(RUST)).count();
      long base = Arrays.stream(pixels).filter(pixel -> pixel == rgb(BASE)).count();
      assertThat(rust + base).isEqualTo(pixels.length);
      assertThat((double) rust / pixels.length).isCloseTo(0.3, within(0.51 / pixels.length));
    }
  }

  private static int rgb(Lab colour) {
    return 0xFF000000 | Integer.parseInt(new ScreenColour(colour).hex().substring(1), 16);
  }

  // Neighbours across the seam differ no more often than neighbours inside: over 20 seeds, within a
  // quarter, which is about four standard deviations of 20 × 256 pairs of which a tenth differ.
  @ParameterizedTest
  @EnumSource
  void picturesTile(Landing landing) {
    double seam = 0;
    double inside = 0;
    for (long seed = 1; seed <= 20; seed++) {
      int[] pixels = pass(landing, 0.4, seed).pixels(512, 256);
      for (int row = 0; row < 256; row++) {
        seam += pixels[512 * row] != pixels[512 * row + 511] ? 1 : 0;
        for (int column = 0; column < 511; column++) {
          int at = 512 * row + column;
          inside += pixels[at] != pixels[at + 1] ? 1.0 / 511 : 0;
        }
      }
    }
    assertThat(seam / inside).isBetween(0.75, 1.25);
  }

  // A larger picture has the same marks: a pixel in the middle of a block of 3 × 3 is that of the
  // small one, but at edges that the finer grid places otherwise.
  @Test
  void everySizeShowsTheSameMarks() {
    Speckle speckle = speckle(List.of(0.3), 8);
    int[] small = speckle.pixels(200, 100);
    int[] large = speckle.pixels(600, 300);
    int same = 0;
    for (int row = 0; row < 100; row++) {
      for (int column = 0; column < 200; column++) {
        same += small[200 * row + column] == large[600 * (3 * row + 1) + 3 * column + 1] ? 1 : 0;
      }
    }
    assertThat(same / 20_000.0).isGreaterThan(0.99);
  }

  // Common practice: a flicked brush leaves many fine drops and few large ones. Counted as runs of
  // painted pixels along rows, 20 pixels a millimetre.
  @Test
  void dropsAreOfManySizes() {
    int[] pixels = pass(Landing.FLICKED, 0.12, 2).pixels(600, 300);
    Set<Integer> lengths = new TreeSet<>();
    int run = 0;
    for (int i = 0; i < pixels.length; i++) {
      if (pixels[i] == rgb(RUST)) {
        run++;
      } else {
        lengths.add(run);
        run = 0;
      }
    }
    assertThat(lengths.size()).isGreaterThan(20);
  }

  @Test
  void theSeedDecidesWhereMarksLie() {
    assertThat(speckle(List.of(0.3), 5).toSvg()).isEqualTo(speckle(List.of(0.3), 5).toSvg());
    assertThat(speckle(List.of(0.3), 5).toSvg()).isNotEqualTo(speckle(List.of(0.3), 6).toSvg());
    assertThat(speckle(List.of(0.3), 5).pixels(64, 32))
        .isEqualTo(speckle(List.of(0.3), 5).pixels(64, 32));
  }

  @Test
  void noneAndAllAreCovered() {
    assertThat(speckle(List.of(0.0), 1).shares()).containsExactly(1, 0);
    assertThat(speckle(List.of(1.0), 1).shares()).containsExactly(0, 1);
    assertThat(speckle(List.of(), 1).shares()).containsExactly(1);
    SvgPicture all = SvgPicture.of(speckle(List.of(1.0), 1).toSvg());
    assertThat(all.share(new ScreenColour(RUST).hex())).isEqualTo(1);
  }

  @Test
  void saysWhatItShows() {
    assertThat(speckle(List.of(0.2, 0.5), 1).toSvg())
        .contains("aria-label=\"Speckle: the base shows in 40 %, the passes in 10 %, 50 %\"");
  }

  @Test
  void refusesWhatIsNoCoverageTooManyPassesAndTooManyPixels() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Speckle.Pass(RUST, 1.5))
        .withMessage("coverage is 1.5, must be within [0.0, 1.0]");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> speckle(Collections.nCopies(13, 0.5), 1))
        .withMessage("number of passes is 13, must be within [0, 12]");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> speckle(List.of(), 1).pixels(4097, 4096))
        .withMessage("rows is 4096, must be within [1, 4095]");
  }
}
