package io.github.swatchwright.estimate;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.paint.Finish;
import io.github.swatchwright.paint.Make;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Use;
import io.github.swatchwright.spectrum.ReflectanceRecovery;
import io.github.swatchwright.spectrum.SurfaceMap;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** What is hard to believe in a paint's data. The paint is used all the same. */
final class Doubts {
  /**
   * A figure for hiding is doubted when it is this many sd away from what is usual for such paint.
   */
  private static final double DOUBTED_SD = 3;

  /** A stated make is doubted when the other one is more probable than this. */
  private static final double SURE_OF_OTHER_MAKE = 0.9;

  /** A matt surface scatters more white light than a colour as dark as this (common practice). */
  private static final double DARKEST_MATT = 10;

  /** From this error on, a swatch says little (ΔE00 above it is plainly another colour). */
  private static final double LARGE_ERROR = 5;

  /** Below this lightness, paints of one pigment differ most in strength (common practice). */
  private static final double DARK = 40;

  private static final ReflectanceRecovery RECOVERY =
      new ReflectanceRecovery(TristimulusWeights.D65, SurfaceMap.NONE);

  private Doubts() {}

  /**
   * Looks at a paint that can be computed with.
   *
   * @param optics what was estimated of it
   * @param surface the surface that it was estimated under
   * @param statedSurface the surface that its shelf states
   */
  static List<ShelfProblem> of(
      PaintOptics optics, Saunderson surface, Optional<Saunderson> statedSurface) {
    Paint paint = optics.paint();
    List<String> doubts = new ArrayList<>();
    paint
        .masstone()
        .ifPresent(
            masstone -> {
              Lab lab = masstone.lab();
              if (!RECOVERY.recover(lab).attainable()) {
                doubts.add(
                    "has a colour that no surface can have, so it was read or typed wrongly");
              }
              statedSurface
                  .filter(stated -> ShelfSurface.darkestChannel(masstone) < stated.k1())
                  .ifPresent(
                      stated ->
                          doubts.add(
                              String.format(
                                  Locale.ROOT,
                                  "is darker than the surface that the shelf states, k1 = %s: the"
                                      + " whole shelf is computed with k1 = %.3g instead",
                                  stated.k1(),
                                  surface.k1())));
              if (paint.finish() == Finish.MATT && lab.l() < DARKEST_MATT) {
                doubts.add("is darker than matt paint gets: was its shine left out?");
              }
              if (isStrengthUnknown(paint, lab)) {
                doubts.add("is dark and has no figure for hiding, so its strength is a guess");
              }
              hiding(optics).ifPresent(doubts::add);
            });
    OptionalDouble error = paint.swatchError();
    if (error.isPresent() && error.getAsDouble() > LARGE_ERROR) {
      doubts.add("has a swatch that may be off by " + error.getAsDouble() + ": measure it again");
    }
    return doubts.stream()
        .map(doubt -> ShelfProblem.of(ShelfProblem.Kind.DOUBTFUL, paint.name(), doubt))
        .toList();
  }

  private static boolean isStrengthUnknown(Paint paint, Lab lab) {
    return paint.make() == Make.SINGLE_PIGMENT
        && paint.hiding().isEmpty()
        && paint.optics().isEmpty()
        && lab.l() < DARK;
  }

  /** Whether it is made to hide little. */
  private static boolean isThin(Paint paint) {
    return paint.use() == Use.WASH || paint.use() == Use.FILTER || paint.use() == Use.INK;
  }

  /** Compares what is stated of hiding with what paints of this make and colour usually do. */
  private static Optional<String> hiding(PaintOptics optics) {
    Paint paint = optics.paint();
    if (paint.hiding().isEmpty() || optics.scattering().isEmpty()) {
      return Optional.empty();
    }
    ScatteringBelief scattering = optics.scattering().get();
    Make make = paint.make() == Make.UNSTATED ? scattering.likelierMake() : paint.make();
    Make other = make == Make.READY_MIXED ? Make.SINGLE_PIGMENT : Make.READY_MIXED;
    if (scattering.kind(other).weight() > SURE_OF_OTHER_MAKE
        && Math.abs(scattering.kind(other).surprise()) <= DOUBTED_SD) {
      return Optional.of(
          "is said to be "
              + make.word()
              + " but hides as paints of its colour do that are "
              + other.word()
              + ": check its make");
    }
    double surprise = scattering.kind(make).surprise();
    if (Math.abs(surprise) <= DOUBTED_SD || (surprise < 0 && isThin(paint))) {
      return Optional.empty();
    }
    return Optional.of(
        "is said to hide far "
            + (surprise > 0 ? "better" : "worse")
            + " than paints of its kind and colour: "
            + (surprise > 0 ? "" : "unless it is a wash (\"use\":\"wash\"), ")
            + "check its figure for hiding");
  }
}
