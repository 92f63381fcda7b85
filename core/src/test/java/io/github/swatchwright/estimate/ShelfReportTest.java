package io.github.swatchwright.estimate;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.paint.Bottle;
import io.github.swatchwright.paint.Hiding;
import io.github.swatchwright.paint.Make;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class ShelfReportTest {
  private static final Paint GREY = paint("Grey", 50, 0, 0);

  private static Paint paint(String name, double l, double a, double b) {
    return Paint.of(name, Medium.ACRYLIC, new Swatch.OfLab(Lab.ofD65(l, a, b)));
  }

  private static List<String> problems(Paint... paints) {
    return ShelfReport.of(
            ShelfOptics.estimate(Shelf.of("bench", List.of(paints))), TristimulusWeights.D65)
        .problems()
        .stream()
        .map(ShelfProblem::text)
        .toList();
  }

  @Test
  void believesOrdinaryPaints() {
    assertThat(
            problems(
                GREY,
                paint("White", 95, 0, 2).withMake(Make.SINGLE_PIGMENT),
                paint("Blue", 30, 5, -35)
                    .withMake(Make.SINGLE_PIGMENT)
                    .withHiding(Hiding.Word.SEMI_TRANSPARENT)))
        .isEmpty();
  }

  // Of two greys, ΔE00 is ΔL over 1 + 0.015(L−50)²/√(20+(L−50)²): 0.9/1.002 and 1.1/1.003.
  @Test
  void namesPaintsThatLookAlike() {
    assertThat(problems(GREY, paint("Grey 2", 50.9, 0, 0)))
        .containsExactly("'Grey 2' looks like 'Grey': ΔE00 0.90");
    assertThat(problems(GREY, paint("Grey 3", 51.1, 0, 0))).isEmpty();
  }

  // No surface is brighter than white, and a light yellow of chroma 150 would have to be.
  @Test
  void doubtsAColourThatNoSurfaceHas() {
    assertThat(problems(paint("Sunny", 90, 0, 150)))
        .containsExactly(
            "'Sunny' has a colour that no surface can have, so it was read or typed wrongly");
  }

  // Y of L* = 15 is 1.9 %, below the 4 % that the surface alone would reflect.
  @Test
  void doubtsAPaintDarkerThanItsSurface() {
    Shelf shelf =
        new Shelf(
            "bench", List.of(paint("Soot", 15, 0, 0)), Optional.of(new Saunderson(0.04, 0.4)));

    assertThat(ShelfReport.of(ShelfOptics.estimate(shelf), TristimulusWeights.D65).problems())
        .extracting(ShelfProblem::text)
        .containsExactly(
            "'Soot' is darker than the surface that the shelf states, k1 = 0.04: the whole shelf is"
                + " computed with k1 = 0.0172 instead");
  }

  @Test
  void doubtsAMattPaintAsDarkAsNone() {
    assertThat(problems(paint("Void", 5, 0, 0)))
        .containsExactly("'Void' is darker than matt paint gets: was its shine left out?");
  }

  @Test
  void doubtsHidingThatIsUnheardOf() {
    Paint yellow = paint("Yellow", 85, 5, 85).withMake(Make.SINGLE_PIGMENT);

    // Light yellows of one pigment need several coats: S about exp(−4.4 + 0.031·85) = 0.17.
    assertThat(problems(yellow.withHiding(new Hiding.Scattering(0.17)))).isEmpty();
    assertThat(problems(yellow.withHiding(new Hiding.Scattering(30))))
        .containsExactly(
            "'Yellow' is said to hide far better than paints of its kind and colour: check its"
                + " figure for hiding");
    assertThat(problems(yellow.withHiding(new Hiding.Scattering(0.001))))
        .containsExactly(
            "'Yellow' is said to hide far worse than paints of its kind and colour: unless it is a"
                + " wash (\"use\":\"wash\"), check its figure for hiding");
  }

  @Test
  void saysWhenAStrengthIsAGuess() {
    Paint blue = paint("Blue", 20, 10, -40).withMake(Make.SINGLE_PIGMENT);

    assertThat(problems(blue))
        .containsExactly("'Blue' is dark and has no figure for hiding, so its strength is a guess");
    assertThat(problems(blue.withHiding(Hiding.Word.SEMI_OPAQUE))).isEmpty();
  }

  @Test
  void doubtsARoughSwatch() {
    assertThat(problems(GREY.withSwatchError(8)))
        .containsExactly("'Grey' has a swatch that may be off by 8.0: measure it again");
    assertThat(problems(GREY.withSwatchError(5))).isEmpty();
    assertThat(GREY.swatchError()).isEqualTo(OptionalDouble.empty());
  }

  @Test
  void aBottleThatRunsShortIsNamed() {
    Paint full = GREY.withBottle(new Bottle(OptionalDouble.of(2), OptionalDouble.empty()));
    Paint low = GREY.withBottle(new Bottle(OptionalDouble.of(1.26), OptionalDouble.empty()));
    assertThat(problems(full)).isEmpty();
    assertThat(problems(low)).containsExactly("'Grey' runs short: 1.3 ml left");
  }
}
