package io.github.swatchwright.estimate;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.optics.HidingPower;
import io.github.swatchwright.optics.OpticalConstants;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.optics.Viewing;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is known of one paint's K(λ) and S(λ): a Gaussian over 72 unknowns, z = logit of internal
 * masstone reflectance in all bands, then u = ln S in all bands.
 */
public final class PaintOptics {
  private final Paint paint;
  private final GaussianBelief belief;
  private final GaussianBelief likely;
  private final OpticalConstants constants;
  private final Optional<ScatteringBelief> scattering;
  private final OptionalDouble strokeCoats;

  /** A paint whose intervals follow from what is believed. */
  private PaintOptics(
      Paint paint,
      GaussianBelief belief,
      Optional<ScatteringBelief> scattering,
      OptionalDouble strokeCoats) {
    this(paint, belief, belief, scattering, strokeCoats);
  }

  private PaintOptics(
      Paint paint,
      GaussianBelief belief,
      GaussianBelief likely,
      Optional<ScatteringBelief> scattering,
      OptionalDouble strokeCoats) {
    this.paint = paint;
    this.belief = belief;
    this.likely = likely;
    this.constants = OpticsState.constants(belief.mean());
    this.scattering = scattering;
    this.strokeCoats = strokeCoats;
  }

  /**
   * Estimates a computable paint from its own evidence, and from test cards when it has a fit.
   *
   * @param surface the surface that the shelf's swatches are seen through
   * @param fittedUnder the surface that a fit took for granted
   * @param recoveries what was recovered for the same shelf
   */
  static PaintOptics estimate(
      Paint paint, Saunderson surface, Saunderson fittedUnder, Recoveries recoveries) {
    PaintOptics own = own(paint, surface, recoveries);
    if (paint.optics().isEmpty()) {
      return own;
    }
    double[] state = OpticsState.of(paint.optics().get());
    if (!surface.equals(fittedUnder)) {
      OpticsState.seeThrough(state, fittedUnder, surface);
    }
    return new PaintOptics(
        paint,
        own.belief.about(state).widened(paint.optics().get().widthScale()),
        own.scattering,
        own.strokeCoats);
  }

  private static PaintOptics own(Paint paint, Saunderson surface, Recoveries recoveries) {
    if (paint.masstone().isEmpty()) {
      return paint
          .drawdown()
          .map(stroke -> DrawdownBelief.alone(paint, stroke, surface))
          .map(drawn -> drawn(paint, drawn, Optional.empty()))
          .orElseGet(
              () ->
                  new PaintOptics(
                      paint, OpticsPrior.unseen(), Optional.empty(), OptionalDouble.empty()));
    }
    Swatch masstone = paint.masstone().get();
    GaussianBelief reflectance =
        OpticsPrior.masstone()
            .stated(
                SwatchEvidence.of(paint, masstone, surface),
                SwatchEvidence.met(masstone, surface, recoveries));
    ScatteringBelief scattering = scattering(paint, masstone.lab(), reflectance, surface);
    GaussianBelief stated = GaussianBelief.independent(reflectance, scattering.belief());
    return paint
        .drawdown()
        .map(stroke -> DrawdownBelief.beside(stated, paint, stroke, surface))
        .map(drawn -> drawn(paint, drawn, Optional.of(scattering)))
        .orElseGet(
            () ->
                new PaintOptics(
                    paint,
                    stated,
                    GaussianBelief.independent(reflectance, scattering.likely()),
                    Optional.of(scattering),
                    OptionalDouble.empty()));
  }

  private static PaintOptics drawn(
      Paint paint, DrawdownBelief drawn, Optional<ScatteringBelief> scattering) {
    return new PaintOptics(paint, drawn.belief(), scattering, OptionalDouble.of(drawn.coats()));
  }

  /** What its make and its stated hiding say of the ln S of a paint of that masstone. */
  static ScatteringBelief scattering(
      Paint paint, Lab masstone, GaussianBelief reflectance, Saunderson surface) {
    ScatteringLevel level =
        new ScatteringLevel(
            reflectance, new HidingPower(new Viewing(TristimulusWeights.D65, surface)));
    return ScatteringBelief.of(
        paint.make(),
        Scattering.ofPigment(masstone, OpticsState.masstone(reflectance.mean())),
        Scattering.ofReadyMixed(masstone, level.unitCoats()),
        paint.hiding().map(level::of));
  }

  /** The paint. */
  public Paint paint() {
    return paint;
  }

  /** K(λ) and S(λ) at the most probable state. */
  public OpticalConstants constants() {
    return constants;
  }

  /** Internal masstone reflectance R at the most probable state, all bands. */
  public double[] masstone() {
    return OpticsState.masstone(belief.mean());
  }

  /** How thick the stroke of its drawdown probably is, in coats; empty for a paint without one. */
  public OptionalDouble strokeCoats() {
    return strokeCoats;
  }

  /** What its make and its hiding say of ln S; empty for a paint without a masstone. */
  Optional<ScatteringBelief> scattering() {
    return scattering;
  }

  /** What evidence is added to. */
  GaussianBelief belief() {
    return belief;
  }

  /** What intervals follow from: the same mean, as wide as is likely. */
  GaussianBelief likely() {
    return likely;
  }
}
