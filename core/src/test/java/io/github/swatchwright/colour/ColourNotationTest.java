package io.github.swatchwright.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.testdata.ExternalCheck;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ColourNotationTest {
  private static final ExternalCheck CSS =
      ExternalCheck.against("W3C CSS Color 4, its examples", "colour functions and hex to sRGB");

  /**
   * Examples of sections 5, 9.3 and 9.4; the specification gives each in percent of sRGB. Its
   * {@code lch(29.69% 45.553% 327.1)} is left out: by the {@code lab()} of the same colour, the
   * chroma is 44.553 %.
   */
  @Tag("external")
  @ParameterizedTest(name = "CSS Color 4: {0} is rgb({1}% {2}% {3}%)")
  @CsvSource(
      delimiter = '|',
      value = {
        "lab(29.2345% 39.3825 20.0664)|49.06|13.87|15.9",
        "lab(52.2345 40.1645 59.9971)|77.61|36.34|2.45",
        "lab(60.2345 -5.3654 58.956)|61.65|57.51|9.28",
        "lab(62.2345% -34.9638 47.7721)|40.73|65.12|22.35",
        "lab(67.5345 -8.6911 -41.6019)|38.29|67.27|93.85",
        "lab(29.69% 44.888% -29.04%)|50.2|0|50.2",
        "lch(29.2345% 44.2 27)|49.06|13.87|15.9",
        "lch(52.2345% 72.2 56.2)|77.61|36.34|2.45",
        "lch(60.2345 59.2 95.2)|61.65|57.51|9.28",
        "lch(62.2345% 59.2 126.2)|40.73|65.12|22.35",
        "lch(67.5345% 42.5 258.2)|38.29|67.27|93.85",
        "oklab(40.101% 0.1147 0.0453)|49.06|13.87|15.9",
        "oklab(59.686% 0.1009 0.1192)|77.61|36.34|2.45",
        "oklab(0.65125 -0.0320 0.1274)|61.65|57.51|9.28",
        "oklab(66.016% -0.1084 0.1114)|40.73|65.12|22.35",
        "oklab(72.322% -0.0465 -0.1150)|38.29|67.27|93.85",
        "oklab(42.1% 41% -25%)|50.2|0|50.2",
        "oklch(40.101% 0.12332 21.555)|49.06|13.87|15.9",
        "oklch(59.686% 0.15619 49.7694)|77.61|36.34|2.45",
        "oklch(0.65125 0.13138 104.097)|61.65|57.51|9.28",
        "oklch(0.66016 0.15546 134.231)|40.73|65.12|22.35",
        "oklch(72.322% 0.12403 247.996)|38.29|67.27|93.85",
        "oklch(42.1% 48.25% 328.4)|50.2|0|50.2",
        "#00ff00|0|100|0",
        "rgb(0 255 0)|0|100|0"
      })
  void examplesOfTheSpecification(String text, double red, double green, double blue) {
    Srgb read = Srgb.parse(text);
    // Coordinates are printed to 3 to 6 digits: the coarsest, oklab's four decimals and whole
    // percent, move linear light by 0.2 %, and near black the encoded channel by up to 0.013.
    double tolerance = text.contains("41% -25%") || text.contains("48.25%") ? 0.013 : 0.0035;
    CSS.near(read.red(), red / 100, tolerance);
    CSS.near(read.green(), green / 100, tolerance);
    CSS.near(read.blue(), blue / 100, tolerance);
  }

  @Tag("external")
  @Test
  void shortHexDoublesItsDigits() {
    assertThat(Srgb.parse("#123")).isEqualTo(Srgb.parse("#112233"));
    CSS.near(Srgb.parse("#123").green(), 0x22 / 255.0, 0);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "#8A4B2A|#8A4B2A",
        " #8a4b2a |#8A4B2A",
        "8A4B2A|#8A4B2A",
        "#8A4B2AFF|#8A4B2A",
        "#8a4f|#88AA44",
        "rgb(138, 75, 42)|#8A4B2A",
        "RGB(138 75 42)|#8A4B2A",
        "rgba(138,75,42,1)|#8A4B2A",
        "rgb(138 75 42 / 100%)|#8A4B2A",
        "138,75,42|#8A4B2A",
        "138 75 42|#8A4B2A",
        "rgb(none 50% 100%)|#0080FF",
        "Sienna|#A0522D",
        "lab(40 0 none)|#5E5E5E",
        "lch(40, 0, 90deg)|#5E5E5E"
      })
  void oneColourInManyNotations(String text, String hex) {
    assertThat(Srgb.parse(text).toHex()).isEqualTo(hex);
    assertThat(Lab.parse(text).toSrgb().toHex()).isEqualTo(hex);
  }

  @Test
  void commasTellThisLibrarysWhiteFromThatOfCss() {
    assertThat(Lab.parse("lab(50, 40, 30)")).isEqualTo(Lab.ofD65(50, 40, 30));
    assertThat(Lab.parse("lab(50 40 30)"))
        .isEqualTo(new Lab(50, 40, 30, WhitePoint.D50).adaptTo(WhitePoint.D65));
  }

  @Test
  void anglesHaveUnits() {
    Lab quarter = Lab.parse("lch(50, 20, 90)");
    for (String angle : new String[] {"90deg", "100grad", "0.25turn", "1.5707963267948966rad"}) {
      Lab read = Lab.parse("lch(50, 20, " + angle + ")");
      assertThat(read.a()).as(angle).isCloseTo(quarter.a(), within(1e-12));
      assertThat(read.b()).as(angle).isEqualTo(quarter.b());
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "rust|'rust' is not a colour of the form #RRGGBB, rgb(138, 75, 42) or lab(L, a, b), nor a"
            + " colour name of CSS such as sienna",
        "#8A4B2|'#8A4B2' is not a colour of the form #RRGGBB with six digits 0 to F",
        "#8A4B2A80|'#8A4B2A80' is transparent in part (its alpha isn't 1), so it has no colour of"
            + " its own: give the colour as it looks over what lies below",
        "rgb(138 75 42 / 50%)|'rgb(138 75 42 / 50%)' is transparent in part (its alpha isn't 1), so"
            + " it has no colour of its own: give the colour as it looks over what lies below",
        "rgb(300, 0, 0)|red in 'rgb(300, 0, 0)' is 300.0, must be within [0.0, 255.0]",
        "300,0,0|red in 'rgb(300,0,0)' is 300.0, must be within [0.0, 255.0]",
        "rgb(1, 2)|'rgb(1, 2)' is not a colour of the form rgb(138, 75, 42), each 0 to 255",
        "oklch(0.4 x 20)|'x' in 'oklch(0.4 x 20)' is not a number",
        "oklch(45 0.1 20)|L in 'oklch(45 0.1 20)' is 45.0, must be within [0.0, 1.0]",
        "hsl(20, 50%, 35%)|'hsl(20, 50%, 35%)' is not read; give the same colour as rgb(r, g, b) or"
            + " #RRGGBB"
      })
  void whatIsNoColourIsRefused(String text, String message) {
    assertThatIllegalArgumentException().isThrownBy(() -> Srgb.parse(text)).withMessage(message);
    assertThatIllegalArgumentException().isThrownBy(() -> Lab.parse(text)).withMessage(message);
  }
}
