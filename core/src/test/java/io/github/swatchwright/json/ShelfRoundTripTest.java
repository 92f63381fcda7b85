package io.github.swatchwright.json;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.paint.Bottle;
import io.github.swatchwright.paint.Drawdown;
import io.github.swatchwright.paint.Effect;
import io.github.swatchwright.paint.Finish;
import io.github.swatchwright.paint.Hiding;
import io.github.swatchwright.paint.Make;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.paint.Use;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

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
        Combinators.combine(ArbitraryValues.between(0, 0.9), ArbitraryValues.between(0, 0.9))
            .as(Saunderson::new);
    return Combinators.combine(
            ArbitraryValues.text(),
            paints().list().ofMinSize(1).ofMaxSize(6).uniqueElements(Paint::name),
            surfaces.optional())
        .as(Shelf::new);
  }

  private static Arbitrary<Paint> paints() {
    Arbitrary<String> names = ArbitraryValues.names();
    Arbitrary<Kind> kinds =
        Combinators.combine(
                Arbitraries.of(Medium.class),
                Arbitraries.of(Finish.class),
                Arbitraries.of(Make.class),
                Arbitraries.of(Effect.class).optional(),
                Arbitraries.of(Use.class),
                Arbitraries.of(true, false))
            .as(Kind::new);
    return Combinators.combine(
            names,
            kinds,
            ArbitraryValues.swatches().optional(),
            hidings().optional(),
            ArbitraryValues.between(0.001, 1),
            ArbitraryValues.between(1e-9, 50).optional(),
            ArbitraryValues.text(),
            drawdowns().optional())
        .as(
            (name, kind, masstone, hiding, drop, error, notes, drawdown) ->
                new Paint(
                    name,
                    kind.medium,
                    kind.finish,
                    kind.make,
                    masstone,
                    hiding,
                    drawdown,
                    drop,
                    error.map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                    kind.effect,
                    notes,
                    Optional.empty(),
                    Bottle.UNSTATED,
                    kind.use,
                    kind.thinned));
  }

  private static Arbitrary<Drawdown> drawdowns() {
    return Combinators.combine(
            ArbitraryValues.between(1e-6, 100).optional(), half(0, 40), half(60, 100))
        .as(
            (coats, black, white) ->
                new Drawdown(
                    coats.map(OptionalDouble::of).orElse(OptionalDouble.empty()), black, white));
  }

  private static Arbitrary<Drawdown.Half> half(double darkest, double lightest) {
    return Combinators.combine(
            ArbitraryValues.between(darkest, lightest)
                .map(lightness -> new Swatch.OfLab(Lab.ofD65(lightness, 0.5, -1))),
            ArbitraryValues.swatches())
        .as(Drawdown.Half::new);
  }

  private record Kind(
      Medium medium, Finish finish, Make make, Optional<Effect> effect, Use use, boolean thinned) {}

  private static Arbitrary<Hiding> hidings() {
    return Arbitraries.oneOf(
        ArbitraryValues.between(1e-6, 100).map(Hiding.Coats::new),
        ArbitraryValues.between(1e-6, 1).map(Hiding.ContrastRatio::new),
        ArbitraryValues.between(1e-4, 100).map(Hiding.Scattering::new),
        Arbitraries.of(Hiding.Word.class).map(word -> word));
  }
}
