package io.github.swatchwright.spectrum;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.WhitePoint;
import io.github.swatchwright.colour.Xyz;
import io.github.swatchwright.testdata.ExternalCheck;
import java.util.Arrays;
import java.util.SplittableRandom;
import org.apache.commons.math3.analysis.polynomials.PolynomialFunctionLagrangeForm;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("external")
class TristimulusWeightsTest {
  private static final ExternalCheck D65_WHITE =
      ExternalCheck.against("CIE 15:2004, table T.3", "raw tristimulus sums of D65");
  private static final ExternalCheck LIGHTS =
      ExternalCheck.against("CIE 15:2018", "chromaticity of the lights");

  private static double sum(double[] weights) {
    return Arrays.stream(weights).sum();
  }

  @Test
  @DisplayName("CIE 15:2004, table T.3: D65 for the 2° observer is (95.047, 100, 108.883)")
  void tableOfD65SumsToThePublishedWhite() {
    double[][] raw = WeightTable.fiveNanometre(Illuminant.D65, Observer.CIE_1931);
    // The published white comes from the 1 nm tables over 360 to 830 nm; 5 nm and 380 to 780 nm
    // differ from it in the third decimal.
    D65_WHITE.near(sum(raw[0]), 95.047, 0.02);
    D65_WHITE.near(sum(raw[1]), 100, 1e-9);
    D65_WHITE.near(sum(raw[2]), 108.883, 0.02);
  }

  /** Chromaticities of CIE 15:2018, tables of illuminants, four decimals as printed. */
  @ParameterizedTest(name = "CIE 15:2018: {0}, 2°, has chromaticity ({1}, {2})")
  @CsvSource({
    "D65, 0.3127, 0.3290",
    "D50, 0.3457, 0.3585",
    "A, 0.4476, 0.4074",
    "F11, 0.3805, 0.3769",
    "LED-B3, 0.3756, 0.3723"
  })
  void everyLightHasItsPublishedChromaticity(String name, double x, double y) {
    WhitePoint white =
        TristimulusWeights.of(Illuminant.parse(name), Observer.CIE_1931).whitePoint();
    double total = white.xn() + white.yn() + white.zn();
    // Half of the last printed digit, and as much again for 5 nm instead of 1 nm tables.
    LIGHTS.near(white.xn() / total, x, 1e-4);
    LIGHTS.near(white.yn() / total, y, 1e-4);
  }

  @Test
  void perfectDiffuserIsLabWhiteUnderEveryLightAndObserver() {
    for (Illuminant light : Illuminant.NAMED) {
      for (Observer observer : Observer.values()) {
        TristimulusWeights weights = TristimulusWeights.of(light, observer);
        Lab white = weights.xyz(Reflectance.constant(1)).toLab();
        assertThat(white.l()).isCloseTo(100, within(1e-9));
        assertThat(white.a()).isCloseTo(0, within(1e-9));
        assertThat(white.b()).isCloseTo(0, within(1e-9));
      }
    }
  }

  @Test
  void daylightsCarryTheNominalWhites() {
    assertThat(TristimulusWeights.of(Illuminant.D65, Observer.CIE_1931).whitePoint())
        .isEqualTo(WhitePoint.D65);
    assertThat(TristimulusWeights.of(Illuminant.D50, Observer.CIE_1931).whitePoint())
        .isEqualTo(WhitePoint.D50);
  }

  /** The reflectance at the tables' 5 nm, by Apache Commons Math's Lagrange form. */
  private static double between(double[] reflectance, double nm) {
    if (nm >= Bands.LAST_NM) {
      return reflectance[Bands.COUNT - 1];
    }
    int below = (int) ((nm - Bands.FIRST_NM) / Bands.STEP_NM);
    // Four nearest bands, or three in the first and in the last interval.
    int first = below == 0 ? 0 : below - 1;
    int last = Math.min(below + 2, Bands.COUNT - 1);
    double[] x = new double[last - first + 1];
    Arrays.setAll(x, i -> Bands.wavelengthNm(first + i));
    return PolynomialFunctionLagrangeForm.evaluate(
        x, Arrays.copyOfRange(reflectance, first, last + 1), nm);
  }

  @ParameterizedTest
  @ValueSource(strings = {"A", "F11", "LED-B3"})
  void tenNanometresGiveTheSumOverTheTablesFive(String name) {
    Illuminant light = Illuminant.parse(name);
    double[] rough = new double[Bands.COUNT];
    SplittableRandom random = new SplittableRandom(6);
    Arrays.setAll(rough, band -> random.nextDouble());
    for (Observer observer : Observer.values()) {
      double[][] matching = observer.matchingFunctions();
      double[] sums = new double[3];
      double whole = 0;
      for (int row = 0; row < CieTable.ROWS; row++) {
        double reflected = between(rough, CieTable.FIRST_NM + CieTable.STEP_NM * row);
        whole += light.power()[row] * matching[1][row];
        for (int channel = 0; channel < 3; channel++) {
          sums[channel] += light.power()[row] * matching[channel][row] * reflected;
        }
      }
      Xyz xyz = TristimulusWeights.of(light, observer).xyz(rough);
      assertThat(xyz.x()).isCloseTo(100 * sums[0] / whole, within(1e-10));
      assertThat(xyz.y()).isCloseTo(100 * sums[1] / whole, within(1e-10));
      assertThat(xyz.z()).isCloseTo(100 * sums[2] / whole, within(1e-10));
    }
  }

  @Test
  void weightsKnowTheirLightAndObserver() {
    TristimulusWeights weights = TristimulusWeights.of(Illuminant.A, Observer.CIE_1964);
    assertThat(weights.illuminant()).isEqualTo(Illuminant.A);
    assertThat(weights.observer()).isEqualTo(Observer.CIE_1964);
    assertThat(weights).hasToString("TristimulusWeights[A, CIE 1964 10°]");
    for (int band = 0; band < Bands.COUNT; band++) {
      assertThat(weights.x(band)).isEqualTo(weights.x()[band]);
      assertThat(weights.y(band)).isEqualTo(weights.y()[band]);
      assertThat(weights.z(band)).isEqualTo(weights.z()[band]);
    }
    assertThat(weights.y(17)).isPositive();
    assertThat(TristimulusWeights.of(Illuminant.D65, Observer.CIE_1931))
        .isSameAs(TristimulusWeights.D65);
    assertThat(TristimulusWeights.of(Illuminant.D65, Observer.CIE_1964).observer())
        .isEqualTo(Observer.CIE_1964);
  }

  @Test
  void colourIsTheWeightedSum() {
    TristimulusWeights weights = TristimulusWeights.of(Illuminant.A, Observer.CIE_1964);
    double[] oneBand = new double[Bands.COUNT];
    oneBand[17] = 1;
    Xyz xyz = weights.xyz(oneBand);
    assertThat(xyz.x()).isEqualTo(weights.x()[17]);
    assertThat(xyz.y()).isEqualTo(weights.y()[17]);
    assertThat(xyz.z()).isEqualTo(weights.z()[17]);
  }
}
