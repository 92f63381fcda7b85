package io.github.swatchwright.coat;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.optics.OpticalConstants;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.Bands;
import io.github.swatchwright.spectrum.Reflectance;
import io.github.swatchwright.spectrum.ReflectanceRecovery;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * A base as internal reflectances: either a mix, or fixed, together with the variants that carry
 * its error.
 */
final class Ground {
  private final Optional<Mix> mix;
  private final double[] fixed;
  private final List<double[]> deviations;
  private final Saunderson surface;
  private final double lightening;

  private Ground(
      Optional<Mix> mix,
      double[] fixed,
      List<double[]> deviations,
      Saunderson surface,
      double lightening) {
    this.mix = mix;
    this.fixed = fixed;
    this.deviations = deviations;
    this.surface = surface;
    this.lightening = lightening;
  }

  static Ground of(Base base, Saunderson surface) {
    if (base instanceof Base.OfMix painted) {
      return new Ground(Optional.of(painted.mix()), new double[Bands.COUNT], List.of(), surface, 0);
    }
    Base.OfSwatch colour = (Base.OfSwatch) base;
    return new Ground(
        Optional.empty(),
        internal(colour.swatch(), surface),
        deviations(colour, surface),
        surface,
        0);
  }

  /** A grey that is known exactly, as seen. */
  static Ground grey(double seen, Saunderson surface) {
    double[] internal = new double[Bands.COUNT];
    Arrays.fill(internal, surface.internal(Math.max(seen, surface.k1())));
    return of(internal, surface);
  }

  /** What is known exactly, as internal reflectance. */
  static Ground of(double[] internal, Saunderson surface) {
    return new Ground(Optional.empty(), internal, List.of(), surface, 0);
  }

  /** This base with a share of white light added, 0 to 1. */
  Ground lightened(double share) {
    return new Ground(mix, fixed, deviations, surface, share);
  }

  /** The mix that it is painted with; empty when it is fixed. */
  Optional<Mix> mix() {
    return mix;
  }

  /** Its internal reflectance, with the constants of a mix as they are asked for. */
  double[] internal(Function<Mix, OpticalConstants> constants) {
    double[] internal = mix.map(m -> constants.apply(m).opaque()).orElse(fixed);
    return lightening == 0
        ? internal
        : Arrays.stream(internal)
            .map(r -> surface.internal(ScaleLightening.of(surface.seen(r), lightening)))
            .toArray();
  }

  /** The fixed base with an error of one sd in L*, a* or b*: three variants, none for a mix. */
  List<Ground> deviations() {
    return deviations.stream()
        .map(off -> new Ground(mix, off, List.of(), surface, lightening))
        .toList();
  }

  private static double[] internal(Swatch swatch, Saunderson surface) {
    if (swatch instanceof Swatch.OfReflectance measured) {
      Reflectance seen = measured.reflectance();
      double[] internal = new double[Bands.COUNT];
      Arrays.setAll(internal, i -> surface.internal(Math.max(seen.at(i), surface.k1())));
      return internal;
    }
    return recovered(swatch.lab(), surface);
  }

  private static double[] recovered(Lab lab, Saunderson surface) {
    return new ReflectanceRecovery(TristimulusWeights.D65, surface)
        .recover(lab)
        .internal()
        .toArray();
  }

  private static List<double[]> deviations(Base.OfSwatch colour, Saunderson surface) {
    Lab lab = colour.swatch().lab();
    double sd = colour.error();
    double inwards = lab.l() > 50 ? -sd : sd;
    return Stream.of(
            Lab.ofD65(lab.l() + inwards, lab.a(), lab.b()),
            Lab.ofD65(lab.l(), lab.a() + sd, lab.b()),
            Lab.ofD65(lab.l(), lab.a(), lab.b() + sd))
        .map(off -> recovered(off, surface))
        .toList();
  }
}
