package io.github.swatchwright.json;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.paint.Swatch;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.arbitraries.StringArbitrary;

/** Values of any kind that documents may hold. */
final class ArbitraryValues {
  private ArbitraryValues() {}

  static Arbitrary<Swatch> swatches() {
    Arbitrary<Swatch> srgb =
        Arbitraries.integers()
            .between(0, 0xFFFFFF)
            .map(rgb -> new Swatch.OfSrgb(Srgb.ofPacked(rgb)));
    Arbitrary<Swatch> lab =
        Combinators.combine(between(0, 100), between(-160, 160), between(-160, 160))
            .as((l, a, b) -> new Swatch.OfLab(Lab.ofD65(l, a, b)));
    Arbitrary<Swatch> reflectance =
        Combinators.combine(
                between(350, 400),
                between(9.5, 10),
                between(1e-6, 1).array(double[].class).ofSize(36))
            .as(Swatch.OfReflectance::new);
    return Arbitraries.oneOf(srgb, lab, reflectance);
  }

  static Arbitrary<Double> between(double lowest, double highest) {
    return Arbitraries.doubles().between(lowest, highest).ofScale(17);
  }

  /** Any characters but half ones. */
  static StringArbitrary text() {
    return Arbitraries.strings()
        .withCharRange('\u0000', '\uD7FF')
        .withCharRange('\uE000', '\uFFFF')
        .ofMaxLength(12);
  }

  private static boolean isPlain(String name) {
    return name.chars().noneMatch(Character::isISOControl);
  }

  /** What a paint may be called. */
  static Arbitrary<String> names() {
    return text().ofMinLength(1).filter(name -> !name.isBlank()).filter(ArbitraryValues::isPlain);
  }
}
