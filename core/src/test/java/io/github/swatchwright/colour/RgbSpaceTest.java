package io.github.swatchwright.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RgbSpaceTest {
  private static final RgbSpace[] ALL = {
    RgbSpace.SRGB, RgbSpace.DISPLAY_P3, RgbSpace.ADOBE_RGB, RgbSpace.WIDE
  };

  private static RgbSpace space(String name) {
    for (RgbSpace space : ALL) {
      if (space.toString().equals(name)) {
        return space;
      }
    }
    throw new AssertionError(name);
  }

  // Decimals in brackets are those of the standards, here from memory: IEC 61966-2-1 (4), CSS Color
  // 4
  // (7), Adobe RGB (1998) 2005-05 (5); of ITU-R BT.2020 only the luminances (4).
  @ParameterizedTest(name = "{0}, channel {1}: X = {2}, Y = {3}, Z = {4} in the standard")
  @CsvSource({
    "sRGB, 0, 0.4124, 0.2126, 0.0193, 1e-4",
    "sRGB, 1, 0.3576, 0.7152, 0.1192, 1e-4",
    "sRGB, 2, 0.1805, 0.0722, 0.9505, 1e-4",
    "Display P3, 0, 0.4865709, 0.2289746, 0, 1e-6",
    "Display P3, 1, 0.2656677, 0.6917385, 0.0451134, 1e-6",
    "Display P3, 2, 0.1982173, 0.0792869, 1.0439444, 1e-6",
    "Adobe RGB, 0, 0.57667, 0.29734, 0.02703, 2e-5",
    "Adobe RGB, 1, 0.18556, 0.62736, 0.07069, 2e-5",
    "Adobe RGB, 2, 0.18823, 0.07529, 0.99134, 2e-5",
    "wide, 0, , 0.2627, 0, 1e-4",
    "wide, 1, , 0.6780, , 1e-4",
    "wide, 2, , 0.0593, , 1e-4",
  })
  void primariesAreThoseOfTheStandard(
      String name, int channel, Double x, Double y, Double z, double tolerance) {
    Xyz primary =
        space(name).toXyz(channel == 0 ? 1 : 0, channel == 1 ? 1 : 0, channel == 2 ? 1 : 0);
    // The last digit and not half of it: the standards round the white in between.
    assertThat(primary.y() / 100).isCloseTo(y, within(tolerance));
    if (x != null) {
      assertThat(primary.x() / 100).isCloseTo(x, within(tolerance));
    }
    if (z != null) {
      assertThat(primary.z() / 100).isCloseTo(z, within(tolerance));
    }
  }

  @Test
  void fullChannelsAreTheWhite() {
    for (RgbSpace space : ALL) {
      Xyz white = space.toXyz(1, 1, 1);
      assertThat(white.x()).isCloseTo(WhitePoint.D65.xn(), within(1e-12));
      assertThat(white.y()).isCloseTo(100, within(1e-12));
      assertThat(white.z()).isCloseTo(WhitePoint.D65.zn(), within(1e-12));
      LinearRgb linear = space.toLinearSrgb(1, 1, 1);
      assertThat(linear.red()).isCloseTo(1, within(1e-13));
      assertThat(linear.green()).isCloseTo(1, within(1e-13));
      assertThat(linear.blue()).isCloseTo(1, within(1e-13));
    }
  }

  @Test
  void curvesAreThoseOfTheStandards() {
    // IEC 61966-2-1: ((0.5 + 0.055)/1.055)^2.4; its straight start at 0.04: 0.04/12.92.
    for (RgbSpace space : new RgbSpace[] {RgbSpace.SRGB, RgbSpace.DISPLAY_P3, RgbSpace.WIDE}) {
      assertThat(space.decode(0.5)).isCloseTo(0.21404114, within(5e-9));
      assertThat(space.decode(0.04)).isCloseTo(0.04 / 12.92, within(1e-15));
    }
    // Adobe RGB (1998): the exponent 2.19921875; 2^-2.19921875 is 0.2177555.
    assertThat(RgbSpace.ADOBE_RGB.decode(0.5)).isCloseTo(0.2177555, within(5e-8));
    assertThat(RgbSpace.ADOBE_RGB.decode(-0.5)).isCloseTo(-0.2177555, within(5e-8));
  }

  @Test
  void channelsAndColoursComeBack() {
    for (RgbSpace space : ALL) {
      for (double channel = -0.5; channel <= 1.5; channel += 0.0625) {
        assertThat(space.encode(space.decode(channel))).isCloseTo(channel, within(1e-12));
      }
      assertThat(space.linearOf(space.toXyz(0.2, 0.5, 0.7)))
          .containsExactly(new double[] {0.2, 0.5, 0.7}, within(1e-13));
      LinearRgb srgb = space.toLinearSrgb(0.2, 0.5, 0.7);
      Xyz xyz = srgb.toXyz();
      Xyz own = space.toXyz(0.2, 0.5, 0.7);
      assertThat(xyz.x()).isCloseTo(own.x(), within(1e-11));
      assertThat(xyz.y()).isCloseTo(own.y(), within(1e-11));
      assertThat(xyz.z()).isCloseTo(own.z(), within(1e-11));
    }
  }

  @Test
  void sRgbChannelsStayWhatTheyAre() {
    assertThat(RgbSpace.SRGB.toLinearSrgb(0.2, 0.5, 0.7)).isEqualTo(new LinearRgb(0.2, 0.5, 0.7));
  }
}
