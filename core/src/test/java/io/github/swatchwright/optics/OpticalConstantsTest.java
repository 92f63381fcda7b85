package io.github.swatchwright.optics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.spectrum.Bands;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class OpticalConstantsTest {

  /** So much of a paint. */
  private record Share(OpticalConstants paint, double volume) {}

  /** Absorption and scattering that differ from band to band, starting from the stated ones. */
  private static OpticalConstants sloping(double k, double s) {
    double[] ks = new double[Bands.COUNT];
    double[] ss = new double[Bands.COUNT];
    for (int band = 0; band < Bands.COUNT; band++) {
      ks[band] = k * (1 + band);
      ss[band] = s / (1 + band / 10.0);
    }
    return OpticalConstants.of(ks, ss);
  }

  private static OpticalConstants mix(List<Share> shares) {
    return OpticalConstants.mix(
        shares.stream().map(Share::paint).toArray(OpticalConstants[]::new),
        shares.stream().mapToDouble(Share::volume).toArray());
  }

  @Provide
  Arbitrary<Share> shares() {
    return Combinators.combine(
            Arbitraries.doubles().between(0, 20).ofScale(6),
            Arbitraries.doubles().between(0.001, 5).ofScale(6),
            Arbitraries.doubles().between(0.001, 100).ofScale(6))
        .as((k, s, volume) -> new Share(sloping(k, s), volume));
  }

  @Test
  void oneToThreeIsMixedAsWorkedByHand() {
    OpticalConstants mixed =
        OpticalConstants.mix(
            new OpticalConstants[] {sloping(2, 0.5), sloping(0.4, 1)}, new double[] {5, 15});
    // Duncan 1940 in the first two bands: K = (2 + 3·0.4)/4, S = (0.5 + 3)/4, then twice the K and
    // the S through 1.1.
    assertThat(mixed.k(0)).isCloseTo(0.8, within(1e-15));
    assertThat(mixed.s(0)).isCloseTo(0.875, within(1e-15));
    assertThat(mixed.k(1)).isCloseTo(1.6, within(1e-15));
    assertThat(mixed.s(1)).isCloseTo(0.875 / 1.1, within(1e-15));
  }

  @Property(tries = 200)
  void orderAndUnitOfTheVolumesDoNotMatter(
      @ForAll @Size(min = 1, max = 4) List<@From("shares") Share> shares,
      @ForAll @Scale(3) @DoubleRange(min = 0.01, max = 1000) double unit) {
    OpticalConstants mixed = mix(shares);
    List<Share> backwards = new ArrayList<>(shares);
    Collections.reverse(backwards);
    OpticalConstants other =
        mix(backwards.stream().map(s -> new Share(s.paint(), s.volume() * unit)).toList());
    for (int band = 0; band < Bands.COUNT; band++) {
      // Sums in another order.
      assertThat(other.k(band)).isCloseTo(mixed.k(band), within(1e-12 * (1 + mixed.k(band))));
      assertThat(other.s(band)).isCloseTo(mixed.s(band), within(1e-12 * mixed.s(band)));
    }
  }

  @Property(tries = 200)
  void aMixReflectsNoLessThanItsDarkestAndNoMoreThanItsLightestPart(
      @ForAll @Size(min = 1, max = 4) List<@From("shares") Share> shares) {
    double[] mixed = mix(shares).opaque();
    for (int band = 0; band < Bands.COUNT; band++) {
      int at = band;
      double[] parts = shares.stream().mapToDouble(s -> s.paint().opaque()[at]).sorted().toArray();
      // q = ΣcK/ΣcS lies between the parts' own; 1e-12 for rounding.
      assertThat(mixed[band]).isBetween(parts[0] - 1e-12, parts[parts.length - 1] + 1e-12);
      assertThat(mixed[band]).isBetween(0.0, 1.0);
    }
  }

  @Property(tries = 200)
  void everyBandIsItsOwnPaintAndFilm(
      @ForAll("shares") Share share,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 10) double x,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double below) {
    OpticalConstants paint = share.paint();
    double[] base = new double[Bands.COUNT];
    Arrays.setAll(base, band -> below * band / Bands.COUNT);
    double[] opaque = paint.opaque();
    double[] film = paint.filmOver(x, base);
    for (int band = 0; band < Bands.COUNT; band++) {
      double q = paint.k(band) / paint.s(band);
      assertThat(opaque[band]).isCloseTo(KubelkaMunk.reflectance(q), within(1e-14));
      assertThat(film[band])
          .isCloseTo(
              new Film(paint.k(band), paint.s(band), x).reflectanceOver(base[band]), within(1e-14));
    }
  }

  @Test
  void equalityIsByValue() {
    OpticalConstants one = sloping(1, 1);
    assertThat(one).isEqualTo(sloping(1, 1)).hasSameHashCodeAs(sloping(1, 1));
    assertThat(one).isNotEqualTo(sloping(2, 1)).isNotEqualTo(sloping(1, 2)).isNotEqualTo("one");
    assertThat(one.hashCode())
        .isNotEqualTo(sloping(2, 1).hashCode())
        .isNotEqualTo(sloping(1, 2).hashCode());
    assertThat(one.toString()).startsWith("OpticalConstants[k=[1.0, 2.0,").contains(", s=[1.0, ");
  }

  @Test
  void valuesAreCopiedIn() {
    double[] k = new double[Bands.COUNT];
    double[] s = new double[Bands.COUNT];
    Arrays.fill(s, 1);
    OpticalConstants clear = OpticalConstants.of(k, s);
    k[0] = 5;
    s[0] = 5;
    assertThat(clear.k(0)).isZero();
    assertThat(clear.s(0)).isEqualTo(1);
  }

  @Test
  void nonsenseIsRefused() {
    double[] ones = new double[Bands.COUNT];
    Arrays.fill(ones, 1);
    double[] dark = ones.clone();
    dark[35] = 0;
    OpticalConstants paint = OpticalConstants.of(ones, ones);
    OpticalConstants[] pair = {paint, paint};
    assertThatIllegalArgumentException()
        .isThrownBy(() -> OpticalConstants.of(ones, dark))
        .withMessage("s[35] is 0.0, must be a finite number above 0");
    dark[35] = -1;
    assertThatIllegalArgumentException()
        .isThrownBy(() -> OpticalConstants.of(dark, ones))
        .withMessageStartingWith("k[35] is -1.0");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> OpticalConstants.mix(pair, new double[] {1}))
        .withMessageStartingWith("number of volumes is 1");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> OpticalConstants.mix(pair, new double[] {1, -1}))
        .withMessageStartingWith("volumes[1] is -1.0");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> OpticalConstants.mix(pair, new double[2]))
        .withMessageStartingWith("sum of volumes is 0.0");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> paint.filmOver(1, new double[3]))
        .withMessageStartingWith("number of base bands is 3");
  }
}
