package io.github.swatchwright.estimate;

import io.github.swatchwright.paint.Make;
import io.github.swatchwright.spectrum.Bands;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.special.Erf;

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

  /** The share that intervals are to hold, and how many sd of a normal distribution that takes. */
  private static final double MOST = 0.8;

  private static final double SDS = 1.2816;

  private final List<Kind> kinds = new ArrayList<>();
  private final GaussianBelief belief;
  private final GaussianBelief likely;
  private final boolean isBounded;

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
    double widestShape = 0;
    for (Kind kind : kinds) {
      kind.weight /= sum;
      mean += kind.weight * kind.level.mean();
      shapeVariance += kind.weight * kind.expected.shapeSd() * kind.expected.shapeSd();
      widestShape = Math.max(widestShape, kind.expected.shapeSd());
    }
    boolean nothingStated = make == Make.UNSTATED && stated.isEmpty();
    Covariance covariance =
        OpticsPrior.shape(nothingStated ? widestShape : Math.sqrt(shapeVariance));
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
    likely = stated.isPresent() ? belief : likely(mean);
    isBounded = stated.filter(HidingStatement::isBounded).isPresent();
  }

  /** The belief where nothing is stated of hiding, with the width of most of the mixture. */
  private GaussianBelief likely(double mean) {
    double shape = 0;
    for (Kind kind : kinds) {
      shape += kind.weight * kind.expected.shapeSd();
    }
    double sd = halfWidth(mean) / SDS;
    return GaussianBelief.of(
        OpticsPrior.flat(mean), OpticsPrior.shape(shape).plus(OpticsPrior.flat(sd)));
  }

  /** How far about the mean four fifths of the mixture of levels reach, by halving. */
  private double halfWidth(double mean) {
    double below = 0;
    double above = 20;
    for (int halving = 0; halving < 50; halving++) {
      double middle = (below + above) / 2;
      double within = 0;
      for (Kind kind : kinds) {
        double off = mean - kind.level.mean();
        double sd = Math.sqrt(kind.level.variance());
        within += kind.weight * (normal((off + middle) / sd) - normal((off - middle) / sd));
      }
      if (within < MOST) {
        below = middle;
      } else {
        above = middle;
      }
    }
    return above;
  }

  private static double normal(double sds) {
    return 0.5 * Erf.erfc(-sds / Math.sqrt(2));
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

  /**
   * The belief that intervals follow from. A mixture's variance is set by its rarer part, which
   * hardly matters to what holds four times out of five; so where only the make says what to
   * expect, this is the normal distribution that four fifths of the mixture lie as near to.
   */
  GaussianBelief likely() {
    return likely;
  }

  /** Whether what is stated of hiding leaves the strength open on neither side. */
  boolean isBounded() {
    return isBounded;
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
