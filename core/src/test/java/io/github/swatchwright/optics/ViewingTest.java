package io.github.swatchwright.optics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.spectrum.Bands;
import io.github.swatchwright.spectrum.Illuminant;
import io.github.swatchwright.spectrum.Observer;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ViewingTest {
  private static final Viewing GLOSSY =
      new Viewing(TristimulusWeights.D65, new Saunderson(0.04, 0.4));
  private static final Viewing BARE_UNDER_A =
      new Viewing(TristimulusWeights.of(Illuminant.A, Observer.CIE_1931), Saunderson.NONE);

  private static double[] reddish(double level) {
    double[] internal = new double[Bands.COUNT];
    Arrays.setAll(internal, band -> level * (0.2 + 0.8 * band / Bands.COUNT));
    return internal;
  }

  @Test
  void everyBandIsSeenThroughTheSurface() {
    double[] internal = reddish(0.7);
    for (int band = 0; band < Bands.COUNT; band++) {
      assertThat(GLOSSY.seen(internal).at(band)).isEqualTo(GLOSSY.surface().seen(internal[band]));
    }
    assertThat(GLOSSY.lab(internal))
        .isEqualTo(TristimulusWeights.D65.xyz(GLOSSY.seen(internal)).toLab());
  }

  @Test
  void aPerfectDiffuserIsWhite() {
    double[] all = new double[Bands.COUNT];
    Arrays.fill(all, 1);
    Lab white = BARE_UNDER_A.lab(all);
    assertThat(white.l()).isCloseTo(100, within(1e-9));
    assertThat(white.a()).isCloseTo(0, within(1e-9));
    assertThat(white.b()).isCloseTo(0, within(1e-9));
  }

  // At 0.004, Y is 0.3 % of the white's: on the straight start of CIELAB's curve, which ends at
  // 0.886 %.
  @ParameterizedTest(name = "slopes at a level of {0} are those of central differences")
  @CsvSource({"0.8", "0.2", "0.004"})
  void slopesAreThoseOfDifferences(double level) {
    for (Viewing viewing : new Viewing[] {GLOSSY, BARE_UNDER_A}) {
      double[] internal = reddish(level);
      double[][] slope = viewing.labSlope(internal);
      double step = 1e-6;
      for (int band = 0; band < Bands.COUNT; band++) {
        double[] more = internal.clone();
        double[] less = internal.clone();
        more[band] += step;
        less[band] -= step;
        Lab above = viewing.lab(more);
        Lab below = viewing.lab(less);
        // A difference is off by rounding, 1e-13 over the step, and by the third derivative times
        // its square; 1e-5 covers both for slopes of up to 80.
        assertThat(slope[0][band]).isCloseTo((above.l() - below.l()) / (2 * step), within(1e-5));
        assertThat(slope[1][band]).isCloseTo((above.a() - below.a()) / (2 * step), within(1e-5));
        assertThat(slope[2][band]).isCloseTo((above.b() - below.b()) / (2 * step), within(1e-5));
      }
    }
  }

  @Test
  void anotherNumberOfBandsIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> GLOSSY.lab(new double[35]))
        .withMessageStartingWith("number of bands is 35");
  }
}
