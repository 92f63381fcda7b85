package io.github.swatchwright.estimate;

import io.github.swatchwright.paint.Make;
import io.github.swatchwright.spectrum.Bands;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is believed of a paint's ln S: the paint was made in one of two ways, each of which says
 * what to expect, and what is stated of its hiding weighs them against each other.
 *
 * <p>The belief is the normal distribution with the mean and the covariance of the mixture of both,
 * so that it is as wide as their disagreement. A stated make is believed, but not blindly: one in
 * twenty is taken to be wrong. When none is stated, both are as probable.
 */
final class ScatteringBelief {
  private static final double STATED_WRONGLY = 0.05;

  private final List<Kind> kinds = new ArrayList<>();
  private final GaussianBelief belief;

  /** One of the two ways, after what was stated. */
  static final class Kind {
    private final Make make;
    private final Scattering expected;
    private final double surprise;
    private final double logEvidence;
    private final HidingStatement.Level level;

    /** √(1 − V/τ²)·C·g/τ: what the statement takes off the covariance. */
    private final double[] removed;

    private double weight;

    private Kind(Make make, Scattering expected, Optional<HidingStatement> stated) {
      this.make = make;
      this.expected = expected;
      if (stated.isEmpty()) {
        surprise = 0;
        logEvidence = 0;
        level = new HidingStatement.Level(expected.mean(), expected.sd() * expected.sd(), 0);
        removed = new double[Bands.COUNT];
        return;
      }
      double[] spread = OpticsPrior.scattering(expected).spreadAlong(stated.get().weights());
      double variance = LowerTriangle.dot(spread, stated.get().weights());
      surprise = stated.get().surprise(expected.mean(), variance);
      level = stated.get().after(expected.mean(), variance);
      logEvidence = level.logEvidence();
      double share = Math.sqrt(Math.max(0, 1 - level.variance() / variance) / variance);
      removed = scaled(spread, share);
    }

    /** The way of making. */
    Make make() {
      return make;
    }

    /** How probable it is, after what was stated of hiding; both sum to 1. */
    double weight() {
      return weight;
    }

    /** How many sd the stated hiding lies from what this make leads to expect; above 0: better. */
    double surprise() {
      return surprise;
    }
  }

  private ScatteringBelief(
      Make make, Scattering pigment, Scattering readyMixed, Optional<HidingStatement> stated) {
    kinds.add(new Kind(Make.SINGLE_PIGMENT, pigment, stated));
    kinds.add(new Kind(Make.READY_MIXED, readyMixed, stated));
    double most = Math.max(kinds.get(0).logEvidence, kinds.get(1).logEvidence);
    double sum = 0;
    for (Kind kind : kinds) {
      kind.weight = priorWeight(make, kind.make) * Math.exp(kind.logEvidence - most);
      sum += kind.weight;
    }
    double mean = 0;
    double shapeVariance = 0;
    for (Kind kind : kinds) {
      kind.weight /= sum;
      mean += kind.weight * kind.level.mean();
      shapeVariance += kind.weight * kind.expected.shapeSd() * kind.expected.shapeSd();
    }
    Covariance covariance = OpticsPrior.shape(Math.sqrt(shapeVariance));
    for (Kind kind : kinds) {
      double root = Math.sqrt(kind.weight);
      covariance =
          covariance
              .plus(
                  OpticsPrior.flat(root * kind.expected.sd()),
                  OpticsPrior.flat(root * (kind.level.mean() - mean)))
              .minus(scaled(kind.removed, root));
    }
    belief = GaussianBelief.of(OpticsPrior.flat(mean), covariance);
  }

  /**
   * What is believed of a paint.
   *
   * @param make as stated
   * @param pigment what to expect if it is of a single pigment
   * @param readyMixed what to expect if it is ready-mixed
   * @param stated what is stated of its hiding
   */
  static ScatteringBelief of(
      Make make, Scattering pigment, Scattering readyMixed, Optional<HidingStatement> stated) {
    return new ScatteringBelief(make, pigment, readyMixed, stated);
  }

  private static double priorWeight(Make stated, Make make) {
    if (stated == Make.UNSTATED) {
      return 0.5;
    }
    return stated == make ? 1 - STATED_WRONGLY : STATED_WRONGLY;
  }

  private static double[] scaled(double[] row, double factor) {
    double[] scaled = row.clone();
    for (int i = 0; i < scaled.length; i++) {
      scaled[i] *= factor;
    }
    return scaled;
  }

  /** The belief about u in all bands. */
  GaussianBelief belief() {
    return belief;
  }

  /** The make that is more probable after what was stated. */
  Make likelierMake() {
    return kinds.get(0).weight > kinds.get(1).weight ? kinds.get(0).make : kinds.get(1).make;
  }

  /** One way of making after what was stated. */
  Kind kind(Make make) {
    return kinds.get(make == Make.SINGLE_PIGMENT ? 0 : 1);
  }
}
