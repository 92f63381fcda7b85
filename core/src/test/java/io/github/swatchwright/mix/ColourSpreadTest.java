package io.github.swatchwright.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ColourSpreadTest {
  private static final Lab RUST = Lab.ofD65(42, 20, 25);

  @Test
  void aColourKnownExactlyHasNoRadius() {
    ColourSpread exact = ColourSpread.of(RUST, new double[3][3]);
    assertThat(exact.radius(0.8)).isZero();
    Lab target = Lab.ofD65(45, 20, 25);
    assertThat(exact.expectedDeltaE00(target))
        .isCloseTo(Ciede2000.deltaE(target, RUST), within(1e-12));
  }

  @Test
  void radiusAndMeanAgreeWithALargeRandomSample() {
    double[][] covariance = {{1.0, 0.6, 0.2}, {0.6, 2.0, -0.4}, {0.2, -0.4, 1.5}};
    ColourSpread spread = ColourSpread.of(RUST, covariance);
    Lab target = Lab.ofD65(43, 21, 23);
    int count = 200_000;
    double[] radii = new double[count];
    double sum = 0;
    Random random = new Random(7);
    // Cholesky factor of the covariance, by hand.
    double b = Math.sqrt(2 - 0.36);
    double c = (-0.4 - 0.6 * 0.2) / b;
    double d = Math.sqrt(1.5 - 0.04 - c * c);
    for (int i = 0; i < count; i++) {
      double x = random.nextGaussian();
      double y = random.nextGaussian();
      double z = random.nextGaussian();
      Lab drawn = Lab.ofD65(42 + x, 20 + 0.6 * x + b * y, 25 + 0.2 * x + c * y + d * z);
      radii[i] = Ciede2000.deltaE(RUST, drawn);
      sum += Ciede2000.deltaE(target, drawn);
    }
    Arrays.sort(radii);
    // 256 points: the 80 % quantile has a standard error of about 4 %, less for quasi-random ones.
    assertThat(spread.radius(0.8) / radii[(int) (0.8 * count)]).isCloseTo(1, within(0.05));
    assertThat(spread.expectedDeltaE00(target) / (sum / count)).isCloseTo(1, within(0.02));
    assertThat(spread.standardDeviations())
        .containsExactly(new double[] {1, Math.sqrt(2), Math.sqrt(1.5)}, within(1e-12));
  }

  // Of a diagonal covariance the axes are those of CIELAB: L* (sd 2) and b* (sd 1.5) are longest.
  @Test
  void theOutlineRunsRoundTheTwoLongestAxesFromTheLightest() {
    double[][] covariance = {{4, 0, 0}, {0, 1, 0}, {0, 0, 2.25}};
    List<Lab> outline = ColourSpread.of(RUST, covariance).outline(4, 0.8);
    // The 80 % point of χ² with three degrees of freedom, from printed tables: 4.642.
    double reach = Math.sqrt(4.642);
    assertThat(outline).hasSize(4);
    assertThat(outline.get(0).l()).isCloseTo(42 + 2 * reach, within(1e-3));
    assertThat(outline.get(2).l()).isCloseTo(42 - 2 * reach, within(1e-3));
    assertThat(Math.abs(outline.get(1).b() - 25)).isCloseTo(1.5 * reach, within(1e-3));
    assertThat(outline.get(1).b() + outline.get(3).b()).isCloseTo(50, within(1e-9));
    assertThat(outline).allSatisfy(colour -> assertThat(colour.a()).isCloseTo(20, within(1e-9)));
  }

  @Test
  void theOutlineHasTheSizeOfTheInterval() {
    double[][] covariance = {{1.0, 0.6, 0.2}, {0.6, 2.0, -0.4}, {0.2, -0.4, 1.5}};
    ColourSpread spread = ColourSpread.of(RUST, covariance);
    double farthest =
        spread.outline(64, 0.8).stream()
            .mapToDouble(colour -> Ciede2000.deltaE(RUST, colour))
            .max()
            .orElseThrow();
    // The radius of a sphere in ΔE00 lies between the shortest and the longest half axis.
    assertThat(farthest).isBetween(spread.radius(0.8), 2 * spread.radius(0.8));
  }

  @Test
  void theOutlineOfAColourKnownExactlyIsTheColour() {
    assertThat(ColourSpread.of(RUST, new double[3][3]).outline(3, 0.8)).containsOnly(RUST);
  }
}
