package io.github.swatchwright.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.testdata.ExternalCheck;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Single colours whose coordinates are published, by standards and the W3C above all. */
@Tag("external")
class PublishedColoursTest {
  private static final ExternalCheck COLOUR =
      ExternalCheck.against(
          "library colour (Python), its documentation", "CIELAB of one XYZ under D65 and D50");
  private static final ExternalCheck RED =
      ExternalCheck.against("published coordinates, from memory", "CIELAB of sRGB red under D65");
  private static final ExternalCheck CURVE =
      ExternalCheck.against("IEC 61966-2-1", "the sRGB curve at 0.18, both ways");
  private static final ExternalCheck P3_ROUNDED =
      ExternalCheck.against("published coordinates, from memory", "Display P3 red in sRGB");
  private static final ExternalCheck P3_CULORI =
      ExternalCheck.against("npm culori 4.0.2", "Display P3 red in sRGB");
  private static final ExternalCheck CSS_LAB =
      ExternalCheck.against("W3C CSS Color 4 and its tests", "CIELAB under D50 to sRGB");
  private static final ExternalCheck CSS_P3 =
      ExternalCheck.against("W3C CSS Color 4 and its tests", "Display P3 to and from sRGB and LCh");
  private static final ExternalCheck CSS_P3_SAMPLES =
      ExternalCheck.against("W3C css-color-4 drafts, P3samples", "Display P3 to CIELAB under D50");
  private static final ExternalCheck WHITES =
      ExternalCheck.against("CIE 15:2004", "whites D65 and D50");
  private static final ExternalCheck GREY =
      ExternalCheck.against("IEC 61966-2-1 and CIE 15", "L* of 18 % grey");

  private static void assertLab(
      ExternalCheck check, Lab lab, double l, double a, double b, double tolerance) {
    check.near(lab.l(), l, tolerance, "L* of " + lab);
    check.near(lab.a(), a, tolerance, "a* of " + lab);
    check.near(lab.b(), b, tolerance, "b* of " + lab);
  }

  @Test
  @DisplayName("CIELAB of XYZ (.20654008, .12197225, .05136952), an example of the library colour")
  void labUnderTwoWhites() {
    // Inputs of eight decimals, where f is steepest at Z = 0.05: 200/3·0.05^(-2/3)·5e-9 is 2.5e-6.
    Xyz d65 = new Xyz(20.654008, 12.197225, 5.136952, WhitePoint.D65);
    assertLab(COLOUR, d65.toLab(), 41.52787529, 52.63858304, 26.92317922, 3e-6);
    Xyz d50 = new Xyz(20.654008, 12.197225, 5.136952, WhitePoint.D50);
    assertLab(COLOUR, d50.toLab(), 41.52787529, 51.19354174, 19.91843098, 3e-6);
  }

  @Test
  @DisplayName("sRGB red, in CIELAB under D65, to four printed decimals")
  void redOfSrgb() {
    // The printed figure is for a white rounded to five digits: up to 5e-4 in a* and b*.
    assertLab(RED, Srgb.parse("#FF0000").toLab(), 53.2371, 80.0901, 67.2033, 2e-3);
  }

  @Test
  @DisplayName("IEC 61966-2-1: the curve at .18, and where its two pieces meet")
  void curveOfSrgb() {
    CURVE.near(SrgbCurve.encode(0.18), 0.461356129500442, 1e-15);
    CURVE.near(SrgbCurve.decode(0.461356129500442), 0.18, 1e-15);
    // The standard's rounded constants leave a step of 2e-8 at 0.0031308.
    assertThat(SrgbCurve.encode(Math.nextUp(0.0031308)))
        .isCloseTo(SrgbCurve.encode(0.0031308), within(4e-8));
    assertThat(SrgbCurve.encode(-0.18)).isEqualTo(-SrgbCurve.encode(0.18));
  }

  @Test
  @DisplayName("Display P3 red lies outside sRGB at (1.09299, −.22675, −.15015)")
  void redOfDisplayP3() {
    Srgb red = new DisplayP3(1, 0, 0).toSrgb();
    // These figures come from matrices rounded to four or five digits; encoded, that is up to 1e-4.
    // The exact primaries give what npm culori 4.0.2 gives, below.
    P3_ROUNDED.near(red.red(), 1.09299, 1e-4);
    P3_ROUNDED.near(red.green(), -0.22675, 1e-4);
    P3_ROUNDED.near(red.blue(), -0.15015, 1e-4);
    P3_CULORI.near(red.red(), 1.0930663624351615, 1e-12);
    P3_CULORI.near(red.green(), -0.22674197356975384, 1e-12);
    P3_CULORI.near(red.blue(), -0.1501345809371194, 1e-12);
    assertThat(red.isDisplayable()).isFalse();
  }

  /** L*, a*, b* under D50 of CSS colours; the printed digits allow an 8-bit rounding either way. */
  @ParameterizedTest(name = "CSS Color 4 and its test suite: lab({0} {1} {2}) is {3}")
  @CsvSource({
    "46.2775, -47.5621, 48.5837, #008000",
    "29.2345, 39.3825, 20.0664, #7D2329",
    "52.2345, 40.1645, 59.9971, #C65D06",
    "67.5345, -8.6911, -41.6019, #62ACEF",
    "100, 0, 0, #FFFFFF",
    "0, 0, 0, #000000"
  })
  void cssLab(double l, double a, double b, String hex) {
    Srgb shown = new Lab(l, a, b, WhitePoint.D50).toSrgb();
    Srgb expected = Srgb.parse(hex);
    // A printed hex digit is within half an 8-bit step of the colour, 0.002; the four decimals of
    // L*, a*, b* and the specification's own rounding add less than half as much again.
    CSS_LAB.near(shown.red(), expected.red(), 0.003);
    CSS_LAB.near(shown.green(), expected.green(), 0.003);
    CSS_LAB.near(shown.blue(), expected.blue(), 0.003);
  }

  @Test
  @DisplayName("W3C test suite, display-p3-001 and -006: green, and lch(54 35 118) both ways")
  void cssDisplayP3() {
    DisplayP3 green = DisplayP3.ofXyz(Srgb.parse("#008000").toXyz());
    CSS_P3.near(green.red(), 0.21604, 5e-6);
    CSS_P3.near(green.green(), 0.49418, 5e-6);
    CSS_P3.near(green.blue(), 0.13151, 5e-6);

    // Six printed decimals on both sides, and a matrix between them.
    Srgb olive = new DisplayP3(0.465377, 0.532768, 0.317713).toSrgb();
    CSS_P3.near(olive.red(), 0.448436, 5e-6);
    CSS_P3.near(olive.green(), 0.53537, 5e-6);
    CSS_P3.near(olive.blue(), 0.288113, 5e-6);
    Lch lch = olive.toLab().adaptTo(WhitePoint.D50).toLch();
    CSS_P3.near(lch.l(), 54, 2e-3);
    CSS_P3.near(lch.c(), 35, 2e-3);
    CSS_P3.near(lch.hueDegrees().orElseThrow(), 118, 2e-3);
  }

  /**
   * The draft's own samples were computed with a matrix whose white is L*ab (99.9998, −.004,
   * −.014).
   */
  @ParameterizedTest(name = "W3C css-color-4 drafts, P3samples: P3 ({0}, {1}, {2})")
  @CsvSource({
    "0, 0, 0.5, 12.1251, 42.1550, -69.1464",
    "0, 1, 0, 86.6146, -106.5598, 102.8718",
    "0.5, 0, 1, 40.9303, 80.6824, -98.4850",
    "0.5, 0.5, 0, 51.8131, -10.4354, 72.9967",
    "1, 0, 0, 56.2048, 94.4692, 98.8839",
    "1, 0.5, 0.5, 69.7245, 60.0082, 28.3427",
    "1, 1, 0, 97.3656, -17.4452, 122.0312"
  })
  void cssP3Samples(double red, double green, double blue, double l, double a, double b) {
    Lab lab = new DisplayP3(red, green, blue).toXyz().adaptTo(WhitePoint.D50).toLab();
    assertLab(CSS_P3_SAMPLES, lab, l, a, b, 0.03);
  }

  @Test
  @DisplayName("CIE 15:2004: whites D65 (95.04, 100, 108.88) and D50 (96.42, 100, 82.51), 2°")
  void whites() {
    // These constants come from chromaticities of four decimals: 0.5e-4 in y moves Z by 0.04.
    WHITES.near(WhitePoint.D65.xn(), 95.04, 0.04);
    WHITES.near(WhitePoint.D65.zn(), 108.88, 0.04);
    WHITES.near(WhitePoint.D50.xn(), 96.42, 0.04);
    WHITES.near(WhitePoint.D50.zn(), 82.51, 0.04);
  }

  @Test
  @DisplayName("18 % grey is sRGB 118 and L* 49.5 (by the formulas of IEC 61966-2-1 and CIE 15)")
  void middleGrey() {
    Srgb grey = new LinearRgb(0.18, 0.18, 0.18).encode();
    assertThat(grey.toHex()).isEqualTo("#767676");
    GREY.near(grey.toLab().l(), 49.5, 0.05);
  }
}
