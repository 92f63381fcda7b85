package io.github.swatchwright.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.RgbSpace;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;
import org.apache.commons.math3.stat.descriptive.rank.Percentile.EstimationType;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

/** Means and lines that strays can't bend. */
class RobustMeansTest {

  @RepeatedTest(20)
  @DisplayName("Tukey's fences by the quartiles of Commons Math (type 1)")
  void strayLevelsAreThoseOutsideTukeysFences(RepetitionInfo repetition) {
    Random random = new Random(repetition.getCurrentRepetition());
    ChannelCounts counts = new ChannelCounts(256);
    int spread = 1 + random.nextInt(20);
    double[] levels = new double[50 + random.nextInt(200)];
    for (int i = 0; i < levels.length; i++) {
      boolean stray = random.nextInt(6) == 0;
      double level = stray ? random.nextInt(256) : 120 + spread * random.nextGaussian();
      levels[i] = Math.max(0, Math.min(255, Math.rint(level)));
      counts.counts[(int) levels[i]]++;
    }
    Percentile quartiles = new Percentile().withEstimationType(EstimationType.R_1);
    double lower = quartiles.evaluate(levels, 25);
    double upper = quartiles.evaluate(levels, 75);
    double reach = 1.5 * Math.max(3, upper - lower);
    double[] light =
        Arrays.stream(levels)
            .filter(level -> Math.abs(2 * level - lower - upper) <= upper - lower + 2 * reach)
            .map(level -> RgbSpace.SRGB.decode(level / 255))
            .toArray();

    ChannelCounts.Mean mean = counts.mean(RgbSpace.SRGB, true);

    assertThat(mean.kept()).isEqualTo(light.length);
    assertThat(mean.mean()).isCloseTo(Arrays.stream(light).average().orElseThrow(), within(1e-12));
    ChannelCounts.Mean plain = counts.mean(RgbSpace.SRGB, false);
    assertThat(plain.kept()).isEqualTo(levels.length);
  }

  // y = 2 + 3·x but for three in ten, which lie far off to one side.
  @Test
  void threeInTenStraysDoNotBendALine() {
    List<double[]> rows = new ArrayList<>();
    double[] y = new double[100];
    for (int i = 0; i < y.length; i++) {
      rows.add(new double[] {1, i / 100.0});
      y[i] = 2 + 0.03 * i + (i % 10 < 3 ? 5 + i : 0);
    }

    RobustLine line = RobustLine.fit(rows, y);

    assertThat(line.coefficient(0)).isCloseTo(2, within(1e-9));
    assertThat(line.coefficient(1)).isCloseTo(3, within(1e-9));
    assertThat(line.scatter()).as("no less than an 8-bit step").isEqualTo(1e-3);
  }

  // Tukey's biweight is 95 % as sure as least squares on a normal distribution: of 2,000 points of
  // sd 0.1 the mean has sd 0.0023, and the sd itself, told by the median, 0.003.
  @Test
  void noiseAloneIsAveragedAndItsSizeTold() {
    Random random = new Random(4);
    List<double[]> rows = new ArrayList<>();
    double[] y = new double[2000];
    for (int i = 0; i < y.length; i++) {
      rows.add(new double[] {1});
      y[i] = 7 + 0.1 * random.nextGaussian();
    }

    RobustLine line = RobustLine.fit(rows, y);

    assertThat(line.coefficient(0)).isCloseTo(7, within(0.007));
    assertThat(line.scatter()).isCloseTo(0.1, within(0.009));
  }

  @Test
  void aLineThatRowsCannotTellIsRefused() {
    List<double[]> rows = List.of(new double[] {1, 1}, new double[] {1, 1});

    assertThatIllegalArgumentException()
        .isThrownBy(() -> RobustLine.fit(rows, new double[] {1, 2}))
        .withMessage("the plain areas are too few to fit a light by");
  }
}
