package io.github.swatchwright.paint;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.optics.HidingPower;
import io.github.swatchwright.optics.OpticalConstants;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.optics.Viewing;
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
            : new PaintOptics(paint, OpticsPrior.with(OpticsPrior.Scattering.UNSEEN));
    return paint.optics().isPresent()
        ? new PaintOptics(paint, own.belief.about(paint.optics().get().state()))
        : own;
  }

  private static PaintOptics estimate(Paint paint, Swatch masstone, Saunderson surface) {
    Lab colour = masstone.lab();
    OpticsPrior.Scattering scattering = OpticsPrior.Scattering.of(paint.make(), colour);
    GaussianBelief belief =
        OpticsPrior.with(scattering).after(SwatchEvidence.of(paint, masstone, surface));
    if (paint.hiding().isPresent()) {
      HidingPower hidingPower = new HidingPower(new Viewing(TristimulusWeights.D65, surface));
      ScatteringLevel evidence = new ScatteringLevel(unitScatterer(belief), hidingPower);
      OpticsPrior.Scattering known = evidence.after(scattering, paint.hiding().get());
      belief = OpticsPrior.with(known).after(SwatchEvidence.of(paint, masstone, surface));
    }
    return new PaintOptics(paint, belief);
  }

  private static OpticalConstants unitScatterer(GaussianBelief belief) {
    double[] state = belief.mean();
    Arrays.fill(state, Bands.COUNT, OpticsState.SIZE, 0);
    return OpticsState.constants(state);
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
