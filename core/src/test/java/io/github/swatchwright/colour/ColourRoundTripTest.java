package io.github.swatchwright.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Offset;

/** Every conversion there and back, well beyond what a display shows. */
class ColourRoundTripTest {
  /** A matrix and its inverse, of condition number below 5, cost a digit or two of sixteen. */
  private static final Offset<Double> RGB = within(1e-13);

  /** The same at Lab's scale of a hundred and more. */
  private static final Offset<Double> LAB = within(1e-10);

  @Property
  void srgbThroughXyz(
      @ForAll @DoubleRange(min = -1, max = 2) double red,
      @ForAll @DoubleRange(min = -1, max = 2) double green,
      @ForAll @DoubleRange(min = -1, max = 2) double blue) {
    Srgb there = Srgb.ofXyz(new Srgb(red, green, blue).toXyz());
    // Near black the curve's slope of 12.92 and the power's 1/2.4 enlarge a channel's rounding,
    // which is that of the largest channel.
    Offset<Double> encoded = within(5e-12);
    assertThat(there.red()).isCloseTo(red, encoded);
    assertThat(there.green()).isCloseTo(green, encoded);
    assertThat(there.blue()).isCloseTo(blue, encoded);
  }

  @Property
  void displayP3ThroughXyz(
      @ForAll @DoubleRange(min = -1, max = 2) double red,
      @ForAll @DoubleRange(min = -1, max = 2) double green,
      @ForAll @DoubleRange(min = -1, max = 2) double blue) {
    DisplayP3 there = DisplayP3.ofXyz(new DisplayP3(red, green, blue).toXyz());
    Offset<Double> encoded = within(5e-12);
    assertThat(there.red()).isCloseTo(red, encoded);
    assertThat(there.green()).isCloseTo(green, encoded);
    assertThat(there.blue()).isCloseTo(blue, encoded);
  }

  @Property
  void linearThroughXyz(
      @ForAll @DoubleRange(min = -1, max = 2) double red,
      @ForAll @DoubleRange(min = -1, max = 2) double green,
      @ForAll @DoubleRange(min = -1, max = 2) double blue) {
    LinearRgb there = LinearRgb.ofXyz(new LinearRgb(red, green, blue).toXyz());
    assertThat(there.red()).isCloseTo(red, RGB);
    assertThat(there.green()).isCloseTo(green, RGB);
    assertThat(there.blue()).isCloseTo(blue, RGB);
  }

  @Property
  void labThroughXyzAndAnotherWhite(
      @ForAll @DoubleRange(min = 0, max = 120) double l,
      @ForAll @DoubleRange(min = -160, max = 160) double a,
      @ForAll @DoubleRange(min = -160, max = 160) double b) {
    Lab lab = Lab.ofD65(l, a, b);
    assertLab(lab.toXyz().toLab(), lab);
    Lab there = lab.adaptTo(WhitePoint.D50);
    assertThat(there.white()).isEqualTo(WhitePoint.D50);
    assertLab(there.adaptTo(WhitePoint.D65), lab);
  }

  @Property
  void labThroughLch(
      @ForAll @DoubleRange(min = 0, max = 120) double l,
      @ForAll @DoubleRange(min = -160, max = 160) double a,
      @ForAll @DoubleRange(min = -160, max = 160) double b) {
    Lab lab = Lab.ofD65(l, a, b);
    Lch lch = lab.toLch();
    // Chroma below 1e-6 counts as none, and is given up.
    Offset<Double> rounding = lch.hueDegrees().isPresent() ? within(1e-12) : within(1e-6);
    assertThat(lch.toLab().a()).isCloseTo(a, rounding);
    assertThat(lch.toLab().b()).isCloseTo(b, rounding);
    lch.hueDegrees().ifPresent(hue -> assertThat(hue).isGreaterThanOrEqualTo(0).isLessThan(360));
  }

  @Property
  void textOfAColourIsReadBack(
      @ForAll @DoubleRange(min = 0, max = 100) double l,
      @ForAll @DoubleRange(min = -160, max = 160) double a,
      @ForAll @DoubleRange(min = -160, max = 160) double b) {
    Lab there = Lab.parse(Lab.ofD65(l, a, b).toText());
    // toText rounds to two decimals.
    assertThat(there.l()).isCloseTo(l, within(0.0051));
    assertThat(there.a()).isCloseTo(a, within(0.0051));
    assertThat(there.b()).isCloseTo(b, within(0.0051));
  }

  private static void assertLab(Lab actual, Lab expected) {
    assertThat(actual.l()).isCloseTo(expected.l(), LAB);
    assertThat(actual.a()).isCloseTo(expected.a(), LAB);
    assertThat(actual.b()).isCloseTo(expected.b(), LAB);
  }
}
