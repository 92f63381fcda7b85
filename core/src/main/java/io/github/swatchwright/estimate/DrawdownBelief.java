package io.github.swatchwright.estimate;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.optics.Viewing;
import io.github.swatchwright.paint.Drawdown;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.spectrum.Bands;
import io.github.swatchwright.spectrum.TristimulusWeights;

/**
 * What is believed of a paint after a stroke of it over black and over white.
 *
 * <p>Like every statement, both colours are met: their common error widens what is believed, and
 * doesn't draw them to what was expected. What one half errs by itself does give way: where the
 * stroke hides to within that error, expectation says how well.
 */
final class DrawdownBelief {
  /** A stroke that nobody measured is so much thicker or thinner than a coat: sd of ln X. */
  private static final double STROKE_ERROR = 0.3;

  /** The same of a stated thickness, as for stated hiding (common practice). */
  private static final double THICKNESS_ERROR = 0.15;

  /** Both colours are met to this sd. */
  private static final double MET = 0.05;

  /** What half of a photo errs by itself, sd: noise and streaks, measured on invented photos. */
  private static final double MOST_OWN = 0.8;

  /** The share of the whole error that a half has by itself, up to that. */
  private static final double OWN_SHARE = 0.5;

  private final GaussianBelief whole;

  private DrawdownBelief(GaussianBelief whole) {
    this.whole = whole;
  }

  /** The belief about the paint's 72 unknowns. */
  GaussianBelief belief() {
    return whole.first(OpticsState.SIZE);
  }

  /** The stroke's most probable thickness in coats. */
  double coats() {
    return Math.exp(whole.mean()[OpticsState.SIZE]);
  }

  /** What is believed of a paint whose masstone isn't stated. */
  static DrawdownBelief alone(Paint paint, Drawdown stroke, Saunderson surface) {
    DrawdownBelief unseen = met(OpticsPrior.unseen(), paint, stroke, surface);
    GaussianBelief reflectance = unseen.whole.first(Bands.COUNT);
    Lab masstone =
        new Viewing(TristimulusWeights.D65, surface).lab(OpticsState.masstone(reflectance.mean()));
    ScatteringBelief scattering = PaintOptics.scattering(paint, masstone, reflectance, surface);
    GaussianBelief expected =
        GaussianBelief.independent(OpticsPrior.unseenMasstone(), scattering.belief());
    return met(expected, paint, stroke, surface);
  }

  private static DrawdownBelief met(
      GaussianBelief expected, Paint paint, Drawdown stroke, Saunderson surface) {
    GaussianBelief prior = withThickness(expected, stroke);
    double own = ownError(paint, stroke);
    DrawdownEvidence exact =
        new DrawdownEvidence(stroke, new DrawdownEvidence.Errors(MET, own, 0), surface);
    return new DrawdownBelief(
        prior.stated(evidence(paint, stroke, surface), prior.after(exact).mean()));
  }

  /** What is believed of a paint whose masstone is stated, too. */
  static DrawdownBelief beside(
      GaussianBelief stated, Paint paint, Drawdown stroke, Saunderson surface) {
    return new DrawdownBelief(
        withThickness(stated, stroke).after(evidence(paint, stroke, surface)));
  }

  private static DrawdownEvidence evidence(Paint paint, Drawdown stroke, Saunderson surface) {
    double common = paint.swatchError().orElse(stroke.usualError());
    return new DrawdownEvidence(
        stroke,
        new DrawdownEvidence.Errors(
            common, ownError(paint, stroke), PaintedPatch.USUAL_MODEL_ERROR),
        surface);
  }

  private static double ownError(Paint paint, Drawdown stroke) {
    return Math.min(MOST_OWN, OWN_SHARE * paint.swatchError().orElse(stroke.usualError()));
  }

  private static GaussianBelief withThickness(GaussianBelief paint, Drawdown stroke) {
    double sd = stroke.coats().isPresent() ? THICKNESS_ERROR : STROKE_ERROR;
    double[] mean = {Math.log(stroke.coats().orElse(1))};
    return GaussianBelief.independent(paint, GaussianBelief.of(mean, new double[][] {{sd * sd}}));
  }
}
