package io.github.swatchwright.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.optics.Viewing;
import io.github.swatchwright.paint.Make;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.Bands;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Unknowns that were found under one surface, looked at through another. */
class OpticsStateTest {
  @Test
  void aMasstoneLooksTheSameThroughAnotherSurface() {
    Saunderson first = new Saunderson(0.04, 0.4);
    Saunderson other = new Saunderson(0.01, 0.5);
    double[] state = new double[OpticsState.SIZE];
    for (int band = 0; band < Bands.COUNT; band++) {
      state[band] = -4 + 0.2 * band;
    }
    double[] before = OpticsState.masstone(state);
    OpticsState.seeThrough(state, first, other);
    double[] after = OpticsState.masstone(state);
    for (int band = 0; band < Bands.COUNT; band++) {
      assertThat(other.seen(after[band])).isCloseTo(first.seen(before[band]), within(1e-9));
    }
  }

  @Test
  void aPaintThatHasLearnedKeepsItsColourWhenADarkerOneLowersTheSurface() {
    Paint white = paint("white", 96, 0, 2).withMake(Make.READY_MIXED);
    Paint blue = paint("blue", 30, 5, -30);
    PaintedPatch card =
        new PaintedPatch(
            Map.of("white", 5.0, "blue", 1.0),
            0.05,
            new Swatch.OfLab(Lab.ofD65(66, -8, -28)),
            0.5,
            Optional.empty(),
            OptionalDouble.empty());
    Shelf learned =
        ShelfFit.of(ShelfOptics.estimate(Shelf.of("two", List.of(white, blue))), List.of(card))
            .shelf();
    List<Paint> more = new ArrayList<>(learned.paints());
    more.add(paint("night", 4, 0, 0));
    ShelfOptics darker = ShelfOptics.estimate(new Shelf("three", more, learned.surface()));
    assertThat(darker.surface().k1()).isLessThan(learned.surface().orElseThrow().k1());
    // Rounding to floats in the stored fit, and reflectances held 1e-4 above black: far below this.
    assertThat(Ciede2000.deltaE(seen(darker, "blue"), seen(ShelfOptics.estimate(learned), "blue")))
        .isLessThan(0.05);
  }

  private static Lab seen(ShelfOptics optics, String paint) {
    return new Viewing(TristimulusWeights.D65, optics.surface())
        .lab(optics.of(paint).constants().opaque());
  }

  private static Paint paint(String name, double l, double a, double b) {
    return Paint.of(name, Medium.ACRYLIC, new Swatch.OfLab(Lab.ofD65(l, a, b)));
  }
}
