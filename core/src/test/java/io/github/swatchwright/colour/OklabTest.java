package io.github.swatchwright.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OklabTest {

  @ParameterizedTest
  @CsvSource({
    "0.40101, 0.1147, 0.0453, 0.12332, 21.555",
    "0.59686, 0.1009, 0.1192, 0.15619, 49.7694",
    "0.65125, -0.0320, 0.1274, 0.13138, 104.097",
    "0.66016, -0.1084, 0.1114, 0.15546, 134.231",
    "0.72322, -0.0465, -0.1150, 0.12403, 247.996"
  })
  @DisplayName("CSS Color 4, sections 9.3 and 9.4: the same colours as oklab() and as oklch()")
  void examplesOfCss(double l, double a, double b, double c, double h) {
    Oklch polar = new Oklab(l, a, b).toOklch();
    assertThat(polar.l()).isEqualTo(l);
    // a and b are printed to four decimals, half of the last of both is 7.1e-5 away;
    assertThat(polar.c()).isCloseTo(c, within(7.6e-5));
    // seen from the least chroma here, 0.123, that is 0.034°.
    assertThat(polar.hueDegrees().orElseThrow()).isCloseTo(h, within(0.035));
    // The way to sRGB is checked by ColourNotationTest; this is the way back.
    Oklab back = new Oklab(l, a, b).toXyz().toLab().toXyz().toOklab();
    assertThat(back.l()).isCloseTo(l, within(1e-12));
    assertThat(back.a()).isCloseTo(a, within(1e-12));
    assertThat(back.b()).isCloseTo(b, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({
    "95.0, 100, 108.9, 1, 0, 0",
    "100, 0, 0, 0.450, 1.236, -0.019",
    "0, 100, 0, 0.922, -0.671, 0.263",
    "0, 0, 100, 0.153, -1.415, -0.449"
  })
  @DisplayName("Ottosson 2020, table of XYZ and Oklab pairs")
  void tableOfTheAuthor(double x, double y, double z, double l, double a, double b) {
    Oklab colour = new Xyz(x, y, z, WhitePoint.D65).toOklab();
    // Three decimals are printed; the white of the table differs in the fourth digit from D65's.
    assertThat(colour.l()).isCloseTo(l, within(1e-3));
    assertThat(colour.a()).isCloseTo(a, within(1e-3));
    assertThat(colour.b()).isCloseTo(b, within(1e-3));
  }

  @Property
  void thereAndBackIsTheSameColour(
      @ForAll @DoubleRange(max = 1) double r,
      @ForAll @DoubleRange(max = 1) double g,
      @ForAll @DoubleRange(max = 1) double b) {
    Xyz xyz = new Srgb(r, g, b).toLab().toXyz();
    Xyz back = xyz.toOklab().toOklch().toOklab().toXyz();
    // A neutral loses a chroma below NEUTRAL_CHROMA, whose cube root is linear here: 1e-3 of 100.
    assertThat(back.x()).isCloseTo(xyz.x(), within(2e-3));
    assertThat(back.y()).isCloseTo(xyz.y(), within(2e-3));
    assertThat(back.z()).isCloseTo(xyz.z(), within(2e-3));
  }

  @Test
  void greyHasNoHue() {
    Oklch grey = Srgb.parse("#808080").toLab().toXyz().toOklab().toOklch();
    assertThat(grey.hueDegrees()).isEmpty();
    assertThat(grey.toOklab().a()).isZero();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Oklch(0.5, 0.1, OptionalDouble.empty()))
        .withMessage("c is 0.1 without a hue, must be below 4.0E-6");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Oklch(0.5, 0.1, OptionalDouble.of(360)));
    assertThatIllegalArgumentException().isThrownBy(() -> new Oklab(Double.NaN, 0, 0));
  }
}
