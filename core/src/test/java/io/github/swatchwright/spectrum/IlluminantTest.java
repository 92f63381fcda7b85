package io.github.swatchwright.spectrum;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.WhitePoint;
import io.github.swatchwright.testdata.ExternalCheck;
import java.util.Arrays;
import java.util.Locale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("external")
class IlluminantTest {
  private static final ExternalCheck FORMULA_A =
      ExternalCheck.against("ISO/CIE 11664-2", "power of illuminant A by its formula, relative");
  private static final ExternalCheck D50 =
      ExternalCheck.against("CIE 15:2004, table T.1", "power of D50");
  private static final ExternalCheck LED_B3 =
      ExternalCheck.against("CIE 15:2018", "colour temperature of LED-B3, K");

  @Test
  void everyNameIsReadBackWhateverItsCase() {
    for (Illuminant light : Illuminant.NAMED) {
      assertThat(Illuminant.parse(light.name())).isSameAs(light).hasToString(light.name());
      assertThat(Illuminant.parse(" " + light.name().toLowerCase(Locale.ROOT))).isSameAs(light);
    }
  }

  @Test
  void unknownNameIsAnsweredWithTheKnownOnes() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Illuminant.parse("D99"))
        .withMessage("'D99' is not an illuminant, must be one of D65, D50, A, F11, LED-B3");
  }

  @Test
  @DisplayName("ISO/CIE 11664-2, formula of illuminant A: Planck's law at 2856 K, 100 at 560 nm")
  void illuminantAFollowsItsFormula() {
    double[] power = Illuminant.A.power();
    for (int row = 0; row < CieTable.ROWS; row++) {
      double nm = CieTable.FIRST_NM + row * CieTable.STEP_NM;
      double expected =
          100
              * Math.pow(560 / nm, 5)
              * Math.expm1(1.435e7 / (2848 * 560))
              / Math.expm1(1.435e7 / (2848 * nm));
      // Six printed digits: half of the last is at most 5e-6 of a figure.
      FORMULA_A.near(power[row] / expected, 1, 5e-6);
    }
  }

  @Test
  @DisplayName("CIE 15:2004, table T.1: D50 at 380, 450, 560, 650 and 780 nm, three decimals")
  void d50HasThePrintedFigures() {
    double[] power = Illuminant.D50.power();
    // The table is printed to three decimals; the figures here are from the daylight formula.
    D50.near(power[0], 24.488, 6e-4);
    D50.near(power[14], 87.247, 6e-4);
    assertThat(power[36]).isEqualTo(100);
    D50.near(power[54], 95.667, 6e-4);
    D50.near(power[80], 78.274, 6e-4);
  }

  @Test
  @DisplayName("CIE 15:2018: LED-B3 has a correlated colour temperature of 4103 K")
  void ledB3HasItsColourTemperature() {
    WhitePoint white = TristimulusWeights.of(Illuminant.LED_B3, Observer.CIE_1931).whitePoint();
    // The printed figure, which 5 nm figures of two decimals can't carry to its last digit.
    LED_B3.near(ColourTemperature.nearestPlanckian(white), 4103, 5.0);
  }

  @Test
  void lightOfOnesOwnAgreesWithTheNamedOneItIsTakenFrom() {
    Illuminant copy = Illuminant.ofSamples("A", 380, 5, Illuminant.A.power());
    assertThat(copy).isEqualTo(Illuminant.A).hasSameHashCodeAs(Illuminant.A);
    assertThat(Illuminant.ofSamples("mine", 380, 5, Illuminant.A.power()))
        .isNotEqualTo(Illuminant.A);
  }

  @Test
  void lightOfOnesOwnIsResampled() {
    double[] everyTen = new double[41];
    for (int i = 0; i < everyTen.length; i++) {
      everyTen[i] = Illuminant.A.power()[2 * i];
    }
    WhitePoint white =
        TristimulusWeights.of(Illuminant.ofSamples("A10", 380, 10, everyTen), Observer.CIE_1931)
            .whitePoint();
    WhitePoint expected = TristimulusWeights.of(Illuminant.A, Observer.CIE_1931).whitePoint();
    // A is smooth: a cubic through its tens misses its fives in the fifth digit.
    assertThat(white.xn()).isCloseTo(expected.xn(), within(1e-3));
    assertThat(white.zn()).isCloseTo(expected.zn(), within(1e-3));
  }

  @Test
  void samplesAreCopied() {
    double[] power = new double[81];
    Arrays.fill(power, 1);
    Illuminant equalEnergy = Illuminant.ofSamples("E", 380, 5, power);
    Arrays.fill(power, 0);
    assertThat(equalEnergy.power()).containsOnly(1.0);
  }

  @Test
  void nonsenseIsRefused() {
    double[] dark = new double[81];
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Illuminant.ofSamples("dark", 380, 5, dark))
        .withMessageStartingWith("total power is 0.0");
    double[] negative = dark.clone();
    negative[1] = -1;
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Illuminant.ofSamples("negative", 380, 5, negative))
        .withMessageStartingWith("power at 385.0 nm is -1.0");
    double[] tooShort = {1, 1, 1};
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Illuminant.ofSamples("short", 380, 5, tooShort))
        .withMessageStartingWith("wavelength of the last sample is 390.0");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Illuminant.ofSamples("late", 400, 5, new double[] {1}))
        .withMessageStartingWith("fromNm is 400.0");
  }
}
