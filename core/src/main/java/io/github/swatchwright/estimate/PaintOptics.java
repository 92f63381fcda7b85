package io.github.swatchwright.estimate;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.optics.HidingPower;
import io.github.swatchwright.optics.OpticalConstants;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.optics.Viewing;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.Bands;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.Arrays;

/**
 * What is known of one paint's K(λ) and S(λ): a Gaussian over 72 unknowns, z = logit of internal
 * masstone reflectance in all bands, then u = ln S in all bands.
 */
public final class PaintOptics {
  private final Paint paint;
  private final GaussianBelief belief;
  private final OpticalConstants constants;

  PaintOptics(Paint paint, GaussianBelief belief) {
    this.paint = paint;
    this.belief = belief;
    this.constants = OpticsState.constants(belief.mean());
  }

  /** Estimates a computable paint from its own evidence, and from test cards when it has a fit. */
  static PaintOptics estimate(Paint paint, Saunderson surface) {
    PaintOptics own =
        paint.masstone().isPresent()
            ? estimate(paint, paint.masstone().get(), surface)
            : new PaintOptics(paint, OpticsPrior.unseen());
    return paint.optics().isPresent()
        ? new PaintOptics(paint, own.belief.about(OpticsState.of(paint.optics().get())))
        : own;
  }

  private static PaintOptics estimate(Paint paint, Swatch masstone, Saunderson surface) {
    Lab colour = masstone.lab();
    GaussianBelief reflectance =
        OpticsPrior.masstone().after(SwatchEvidence.of(paint, masstone, surface));
    OpticsPrior.Scattering expected = OpticsPrior.Scattering.of(paint.make(), colour, reflectance);
    OpticsPrior.Scattering known =
        paint
            .hiding()
            .map(figure -> level(reflectance, surface).after(expected, figure))
            .orElse(expected);
    return new PaintOptics(
        paint, GaussianBelief.independent(reflectance, OpticsPrior.scattering(known)));
  }

  private static ScatteringLevel level(GaussianBelief reflectance, Saunderson surface) {
    double[] unitScatterer = Arrays.copyOf(reflectance.mean(), OpticsState.SIZE);
    return new ScatteringLevel(
        OpticsState.constants(unitScatterer),
        new HidingPower(new Viewing(TristimulusWeights.D65, surface)));
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

  /** The mean of ln S over all bands. */
  double meanLogScattering() {
    double sum = 0;
    for (int band = 0; band < Bands.COUNT; band++) {
      sum += Math.log(constants.s(band));
    }
    return sum / Bands.COUNT;
  }

  GaussianBelief belief() {
    return belief;
  }

  /**
   * The covariance that this paint's error gives to values that depend on its unknowns: J·C·Jᵀ,
   * without what test cards have taught, which {@link ShelfOptics#covarianceOf} knows.
   *
   * @param jacobian a row for each value; columns are the derivatives by z in all bands, then by u
   * @return as many rows and columns as the Jacobian has rows
   */
  public double[][] covarianceOf(double[][] jacobian) {
    return belief.covarianceOf(jacobian);
  }
}
