package io.github.swatchwright.estimate;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;

/** How far patches lie from what all the others, or the shelf before them, foretell. */
final class Misfits {
  /** Cards that are less likely to be wrong than this aren't looked at twice. */
  private static final double WORTH_A_LOOK = 0.2;

  /** How far ln strength may lie from what is usual, as sd, where hiding isn't stated. */
  private static final double UNKNOWN_STRENGTH = 2;

  /** The same where it is: statements of hiding err, too. */
  private static final double STATED_STRENGTH = 0.5;

  /** How rarely a right card is further off than what is called unexpected. */
  private static final double RARELY = 0.005;

  /** The first belief about widths weighs as much as this many cards that agree as expected. */
  private static final double PRIOR_CARDS = 10;

  /**
   * What χ²/3 of three values exceeds once in a hundred times: one card tells no more of widths.
   */
  private static final double MOST_OF_A_CARD = 3.8;

  private final ShelfOptics prior;
  private final List<PatchModel> models;
  private final double[] weights;
  private final JointSearch found;

  /**
   * Of a fit.
   *
   * @param prior the shelf before
   * @param models the patches
   * @param weights how much each counts, above 0 to 1
   * @param found what the fit has found
   */
  Misfits(ShelfOptics prior, List<PatchModel> models, double[] weights, JointSearch found) {
    this.prior = prior;
    this.models = models;
    this.weights = weights;
    this.found = found;
  }

  /** How little each patch agrees with all the others and the statements, in their order. */
  List<Suspicion> suspicions() {
    List<LeftOut> leftOut = found.linear().leftOut();
    return IntStream.range(0, leftOut.size())
        .parallel()
        .mapToObj(patch -> suspicion(patch, leftOut.get(patch)))
        .toList();
  }

  private Suspicion suspicion(int patch, LeftOut left) {
    if (left.outlierChance() < WORTH_A_LOOK) {
      return new Suspicion(left.logOdds(), left.outlierChance());
    }
    Map<String, Double> sd = new LinkedHashMap<>();
    for (String name : models.get(patch).paints()) {
      sd.put(name, isStrengthStated(name) ? STATED_STRENGTH : UNKNOWN_STRENGTH);
    }
    double byOthers = found.linear().leftOutUnexpectant(patch, sd).outlierChance();
    return new Suspicion(left.logOdds(), Math.min(left.outlierChance(), byOthers));
  }

  /** A hiding that is only "at least" says nothing against a strong paint. */
  private boolean isStrengthStated(String paint) {
    return prior.shelf().paint(paint).whyNotComputable().isEmpty()
        && prior.of(paint).scattering().filter(ScatteringBelief::isBounded).isPresent();
  }

  /**
   * How far a patch lies from what the shelf foretold before any of these patches, as a share of
   * what a right patch exceeds once in two hundred times: above 1 when it is unexpected.
   *
   * @param model a patch
   */
  double surprise(PatchModel model) {
    Map<String, double[]> before = new LinkedHashMap<>();
    found.beliefs().forEach((name, belief) -> before.put(name, belief.mean()));
    PatchModel.Linear at = model.linearise(before);
    Map<String, double[][]> jacobians = new LinkedHashMap<>();
    for (int p = 0; p < model.unknowns().size(); p++) {
      jacobians.put(model.unknowns().get(p), at.jacobians().get(p));
    }
    double[][] spread = found.earlier().covarianceOf(jacobians, found.earlier().factor());
    double[][] lower = new double[spread.length][];
    for (int i = 0; i < lower.length; i++) {
      lower[i] = Arrays.copyOf(spread[i], i + 1);
      for (int j = 0; j <= i; j++) {
        lower[i][j] += at.noise()[i][j];
      }
    }
    double[] pull = LowerTriangle.factor(lower).forward(model.residual(before));
    return LowerTriangle.dot(pull, pull)
        / new ChiSquaredDistribution(pull.length).inverseCumulativeProbability(1 - RARELY);
  }

  /**
   * How wide errors turned out to be, as a share of what was expected: from how far each patch lies
   * from what the others foretell, with a prior worth ten cards.
   */
  double widthScale() {
    double squares = PRIOR_CARDS;
    double cards = PRIOR_CARDS;
    List<LeftOut> leftOut = found.linear().leftOut();
    for (int i = 0; i < weights.length; i++) {
      LeftOut left = leftOut.get(i);
      double square = left.squaredDistance() / left.size();
      squares += Math.min(square, MOST_OF_A_CARD) * weights[i];
      cards += weights[i];
    }
    return Math.sqrt(squares / cards);
  }
}
