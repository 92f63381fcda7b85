package io.github.swatchwright.difference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.Lab;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What holds for CIEDE2000 of any colours, also of those that don't exist. */
class Ciede2000PropertyTest {
  @Property
  void symmetricAndNeverNegativeOrNaN(@ForAll("labs") Lab first, @ForAll("labs") Lab second) {
    double deltaE = Ciede2000.deltaE(first, second);
    assertThat(deltaE).isGreaterThanOrEqualTo(0).isEqualTo(Ciede2000.deltaE(second, first));
  }

  @Property
  void symmetricAndNeverNegativeOrNaNForHugeAndTinyNumbers(
      @ForAll("extremes") Lab first, @ForAll("extremes") Lab second) {
    double deltaE = Ciede2000.deltaE(first, second);
    assertThat(deltaE).isGreaterThanOrEqualTo(0).isEqualTo(Ciede2000.deltaE(second, first));
  }

  @Property
  void zeroForIdenticalColours(@ForAll("extremes") Lab colour) {
    assertThat(Ciede2000.deltaE(colour, colour)).isZero();
  }

  @Property
  void aboveZeroForColoursThatDiffer(
      @ForAll("labs") Lab colour, @ForAll("steps") double step, @ForAll("axes") int axis) {
    Lab other =
        Lab.ofD65(
            colour.l() + (axis == 0 ? step : 0),
            colour.a() + (axis == 1 ? step : 0),
            colour.b() + (axis == 2 ? step : 0));
    // No weight exceeds 1 + 0.045·(1.5·370) or falls below 0.3, wherever the colours lie.
    assertThat(Ciede2000.deltaE(colour, other)).isBetween(step / 40, step * 5);
  }

  @Property
  void termsAreSampleMinusReference(@ForAll("labs") Lab reference, @ForAll("labs") Lab sample) {
    ColourDifference there = Ciede2000.STANDARD.compare(reference, sample);
    ColourDifference back = Ciede2000.STANDARD.compare(sample, reference);
    assertThat(there.deltaE()).isEqualTo(Ciede2000.deltaE(reference, sample));
    assertThat(there.deltaL()).isEqualTo(-back.deltaL());
    assertThat(there.deltaC()).isEqualTo(-back.deltaC());
    assertThat(there.deltaH()).isEqualTo(-back.deltaH());
  }

  @Property
  void hugeDifferencesScaleWithTheirCoordinates(
      @ForAll("labs") Lab first, @ForAll("labs") Lab second) {
    // S_C and S_H grow with chroma: far out, ratios alone count, on both sides of the slow path.
    double below =
        Ciede2000.deltaE(
            50, first.a() * 1e30, first.b() * 1e30, 50, second.a() * 1e30, second.b() * 1e30);
    double above =
        Ciede2000.deltaE(
            50, first.a() * 1e300, first.b() * 1e300, 50, second.a() * 1e300, second.b() * 1e300);
    assertThat(above).isCloseTo(below, within(1e-9));
  }

  @Provide
  Arbitrary<Lab> labs() {
    return Combinators.combine(between(0, 100), between(-160, 160), between(-160, 160))
        .as(Lab::ofD65);
  }

  @Provide
  Arbitrary<Lab> extremes() {
    Arbitrary<Double> anything =
        Arbitraries.oneOf(
            Arbitraries.of(
                0.0, -0.0, 1.0, Double.MIN_VALUE, -Double.MIN_NORMAL, 1e-160, 1e-75, -1e-70),
            Arbitraries.of(1e39, -1e41, 1e150, -1e160, 1e300, Double.MAX_VALUE, -Double.MAX_VALUE),
            between(-160, 160));
    return Combinators.combine(anything, anything, anything).as(Lab::ofD65);
  }

  @Provide
  Arbitrary<Double> steps() {
    return Arbitraries.of(1e-12, 1e-9, 1e-6, 1e-3, 0.1).map(step -> step);
  }

  @Provide
  Arbitrary<Integer> axes() {
    return Arbitraries.of(0, 1, 2);
  }

  private static Arbitrary<Double> between(double lowest, double highest) {
    return Arbitraries.doubles().between(lowest, highest).ofScale(6);
  }
}
