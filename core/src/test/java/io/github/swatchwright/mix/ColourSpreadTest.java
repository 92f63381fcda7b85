package io.github.swatchwright.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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

  // All points of a plane cut of the ellipsoid lie on the ellipsoid: x'Σ⁻¹x = χ², whatever the
  // axes.
  @Test
  void theOutlineLiesOnTheEllipsoid() {
    double[][] covariance = {{1.0, 0.6, 0.2}, {0.6, 2.0, -0.4}, {0.2, -0.4, 1.5}};
    RealMatrix inverse =
        new LUDecomposition(MatrixUtils.createRealMatrix(covariance)).getSolver().getInverse();
    List<Lab> outline = ColourSpread.of(RUST, covariance).outline(12, 0.8);
    for (Lab colour : outline) {
      double[] off = {colour.l() - 42, colour.a() - 20, colour.b() - 25};
      double square =
          MatrixUtils.createRealVector(off)
              .dotProduct(inverse.operate(MatrixUtils.createRealVector(off)));
      assertThat(square).isCloseTo(4.642, within(1e-3));
    }
    assertThat(outline)
        .extracting(Lab::l)
        .allSatisfy(l -> assertThat(l).isLessThanOrEqualTo(outline.get(0).l()));
  }

  /** A colour that is only unsure along one line, integrated along it by Simpson's rule. */
  @ParameterizedTest(name = "along ({0}, {1}, {2})")
  @CsvSource({"1, 2, -3", "0, 1, 2", "0, 0, 2", "2, -1, 0.5"})
  void aColourOnALineIsWhereTheLineIs(double dl, double da, double db) {
    double[] line = {dl, da, db};
    double[][] covariance = new double[3][3];
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        covariance[i][j] = line[i] * line[j];
      }
    }
    Lab target = Lab.ofD65(43, 23, 21);
    double expected = 0;
    int steps = 2000;
    for (int i = 0; i <= steps; i++) {
      double t = -6 + 12.0 * i / steps;
      double weight = i == 0 || i == steps ? 1 : i % 2 == 1 ? 4 : 2;
      Lab colour = Lab.ofD65(42 + t * dl, 20 + t * da, 25 + t * db);
      expected +=
          weight
              * 12.0
              / steps
              / 3
              * Math.exp(-t * t / 2)
              / Math.sqrt(2 * Math.PI)
              * Ciede2000.deltaE(target, colour);
    }
    ColourSpread spread = ColourSpread.of(RUST, covariance);
    // 256 evenly spread points are within 1 % of an integral of so smooth a function.
    assertThat(spread.expectedDeltaE00(target) / expected).isCloseTo(1, within(0.01));
  }

  /** Over a sphere, the means of x², x⁴ and x²y² are 1/3, 1/5 and 1/15 of r² and r⁴. */
  @Test
  void fourteenPointsStandForTheCloud() {
    double[][] covariance = {{0.4, 0, 0}, {0, 0.9, 0}, {0, 0, 0.6}};
    ColourSpread spread = ColourSpread.of(RUST, covariance);
    Lab target = Lab.ofD65(45, 22, 23);
    double sum = 0;
    double[] moments = new double[4];
    for (int x = -1; x <= 1; x++) {
      for (int y = -1; y <= 1; y++) {
        for (int z = -1; z <= 1; z++) {
          int axes = Math.abs(x) + Math.abs(y) + Math.abs(z);
          if (axes == 1 || axes == 3) {
            double weight = axes == 1 ? 1 / 15.0 : 3 / 40.0;
            double out = Math.sqrt(3.0 / axes);
            Lab point =
                Lab.ofD65(
                    42 + x * out * Math.sqrt(0.4),
                    20 + y * out * Math.sqrt(0.9),
                    25 + z * out * Math.sqrt(0.6));
            sum += weight * Ciede2000.deltaE(target, point);
            moments[0] += weight;
            moments[1] += weight * out * out * x * x;
            moments[2] += weight * Math.pow(out * x, 4);
            moments[3] += weight * out * out * out * out * x * x * y * y;
          }
        }
      }
    }
    assertThat(moments).containsExactly(new double[] {1, 1, 9 / 5.0, 9 / 15.0}, within(1e-12));
    assertThat(spread.roughlyExpectedDeltaE00(target)).isCloseTo(sum, within(1e-12));
    assertThat(spread.roughlyExpectedDeltaE00(target) / spread.expectedDeltaE00(target))
        .isCloseTo(1, within(0.02));
  }

  /**
   * The cloud's points by hand: a multiple of each column of the factor, or one of every column.
   */
  @Test
  void thePointsLieAlongTheFactorOfACorrelatedCloud() {
    double[][] covariance = {{1.0, 0.6, 0.2}, {0.6, 2.0, -0.4}, {0.2, -0.4, 1.5}};
    Lab target = Lab.ofD65(43, 23, 21);
    // The columns of its Cholesky factor, by hand.
    double b = Math.sqrt(2 - 0.36);
    double c = (-0.4 - 0.6 * 0.2) / b;
    double[][] columns = {{1, 0.6, 0.2}, {0, b, c}, {0, 0, Math.sqrt(1.5 - 0.04 - c * c)}};
    double sum = 0;
    for (int corner = 0; corner < 8; corner++) {
      double[] at = {42, 20, 25};
      for (int axis = 0; axis < 3; axis++) {
        for (int i = 0; i < 3; i++) {
          at[i] += ((corner & 1 << axis) == 0 ? -1 : 1) * columns[axis][i];
        }
      }
      sum += 3 / 40.0 * Ciede2000.deltaE(target, Lab.ofD65(at[0], at[1], at[2]));
    }
    for (double[] column : columns) {
      for (double out : new double[] {Math.sqrt(3), -Math.sqrt(3)}) {
        Lab point = Lab.ofD65(42 + out * column[0], 20 + out * column[1], 25 + out * column[2]);
        sum += Ciede2000.deltaE(target, point) / 15;
      }
    }
    assertThat(ColourSpread.of(RUST, covariance).roughlyExpectedDeltaE00(target))
        .isCloseTo(sum, within(1e-12));
  }

  @Test
  void knowledgeTakesItsPartOffTheCovariance() {
    double[][] covariance = {{1.0, 0.6, 0.2}, {0.6, 2.0, -0.4}, {0.2, -0.4, 1.5}};
    double[][] explained = {{0.5, 0.3, 0.1}, {0.3, 0.6, -0.2}, {0.1, -0.2, 0.75}};
    double[][] rest = {{0.5, 0.3, 0.1}, {0.3, 1.4, -0.2}, {0.1, -0.2, 0.75}};
    ColourSpread less = ColourSpread.of(RUST, covariance).less(explained);
    ColourSpread expected = ColourSpread.of(RUST, rest);
    Lab target = Lab.ofD65(43, 23, 21);
    assertThat(less.centre()).isEqualTo(RUST);
    assertThat(less.standardDeviations())
        .containsExactly(
            new double[] {Math.sqrt(0.5), Math.sqrt(1.4), Math.sqrt(0.75)}, within(1e-12));
    assertThat(less.expectedDeltaE00(target))
        .isCloseTo(expected.expectedDeltaE00(target), within(1e-12));
  }

  @Test
  void theSameCloudMayLieAboutAnotherColour() {
    double[][] covariance = {{1.0, 0.6, 0.2}, {0.6, 2.0, -0.4}, {0.2, -0.4, 1.5}};
    Lab green = Lab.ofD65(60, -30, 20);
    ColourSpread moved = ColourSpread.of(RUST, covariance).about(green);
    assertThat(moved.centre()).isEqualTo(green);
    assertThat(moved.radius(0.8)).isEqualTo(ColourSpread.of(green, covariance).radius(0.8));
  }

  @Test
  void theOutlineOfAColourKnownExactlyIsTheColour() {
    assertThat(ColourSpread.of(RUST, new double[3][3]).outline(3, 0.8)).containsOnly(RUST);
  }

  @Test
  void aCovarianceThatIsNoNumberIsRefused() {
    double[][] covariance = {{1, 0, 0}, {Double.NaN, 1, 0}, {0, 0, 1}};
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ColourSpread.of(RUST, covariance))
        .withMessage("covariance[1][0] is NaN, must be a finite number");
  }

  @Test
  void cloudsAreEqualWhoseCentreAndSpreadAre() {
    double[][] covariance = {{1, 0, 0}, {0, 4, 0}, {0, 0, 9}};
    ColourSpread spread = ColourSpread.of(RUST, covariance);
    assertThat(spread)
        .isEqualTo(ColourSpread.of(RUST, covariance))
        .hasSameHashCodeAs(ColourSpread.of(RUST, covariance))
        .isNotEqualTo(ColourSpread.of(Lab.ofD65(42, 20, 26), covariance))
        .isNotEqualTo(ColourSpread.of(RUST, new double[3][3]))
        .isNotEqualTo(RUST)
        .hasToString("ColourSpread[centre=" + RUST + ", sd=[1.0, 2.0, 3.0]]");
    // Different clouds may share a hash code, but a set of a hundred must not lie in one heap.
    assertThat(
            IntStream.range(0, 100)
                .map(l -> ColourSpread.of(Lab.ofD65(l, 20, 26), covariance).hashCode())
                .distinct()
                .count())
        .isGreaterThan(90);
  }
}
