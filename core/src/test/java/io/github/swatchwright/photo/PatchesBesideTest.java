package io.github.swatchwright.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.LinearRgb;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.mix.Prediction;
import io.github.swatchwright.paint.Swatch;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Patches of one photo, worked by hand from the errors that are documented: corrected by a grey
 * card L* errs by sd 2, a* and b* of a grey by 2, of which 0.14 and 0.2 are a reading's own; a
 * known patch observes the rest (Gaussian conditioning).
 */
class PatchesBesideTest {
  private static final Region PLACE = new Region(0, 0, 10, 10);
  private static final PixelShares ALL = new PixelShares(1, 0, 0, 0, 0, 0);
  private static final PhotoCorrection GREY =
      PhotoCorrection.ofGreys(List.of(new NeutralPatch(sample(Lab.ofD65(50, 0, 0)), 18.4187)));

  private static RegionSample sample(Lab lab) {
    LinearRgb mean = LinearRgb.ofXyz(lab.toXyz());
    return new RegionSample(PLACE, mean, ALL, List.of(mean));
  }

  private static double[] sd(PhotoCorrection correction, Lab one, Lab other) {
    return PatchDifference.of(correction, sample(one), sample(other)).spread().standardDeviations();
  }

  // 2·2² − 2·(2² − 0.14²) = 2·0.14², and so with 0.2.
  @Test
  void twoEqualPatchesDifferByTheNoiseOfBothReadingsAlone() {
    Lab grey = Lab.ofD65(50, 0, 0);

    double[] sd = sd(GREY, grey, grey);

    assertThat(sd[0]).isCloseTo(0.14 * Math.sqrt(2), within(1e-9));
    assertThat(sd[1]).isCloseTo(0.2 * Math.sqrt(2), within(1e-9));
    assertThat(PatchDifference.of(GREY, sample(grey), sample(grey)).deltaE00()).isZero();
  }

  // The errors correlate by exp(−(ΔE00 ÷ 33)^1.85): about a half for greys of L* 50 and 80.
  @Test
  void theFurtherApartTheLessTheirErrorsCancel() {
    Lab dark = Lab.ofD65(50, 0, 0);
    Lab light = Lab.ofD65(80, 0, 0);
    double likeness = Math.exp(-Math.pow(Ciede2000.deltaE(dark, light) / 33, 1.85));
    assertThat(likeness).isBetween(0.4, 0.7);

    double expected = Math.sqrt(4 + 4 - 2 * likeness * (4 - 0.14 * 0.14));
    assertThat(sd(GREY, dark, light)[0]).isCloseTo(expected, within(1e-6));
  }

  // Without a reference the light is unknown: 11 % of a difference of 30 in L* is 3.3 more.
  @Test
  void anUnknownExposureStretchesDifferences() {
    Lab dark = Lab.ofD65(50, 0, 0);
    Lab light = Lab.ofD65(80, 0, 0);
    double likeness = Math.exp(-Math.pow(Ciede2000.deltaE(dark, light) / 33, 1.85));
    double common = (0.68 + 0.32 * likeness) * (4 - 0.14 * 0.14);

    PhotoCorrection none = PhotoCorrection.ofNothing();
    assertThat(sd(none, dark, light)[0])
        .isCloseTo(Math.sqrt(8 - 2 * common + 3.3 * 3.3), within(1e-6));
    assertThat(none.reference()).isEqualTo("none");
  }

  // Seen 3 too light; of that, (2² − 0.14²) ÷ (2² + 0.5²) is the photo's. What is left is
  // 2² − (2² − 0.14²)² ÷ (2² + 0.5²).
  @Test
  void aColourLikeTheKnownPatchIsMovedByThePhotosShareOfItsError() {
    Lab seen = Lab.ofD65(53, 0, 0);
    KnownPatch patch = new KnownPatch(sample(seen), Lab.ofD65(50, 0, 0), 0.5);

    PhotoCorrection beside = PhotoCorrection.ofBeside(GREY, patch);

    double shared = 4 - 0.14 * 0.14;
    Lab corrected = beside.colour(sample(seen)).lab();
    // The grey's luminance has six digits.
    assertThat(corrected.l()).isCloseTo(53 - 3 * shared / 4.25, within(1e-4));
    assertThat(corrected.a()).isCloseTo(0, within(1e-4));
    assertThat(beside.spread(Lab.ofD65(50, 0, 0), false).standardDeviations()[0])
        .isCloseTo(Math.sqrt(4 - shared * shared / 4.25), within(1e-9));
    assertThat(beside.reference()).isEqualTo("grey patch, and a known patch");
    // Of a blue far away the photo's errors are alike in a small part.
    Lab blue = Lab.ofD65(30, 20, -70);
    double likeness = Math.exp(-Math.pow(Ciede2000.deltaE(blue, seen) / 33, 1.85));
    assertThat(likeness).isLessThan(0.4);
    assertThat(beside.colour(sample(blue)).lab().l())
        .isCloseTo(30 - likeness * 3 * shared / 4.25, within(1e-3));
  }

  // Errors of a* and b* grow by 1 + 0.045·C*, as S_C of CIEDE2000 does.
  @Test
  void errorsOfColoursGrowWithTheirChroma() {
    Lab one = Lab.ofD65(50, 30, 40);
    Lab other = Lab.ofD65(50, 12, 16);
    double grows = 1 + 0.045 * 50;
    double growsLess = 1 + 0.045 * 20;
    double likeness = Math.exp(-Math.pow(Ciede2000.deltaE(one, other) / 33, 1.85));
    double common = (0.68 + 0.32 * likeness) * (3.8 * 3.8 - 0.2 * 0.2) * grows * growsLess;
    double errors = 3.8 * 3.8 * (grows * grows + growsLess * growsLess) - 2 * common;

    PatchDifference apart =
        PatchDifference.of(PhotoCorrection.ofNothing(), sample(one), sample(other));

    double[] sd = apart.spread().standardDeviations();
    assertThat(sd[1]).isCloseTo(Math.sqrt(errors + Math.pow(0.11 * 18, 2)), within(1e-6));
    assertThat(sd[2]).isCloseTo(Math.sqrt(errors + Math.pow(0.11 * 24, 2)), within(1e-6));
    assertThat(apart.deltaE00()).isCloseTo(Ciede2000.deltaE(one, other), within(1e-6));
    assertThat(apart.intervalDeltaE00()).isBetween(3.0, 15.0);
  }

  // A colour seen where the patch is moves on a* and b* too, all towards what is known.
  @Test
  void aColouredPatchIsMovedOnAllAxes() {
    Lab seen = Lab.ofD65(52, 33, 44);
    KnownPatch patch = new KnownPatch(sample(seen), Lab.ofD65(50, 30, 40), 0.5);

    Lab corrected = PhotoCorrection.ofBeside(GREY, patch).colour(sample(seen)).lab();

    double scale = Math.pow(1 + 0.045 * 55, 2);
    double told = scale * (4 - 0.04) / (scale * 4 + 0.25);
    assertThat(corrected.a()).isCloseTo(33 - 3 * told, within(1e-3));
    assertThat(corrected.b()).isCloseTo(44 - 4 * told, within(1e-3));
  }

  // One of five pixels is off, or one of six: fewer than 80 % are nearer, or more.
  @Test
  void theSpreadOfPixelsIsWhatEightOfTenLieWithin() {
    Lab grey = Lab.ofD65(50, 0, 0);
    Lab off = Lab.ofD65(56, 0, 0);
    assertThat(PhotoColour.pixelSpread(grey, List.of(grey, grey, grey, grey, off)))
        .isCloseTo(Ciede2000.deltaE(grey, off), within(1e-9));
    assertThat(PhotoColour.pixelSpread(grey, List.of(grey, grey, grey, grey, grey, off))).isZero();
  }

  // Half as bright a photo, of which nothing else is known: the patch tells that.
  @Test
  void aKnownPatchTellsTheExposure() {
    Lab known = Lab.ofD65(60, 10, 20);
    LinearRgb light = LinearRgb.ofXyz(known.toXyz());
    LinearRgb half = new LinearRgb(light.red() / 2, light.green() / 2, light.blue() / 2);
    RegionSample dim = new RegionSample(PLACE, half, ALL, List.of(half));

    PhotoCorrection beside =
        PhotoCorrection.ofBeside(PhotoCorrection.ofNothing(), new KnownPatch(dim, known, 0.5));

    PhotoColour read = beside.colour(dim);
    assertThat(Ciede2000.deltaE(read.lab(), known)).isLessThan(1e-6);
    assertThat(read.lightnessKnown()).isTrue();
    assertThat(beside.reference()).isEqualTo("known patch");
  }

  @Test
  void aPatchThatIsSeenQuiteOtherwiseMustBeAnotherOne() {
    KnownPatch far = new KnownPatch(sample(Lab.ofD65(75, 0, 0)), Lab.ofD65(50, 0, 0), 0.5);

    assertThatIllegalArgumentException()
        .isThrownBy(() -> PhotoCorrection.ofBeside(GREY, far))
        .withMessageEndingWith("is it the right place?")
        .withMessageContaining("0,0,10,10");
    // 15 is within five standard deviations of 3.6: the photo's 2 and the tails' 3.
    KnownPatch near = new KnownPatch(sample(Lab.ofD65(65, 0, 0)), Lab.ofD65(50, 0, 0), 0.5);
    assertThat(PhotoCorrection.ofBeside(GREY, near)).isNotNull();
  }

  @Test
  void anErrorIsOneFigureAndASwatchIsCutOffAtWhite() {
    PhotoColour white = GREY.colour(sample(Lab.ofD65(102, 0, 0)));
    // Sds of 2, 2 and 2.
    assertThat(white.error()).isCloseTo(2, within(1e-6));
    assertThat(white.swatch().lab().l()).isEqualTo(100);
    assertThat(white.intervalDeltaE00())
        .isCloseTo(white.spread().radius(Prediction.INTERVAL_PROBABILITY), within(1e-12));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> GREY.colour(sample(Lab.ofD65(106, 0, 0))).swatch())
        .withMessageEndingWith("must be below 100; is the reference right?");
    Swatch grey = GREY.colour(sample(Lab.ofD65(40, 0, 0))).swatch();
    assertThat(grey.lab().l()).isCloseTo(40, within(1e-3));
  }

  @Test
  void aColourKeepsItsPlaceShareAndName() {
    PhotoColour colour = GREY.colour(sample(Lab.ofD65(40, 0, 0)));

    RegionColour whole = RegionColour.of(PLACE, colour).withName("hull");
    RegionColour shade = RegionColour.of(PLACE, new RegionShade(colour, 0.25));

    assertThat(whole).isEqualTo(new RegionColour(Optional.of("hull"), PLACE, colour, 1));
    assertThat(shade).isEqualTo(new RegionColour(Optional.empty(), PLACE, colour, 0.25));
    assertThat(new PixelShares(0.5, 0.12, 0.25, 0.06, 0.07, 0).toText())
        .isEqualTo("50 % usable, 12 % clipped, 25 % near black, 6 % transparent, 7 % stray");
  }
}
