package io.github.swatchwright.estimate;

import java.util.Arrays;

/**
 * How a patch differs from what all the others and the statements foretell of it, in units of its
 * own error, with the covariance of that difference (the patch's own error included).
 */
final class LeftOut {
  /** How many cards are wrong (another paint, a slip of the syringe), before any is looked at. */
  private static final double USUALLY_WRONG = 0.1;

  /** Variance of what a wrong card shows, in units of a right one's error. */
  private static final double WRONG_VARIANCE = 36;

  private final double[] difference;
  private final double[][] covariance;

  /**
   * A difference.
   *
   * @param difference in units of the patch's own error
   * @param covariance its covariance, all rows in full
   */
  LeftOut(double[] difference, double[][] covariance) {
    this.difference = difference;
    this.covariance = covariance;
  }

  int size() {
    return difference.length;
  }

  /**
   * The squared Mahalanobis distance: χ² with {@link #size} degrees of freedom for a right card.
   */
  double squaredDistance() {
    double[] whitened = factor(0).forward(difference);
    return LowerTriangle.dot(whitened, whitened);
  }

  /** The probability that the card is wrong, see {@link #logOdds}. */
  double outlierChance() {
    return 1 / (1 + Math.exp(-logOdds()));
  }

  /**
   * ln of the odds that the card is wrong, by a mixture: right cards differ by their own error,
   * wrong ones by {@value #WRONG_VARIANCE} times its variance on top. Where the others foretell
   * little, both say the same and the card stays as trusted as any.
   */
  double logOdds() {
    LowerTriangle right = factor(0);
    LowerTriangle wrong = factor(WRONG_VARIANCE);
    double[] byRight = right.forward(difference);
    double[] byWrong = wrong.forward(difference);
    double logRatio =
        0.5
            * (right.logDeterminant()
                - wrong.logDeterminant()
                + LowerTriangle.dot(byRight, byRight)
                - LowerTriangle.dot(byWrong, byWrong));
    return Math.log(USUALLY_WRONG / (1 - USUALLY_WRONG)) + logRatio;
  }

  private LowerTriangle factor(double more) {
    double[][] lower = new double[covariance.length][];
    for (int i = 0; i < lower.length; i++) {
      lower[i] = Arrays.copyOf(covariance[i], i + 1);
      lower[i][i] += more;
    }
    return LowerTriangle.factor(lower);
  }
}
