package io.github.swatchwright.difference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.WhitePoint;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The public face: whites, terms and their signs, factors, arrays and refusals. */
class Ciede2000Test {
  private static final double ROUNDING = 1e-12;

  @Test
  void differentWhitesAreRefusedAndNamed() {
    assertThatThrownBy(
            () -> Ciede2000.deltaE(Lab.ofD65(50, 0, 0), new Lab(50, 0, 0, WhitePoint.D50)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("D65")
        .hasMessageContaining("D50");
  }

  @Test
  void bareCoordinatesThatAreNotFiniteAreRefusedAndNamed() {
    assertThatThrownBy(() -> Ciede2000.deltaE(50, Double.NaN, 0, 50, 0, 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a1 is NaN, must be a finite number");
    assertThatThrownBy(() -> Ciede2000.deltaE(50, 0, 0, Double.NEGATIVE_INFINITY, 0, 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith("l2 is -Infinity");
  }

  @Test
  void factorsOutsideTheirRangeAreRefused() {
    assertThatThrownBy(() -> Ciede2000.withFactors(1, 0, 1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("kC is 0.0, must be within [0.001, 1000.0]");
  }

  @Test
  void termsAreThoseOfThePublishedIntermediateValues() {
    // Sharma, Wu and Dalal 2005, table 1, pair 25: C′ 49.7590 and 52.2238, h′ 133.2085°, 130.9584°.
    Lab reference = Lab.ofD65(60.2574, -34.0099, 36.2677);
    Lab sample = Lab.ofD65(60.4626, -34.1751, 39.4387);
    ColourDifference terms = Ciede2000.STANDARD.compare(reference, sample);
    double halfAngle = Math.toRadians((130.9584 - 133.2085) / 2);
    assertThat(terms.deltaE()).isCloseTo(1.2644, within(0.5e-4));
    assertThat(terms.deltaL()).isCloseTo(0.2052, within(ROUNDING));
    // Two printed values, each within 0.5e-4.
    assertThat(terms.deltaC()).isCloseTo(52.2238 - 49.7590, within(1e-4));
    assertThat(terms.deltaH())
        .isCloseTo(2 * Math.sqrt(49.7590 * 52.2238) * Math.sin(halfAngle), within(1e-4));
  }

  @Test
  void deltaHIsPositiveFromRedToYellow() {
    ColourDifference terms =
        Ciede2000.STANDARD.compare(Lab.ofD65(50, 40, 0), Lab.ofD65(50, 28, 28));
    assertThat(terms.deltaH()).isPositive();
  }

  @Test
  void greysHaveNoHueDifference() {
    ColourDifference terms =
        Ciede2000.STANDARD.compare(Lab.ofD65(50, 0, 0), Lab.ofD65(50, -20, 10));
    assertThat(terms.deltaH()).isZero();
    assertThat(terms.deltaC()).isPositive();
  }

  @Test
  void lightnessCountsHalfWithAFactorOfTwo() {
    Lab dark = Lab.ofD65(49, 10, 10);
    Lab light = Lab.ofD65(51, 10, 10);
    // Mean L* 50, where S_L = 1.
    assertThat(Ciede2000.deltaE(dark, light)).isCloseTo(2, within(ROUNDING));
    assertThat(Ciede2000.withFactors(2, 1, 1).difference(dark, light))
        .isCloseTo(1, within(ROUNDING));
  }

  @Test
  void arraysGiveWhatSingleColoursGive() {
    SplittableRandom random = new SplittableRandom(7);
    double[][] columns = new double[6][256];
    for (int i = 0; i < 256; i++) {
      PairKind kind = i % 2 == 0 ? PairKind.ANY : PairKind.ONE_NEUTRAL;
      double[] pair = kind.next(random);
      for (int column = 0; column < 6; column++) {
        columns[column][i] = pair[column];
      }
    }
    columns[1][3] = 1e60;
    double[] pairwise = new double[256];
    double[] fromReference = new double[256];
    Lab reference = Lab.ofD65(40, 12, -30);
    Ciede2000 formula = Ciede2000.withFactors(2, 1, 1.5);
    formula.differences(
        columns[0], columns[1], columns[2], columns[3], columns[4], columns[5], pairwise);
    formula.differences(reference, columns[0], columns[1], columns[2], fromReference);
    for (int i = 0; i < 256; i++) {
      Lab first = Lab.ofD65(columns[0][i], columns[1][i], columns[2][i]);
      Lab second = Lab.ofD65(columns[3][i], columns[4][i], columns[5][i]);
      assertThat(pairwise[i]).isEqualTo(formula.difference(first, second));
      assertThat(fromReference[i]).isEqualTo(formula.difference(reference, first));
    }
  }

  @Test
  void hueDifferencesOfOppositeColoursGoFromTheSmallerAngleToTheGreater() {
    // ISO/CIE 11664-6: h2 − h1 of exactly 180° keeps its sign, with hues of 0° to below 360°.
    double[][] opposites = {{10, 0}, {0, 10}, {-10, 0}, {0, -10}};
    for (int i = 0; i < 4; i++) {
      double[] one = opposites[i];
      double[] other = opposites[(i + 2) % 4];
      double deltaH =
          Ciede2000.STANDARD
              .compare(Lab.ofD65(50, one[0], one[1]), Lab.ofD65(50, other[0], other[1]))
              .deltaH();
      assertThat(Math.signum(deltaH)).as("from %s°", 90 * i).isEqualTo(i < 2 ? 1 : -1);
    }
  }

  @Test
  void termsOfHugeColoursAreThoseOfGeometry() {
    // Far out G is 0: chroma and hue differences are those of the plain plane.
    Lab right = Lab.ofD65(50, 3e200, 0);
    ColourDifference longer = Ciede2000.STANDARD.compare(right, Lab.ofD65(50, 5e200, 0));
    assertThat(longer.deltaC() / 2e200).isCloseTo(1, within(ROUNDING));
    assertThat(longer.deltaH()).isZero();
    ColourDifference turned = Ciede2000.STANDARD.compare(right, Lab.ofD65(50, 0, 3e200));
    assertThat(turned.deltaC()).isZero();
    assertThat(turned.deltaH() / (Math.sqrt(2) * 3e200)).isCloseTo(1, within(ROUNDING));
    ColourDifference back = Ciede2000.STANDARD.compare(Lab.ofD65(50, 0, -4e200), right);
    assertThat(back.deltaC() / -1e200).isCloseTo(1, within(ROUNDING));
  }

  @Test
  void lightnessCountsTheSameBesideHugeChroma() {
    // Mean L* 50, where S_L = 1; mean L* 10, where S_L = 1 + 0.015·40²/√(20 + 40²).
    assertThat(Ciede2000.deltaE(49, 1e60, 0, 51, 1e60, 0)).isCloseTo(2, within(ROUNDING));
    double sL = 1 + 0.015 * 1600 / Math.sqrt(1620);
    assertThat(Ciede2000.deltaE(5, 1e60, 0, 15, 1e60, 0)).isCloseTo(10 / sL, within(ROUNDING));
    assertThat(
            Ciede2000.withFactors(2, 1, 1)
                .difference(Lab.ofD65(5, 1e60, 0), Lab.ofD65(15, 1e60, 0)))
        .isCloseTo(5 / sL, within(ROUNDING));
    // Of a huge lightness L, S_L goes to 0.015·L/2, so that ΔE00 goes to 1/0.0075.
    assertThat(Ciede2000.deltaE(0, 0, 0, 1e60, 0, 0)).isCloseTo(1 / 0.0075, within(1e-9));
  }

  @Test
  void aFormulaSaysItsFactors() {
    assertThat(Ciede2000.withFactors(2, 1, 1.5)).hasToString("CIEDE2000(2.0:1.0:1.5)");
  }

  @Test
  void pairsOfArraysOfOtherLengthsAreRefused() {
    double[] two = new double[2];
    assertThatThrownBy(
            () ->
                Ciede2000.STANDARD.differences(
                    two, two, two, two, two, new double[1], new double[2]))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("array 5 of the coordinates has length 1, must be as long as into: 2");
  }

  @Test
  void arraysOfOtherLengthsAreRefused() {
    double[] two = new double[2];
    assertThatThrownBy(
            () ->
                Ciede2000.STANDARD.differences(
                    Lab.ofD65(50, 0, 0), two, two, new double[3], new double[2]))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("array 2 of the coordinates has length 3, must be as long as into: 2");
  }

  @Test
  void anOutputThatIsAlsoAnInputIsRefused() {
    double[] two = new double[2];
    assertThatThrownBy(
            () -> Ciede2000.STANDARD.differences(Lab.ofD65(50, 0, 0), two, two, two, two))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("into");
  }
}
