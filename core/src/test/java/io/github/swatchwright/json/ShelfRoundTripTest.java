package io.github.swatchwright.json;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.paint.Effect;
import io.github.swatchwright.paint.Finish;
import io.github.swatchwright.paint.Hiding;
import io.github.swatchwright.paint.Make;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.arbitraries.StringArbitrary;

/** Record equality compares doubles by their bits, so equal shelves are bit-identical. */
class ShelfRoundTripTest {

  @Property(tries = 300)
  void aWrittenShelfReadsBackEqual(@ForAll("shelves") Shelf shelf) {
    assertThat(ShelfJson.parse(ShelfJson.toText(shelf), "written")).isEqualTo(shelf);
  }

  @Property(tries = 300)
  void writingIsTheSameAfterReading(@ForAll("shelves") Shelf shelf) {
    String text = ShelfJson.toText(shelf);

    assertThat(ShelfJson.toText(ShelfJson.parse(text, "written"))).isEqualTo(text);
  }

  @Provide
  Arbitrary<Shelf> shelves() {
    Arbitrary<Saunderson> surfaces =
        Combinators.combine(between(0, 0.9), between(0, 0.9)).as(Saunderson::new);
    return Combinators.combine(
            text(),
            paints().list().ofMinSize(1).ofMaxSize(6).uniqueElements(Paint::name),
            surfaces.optional())
        .as(Shelf::new);
  }

  private static Arbitrary<Paint> paints() {
    Arbitrary<String> names =
        text().ofMinLength(1).filter(n -> !n.isBlank()).filter(ShelfRoundTripTest::isPlain);
    Arbitrary<Kind> kinds =
        Combinators.combine(
                Arbitraries.of(Medium.class),
                Arbitraries.of(Finish.class),
                Arbitraries.of(Make.class),
                Arbitraries.of(Effect.class).optional())
            .as(Kind::new);
    return Combinators.combine(
            names,
            kinds,
            swatches().optional(),
            hidings().optional(),
            between(0.001, 1),
            between(1e-9, 50).optional(),
            text())
        .as(
            (name, kind, masstone, hiding, drop, error, notes) ->
                new Paint(
                    name,
                    kind.medium,
                    kind.finish,
                    kind.make,
                    masstone,
                    hiding,
                    drop,
                    error.map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                    kind.effect,
                    notes));
  }

  private record Kind(Medium medium, Finish finish, Make make, Optional<Effect> effect) {}

  private static Arbitrary<Swatch> swatches() {
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

  private static Arbitrary<Hiding> hidings() {
    return Arbitraries.oneOf(
        between(1e-6, 100).map(Hiding.Coats::new),
        between(1e-6, 1).map(Hiding.ContrastRatio::new),
        between(1e-4, 100).map(Hiding.Scattering::new),
        Arbitraries.of(Hiding.Word.class).map(word -> word));
  }

  private static Arbitrary<Double> between(double lowest, double highest) {
    return Arbitraries.doubles().between(lowest, highest).ofScale(17);
  }

  /** Any characters but half ones. */
  private static StringArbitrary text() {
    return Arbitraries.strings()
        .withCharRange('\u0000', '\uD7FF')
        .withCharRange('\uE000', '\uFFFF')
        .ofMaxLength(12);
  }

  private static boolean isPlain(String name) {
    return name.chars().noneMatch(Character::isISOControl);
  }
}
