package io.github.swatchwright.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.optics.KubelkaMunk;
import io.github.swatchwright.optics.OpticalConstants;
import io.github.swatchwright.paint.Hiding;
import io.github.swatchwright.paint.Make;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.Bands;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Mixes of generic artists' pigments with published constants at 550 nm. */
class KnownPigmentsTest {
  private static final OpticalConstants TITANIUM_WHITE = flat(0.000515, 1);
  private static final OpticalConstants CARBON_BLACK = flat(7.147, 0.698);
  private static final OpticalConstants YELLOW_OCHRE = flat(0.0650, 0.165);
  private static final OpticalConstants BURNT_UMBER = flat(0.511, 0.0334);

  private static OpticalConstants flat(double k, double s) {
    double[] ks = new double[Bands.COUNT];
    double[] ss = new double[Bands.COUNT];
    Arrays.fill(ks, k);
    Arrays.fill(ss, s);
    return OpticalConstants.of(ks, ss);
  }

  private static double mixed(
      OpticalConstants first, double firstVolume, OpticalConstants second, double secondVolume) {
    OpticalConstants mix =
        OpticalConstants.mix(
            new OpticalConstants[] {first, second}, new double[] {firstVolume, secondVolume});
    return mix.opaque()[Bands.COUNT / 2];
  }

  @Test
  @DisplayName(
      "Okumura 2005 (thesis, RIT), constants at 550 nm: 10 % black in white reflects 0.3166")
  void tenPercentBlackInWhite() {
    double reflectance = mixed(CARBON_BLACK, 1, TITANIUM_WHITE, 9);
    // Four digits are given, so half of the last one is allowed.
    assertThat(reflectance).isCloseTo(0.3166, within(5e-5));
  }

  @Test
  @DisplayName("Averaging q alone, as one-constant theory does, would give 0.264 for the same mix")
  void averagingTheRatioAloneIsAnotherAnswer() {
    double q = 0.1 * 7.147 / 0.698 + 0.9 * 0.000515;
    assertThat(KubelkaMunk.reflectance(q)).isCloseTo(0.264, within(5e-4));
  }

  @Test
  @DisplayName(
      "Okumura 2005, constants at 550 nm: ochre with umber 1:1 follows from K and S by hand")
  void ochreWithUmber() {
    // K = (0.0650 + 0.511)/2 = 0.2880, S = (0.165 + 0.0334)/2 = 0.0992, q = 2.90323;
    // R = 1 + q − √(q² + 2q) = 3.90323 − 3.77296 = 0.13027, worked by hand.
    assertThat(mixed(YELLOW_OCHRE, 1, BURNT_UMBER, 1)).isCloseTo(0.13027, within(1e-5));
  }

  @Test
  void neitherOrderNorScaleOfAMixMatters() {
    assertThat(mixed(YELLOW_OCHRE, 2, BURNT_UMBER, 6))
        .isCloseTo(mixed(BURNT_UMBER, 3, YELLOW_OCHRE, 1), within(1e-15));
  }

  @Test
  @DisplayName(
      "Okumura 2005, constants at 550 nm taken as flat: black that is known by its colour alone, in"
          + " white 1:9, 1:30 and 1:2")
  void aBlackOfUnknownHidingIsAboutAsStrongAsThePublishedOne() {
    // What is expected of a black leans on this source, so it is no proof for other blacks.
    Paint white =
        paint("white", TITANIUM_WHITE).withHiding(new Hiding.Scattering(TITANIUM_WHITE.s(0)));
    Shelf shelf =
        new Shelf(
            "published",
            List.of(white, paint("black", CARBON_BLACK)),
            Optional.of(SyntheticPigments.VIEWING.surface()));
    MixPredictor predictor =
        MixPredictor.of(ShelfOptics.estimate(shelf), SyntheticPigments.VIEWING.weights());
    for (int parts : new int[] {2, 9, 30}) {
      Prediction grey = predictor.predict(Mix.parse("black:1, white:" + parts, shelf));
      OpticalConstants truth =
          OpticalConstants.mix(
              new OpticalConstants[] {CARBON_BLACK, TITANIUM_WHITE}, new double[] {1, parts});
      double error = Ciede2000.deltaE(SyntheticPigments.VIEWING.lab(truth.opaque()), grey.lab());
      System.out.printf(
          Locale.ROOT,
          "black of unknown hiding, 1:%d in white: off by ΔE00 %.1f, interval %.1f%n",
          parts,
          error,
          grey.intervalDeltaE00());
      assertThat(error).isLessThan(grey.intervalDeltaE00());
    }
  }

  private static Paint paint(String name, OpticalConstants constants) {
    Lab colour = SyntheticPigments.VIEWING.lab(constants.opaque());
    return Paint.of(name, Medium.ACRYLIC, new Swatch.OfLab(colour))
        .withMake(Make.SINGLE_PIGMENT)
        .withSwatchError(0.5);
  }
}
