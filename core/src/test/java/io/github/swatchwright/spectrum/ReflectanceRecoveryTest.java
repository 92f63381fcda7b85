package io.github.swatchwright.spectrum;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.fail;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.colour.WhitePoint;
import io.github.swatchwright.colour.Xyz;
import io.github.swatchwright.difference.Cie76;
import io.github.swatchwright.difference.Ciede2000;
import java.util.SplittableRandom;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ReflectanceRecoveryTest {
  private static final TristimulusWeights D65 =
      TristimulusWeights.of(Illuminant.D65, Observer.CIE_1931);
  private static final ReflectanceRecovery BARE = new ReflectanceRecovery(D65, SurfaceMap.NONE);

  /** Saunderson 1942: Rm = k1 + (1 − k1)(1 − k2)·Ri / (1 − k2·Ri). */
  private record Interface(double k1, double k2) implements SurfaceMap {
    @Override
    public double seen(double internal) {
      return k1 + (1 - k1) * (1 - k2) * internal / (1 - k2 * internal);
    }

    @Override
    public double slope(double internal) {
      return (1 - k1) * (1 - k2) / ((1 - k2 * internal) * (1 - k2 * internal));
    }
  }

  private static void checkGrid(ReflectanceRecovery recovery, int steps, boolean allAttainable) {
    for (int i = 0; i < steps * steps * steps; i++) {
      int[] rgb = {i % steps, i / steps % steps, i / (steps * steps)};
      double full = steps - 1;
      Lab wanted = new Srgb(rgb[0] / full, rgb[1] / full, rgb[2] / full).toLab();
      RecoveredReflectance recovered = recovery.recover(wanted);
      Lab attained = recovered.colour().toLab();
      if (recovered.attainable()) {
        assertThat(Ciede2000.deltaE(wanted, attained)).as("%s", wanted).isLessThan(1e-6);
      } else {
        assertThat(allAttainable).as("%s is attainable", wanted).isFalse();
        assertThat(Double.isFinite(Ciede2000.deltaE(wanted, attained))).isTrue();
      }
      for (double internal : recovered.internal().toArray()) {
        if (!(internal > 0 && internal < 1)) {
          fail(wanted + " has an internal reflectance of " + internal);
        }
      }
    }
  }

  @Test
  @DisplayName("33³ sRGB colours come back within ΔE00 1e-6, black and white included")
  void everySrgbColourComesBack() {
    checkGrid(BARE, 33, true);
  }

  @ParameterizedTest(name = "17³ sRGB colours through a surface with k1 = {0}, k2 = {1}")
  @CsvSource({"0, 0.4, true", "0.01, 0.4, false", "0.04, 0.6, false"})
  void everySrgbColourComesBackThroughASurfaceOrIsFlagged(
      double k1, double k2, boolean allAttainable) {
    checkGrid(new ReflectanceRecovery(D65, new Interface(k1, k2)), 17, allAttainable);
  }

  @ParameterizedTest
  @ValueSource(strings = {"D50", "A", "F11", "LED-B3"})
  void otherLightsWorkToo(String light) {
    TristimulusWeights weights = TristimulusWeights.of(Illuminant.parse(light), Observer.CIE_1964);
    ReflectanceRecovery recovery = new ReflectanceRecovery(weights, SurfaceMap.NONE);
    Lab wanted = new Lab(45, 25, -15, weights.whitePoint());
    RecoveredReflectance recovered = recovery.recover(wanted);
    assertThat(recovered.attainable()).isTrue();
    assertThat(Cie76.deltaE(wanted, recovered.colour().toLab())).isLessThan(1e-6);
  }

  @Test
  void blackAndWhiteAreTheLimitsOfConstants() {
    RecoveredReflectance black = BARE.recover(Lab.ofD65(0, 0, 0));
    RecoveredReflectance white = BARE.recover(Lab.ofD65(100, 0, 0));
    assertThat(black.attainable()).isTrue();
    assertThat(white.attainable()).isTrue();
    for (int band = 0; band < Bands.COUNT; band++) {
      assertThat(black.seen().at(band)).isCloseTo(1e-10, within(1e-14));
      assertThat(1 - white.seen().at(band)).isCloseTo(1e-10, within(1e-14));
    }
  }

  @Test
  void greysAreFlat() {
    for (int l = 1; l < 100; l++) {
      double[] seen = BARE.recover(Lab.ofD65(l, 0, 0)).seen().toArray();
      for (double value : seen) {
        assertThat(value).isCloseTo(seen[0], within(1e-12));
      }
    }
  }

  private static double slopeSquared(Reflectance reflectance) {
    double sum = 0;
    for (int band = 1; band < Bands.COUNT; band++) {
      double step =
          LogitSpectrum.logit(reflectance.at(band)) - LogitSpectrum.logit(reflectance.at(band - 1));
      sum += step * step;
    }
    return sum;
  }

  /** A random walk in logit, as rough as {@code step} says. */
  private static Reflectance randomWalk(SplittableRandom random, double step) {
    double[] values = new double[Bands.COUNT];
    double z = 4 * random.nextDouble() - 2;
    for (int band = 0; band < Bands.COUNT; band++) {
      z += step * (2 * random.nextDouble() - 1);
      values[band] = LogitSpectrum.internal(z);
    }
    return Reflectance.of(values);
  }

  @Test
  @DisplayName("By definition of the smoothest, no other reflectance of the colour has less slope")
  void noReflectanceOfTheSameColourIsSmoother() {
    SplittableRandom random = new SplittableRandom(20);
    for (int i = 0; i < 2000; i++) {
      Reflectance other = randomWalk(random, 0.05 + 2 * random.nextDouble());
      RecoveredReflectance recovered = BARE.recover(D65.xyz(other));
      assertThat(recovered.attainable()).as("%s", other).isTrue();
      // Room for the rounding of a colour that is met to 1e-12.
      assertThat(slopeSquared(recovered.seen())).isLessThan(slopeSquared(other) * (1 + 1e-9));
    }
  }

  @Test
  void smoothestSpectrumComesBackAsItself() {
    SplittableRandom random = new SplittableRandom(21);
    for (int i = 0; i < 200; i++) {
      Reflectance once = BARE.recover(D65.xyz(randomWalk(random, 0.5))).seen();
      Reflectance twice = BARE.recover(D65.xyz(once)).seen();
      for (int band = 0; band < Bands.COUNT; band++) {
        // Two searches that each meet their colour to 1e-12 and their slope to 1e-7.
        assertThat(twice.at(band)).isCloseTo(once.at(band), within(1e-6));
      }
    }
  }

  /** Through the object-colour solid's skin in a random direction: its support point, scaled. */
  private static Xyz beyondTheSkin(SplittableRandom random, double scale) {
    double[][] weights = {D65.x(), D65.y(), D65.z()};
    double[] direction = new double[3];
    for (int channel = 0; channel < 3; channel++) {
      direction[channel] = random.nextDouble() * 2 - 1;
    }
    double[] optimal = new double[Bands.COUNT];
    for (int band = 0; band < Bands.COUNT; band++) {
      double pull = 0;
      for (int channel = 0; channel < 3; channel++) {
        pull += direction[channel] * weights[channel][band];
      }
      optimal[band] = pull > 0 ? 1 : 0;
    }
    Xyz skin = D65.xyz(optimal);
    WhitePoint white = WhitePoint.D65;
    return new Xyz(
        white.xn() / 2 + scale * (skin.x() - white.xn() / 2),
        white.yn() / 2 + scale * (skin.y() - white.yn() / 2),
        white.zn() / 2 + scale * (skin.z() - white.zn() / 2),
        white);
  }

  @Test
  @DisplayName(
      "Schrödinger 1920: what lies beyond an optimal colour is outside, what lies short is in")
  void coloursBeyondTheObjectColourSolidAreFlagged() {
    SplittableRandom random = new SplittableRandom(22);
    for (int i = 0; i < 1000; i++) {
      assertThat(BARE.recover(beyondTheSkin(random, 0.98)).attainable()).isTrue();
      assertThat(BARE.recover(beyondTheSkin(random, 1.001)).attainable()).isFalse();
    }
  }

  /** A third of them are only found from the second start of the search. */
  @Test
  void coloursJustUnderTheSkinAreAttained() {
    SplittableRandom random = new SplittableRandom(22);
    for (int i = 0; i < 1000; i++) {
      Xyz wanted = beyondTheSkin(random, 0.998);
      RecoveredReflectance recovered = BARE.recover(wanted);
      assertThat(recovered.attainable()).as("%s", wanted).isTrue();
      assertThat(Cie76.deltaE(wanted.toLab(), recovered.colour().toLab())).isLessThan(1e-5);
    }
  }

  @Test
  void unattainableColourGivesOneAsNearAsAnyOther() {
    SplittableRandom random = new SplittableRandom(23);
    for (int i = 0; i < 300; i++) {
      Lab wanted = beyondTheSkin(random, 1 + 0.3 * random.nextDouble()).toLab();
      double attained = Cie76.deltaE(wanted, BARE.recover(wanted).colour().toLab());
      for (int rival = 0; rival < 300; rival++) {
        Lab other = beyondTheSkin(random, random.nextDouble()).toLab();
        // 0.1 is what the documentation allows for the price of slope.
        assertThat(attained).isLessThan(Cie76.deltaE(wanted, other) + 0.1);
      }
    }
  }

  @Test
  void nothingIsDarkerThanTheSurfaceReflects() {
    ReflectanceRecovery glossy = new ReflectanceRecovery(D65, new Interface(0.04, 0.4));
    RecoveredReflectance recovered = glossy.recover(Lab.ofD65(10, 0, 0));
    assertThat(recovered.attainable()).isFalse();
    // L* of a grey of k1, by CIELAB's formula: the least there is.
    double least = 116 * Math.cbrt(0.04) - 16;
    assertThat(recovered.colour().toLab().l()).isCloseTo(least, within(0.01));
    assertThat(glossy.recover(Lab.ofD65(23.7, 0, 0)).attainable()).isTrue();
  }

  @ParameterizedTest(name = "lab({0}, {1}, {2})")
  @CsvSource({
    "50, 160, -160",
    "0, 100, 0",
    "0, -100, 100",
    "100, 80, 80",
    "130, 0, 0",
    "-20, 5, 5",
    "1e4, 1e4, -1e4",
    "100, 0, 1e-7",
    "0, 1e-7, 0",
    "1e-9, 0, 0"
  })
  void absurdColoursNeverGiveNaN(double l, double a, double b) {
    for (SurfaceMap surface : new SurfaceMap[] {SurfaceMap.NONE, new Interface(0.04, 0.6)}) {
      RecoveredReflectance recovered =
          new ReflectanceRecovery(D65, surface).recover(Lab.ofD65(l, a, b));
      for (int band = 0; band < Bands.COUNT; band++) {
        assertThat(recovered.internal().at(band)).isGreaterThan(0).isLessThan(1);
      }
    }
  }

  @Test
  void colourUnderAnotherWhiteIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> BARE.recover(new Lab(50, 0, 0, WhitePoint.D50)))
        .withMessage("colour is relative to D50, must be relative to D65");
  }
}
