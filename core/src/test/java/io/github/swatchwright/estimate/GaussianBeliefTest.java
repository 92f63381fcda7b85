package io.github.swatchwright.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class GaussianBeliefTest {

  /**
   * One linear observation, as a test's own evidence.
   *
   * @param value what was measured
   * @param variance of its error
   */
  private record Sum(double value, double variance) implements Evidence {
    @Override
    public double[] observed() {
      return new double[] {value};
    }

    @Override
    public double[] predict(double[] state) {
      return new double[] {state[0] + 2 * state[1]};
    }

    @Override
    public double[][] jacobian(double[] state) {
      return new double[][] {{1, 2}};
    }

    @Override
    public double[][] errorCovariance() {
      return new double[][] {{variance}};
    }
  }

  /** e^x was measured: bends so strongly that undamped steps from afar overshoot. */
  private record Exponential(double value) implements Evidence {
    @Override
    public double[] observed() {
      return new double[] {value};
    }

    @Override
    public double[] predict(double[] state) {
      return new double[] {Math.exp(state[0])};
    }

    @Override
    public double[][] jacobian(double[] state) {
      return new double[][] {{Math.exp(state[0])}};
    }

    @Override
    public double[][] errorCovariance() {
      return new double[][] {{0.01}};
    }
  }

  @Test
  void linearEvidenceGivesTheTextbookPosterior() {
    GaussianBelief prior = GaussianBelief.of(new double[] {1, 1}, new double[][] {{4, 1}, {1, 2}});
    GaussianBelief posterior = prior.after(new Sum(10, 1));
    // By hand: JC = (6, 5), JCJᵀ + Σ = 17, gain = (6, 5)/17, innovation 7, C − gain·JC.
    assertThat(posterior.mean())
        .containsExactly(new double[] {1 + 42.0 / 17, 1 + 35.0 / 17}, within(1e-12));
    double[][] identity = {{1, 0}, {0, 1}};
    double[][] covariance = posterior.covarianceOf(identity);
    assertThat(covariance[0])
        .containsExactly(new double[] {4 - 36.0 / 17, 1 - 30.0 / 17}, within(1e-12));
    assertThat(covariance[1])
        .containsExactly(new double[] {1 - 30.0 / 17, 2 - 25.0 / 17}, within(1e-12));
  }

  @Test
  void theEvidenceOfALinearStatementIsTheDensityOfItsInnovation() {
    GaussianBelief prior = GaussianBelief.of(new double[] {1, 1}, new double[][] {{4, 1}, {1, 2}});
    for (double variance : new double[] {0.5, 1, 3}) {
      // 10 was measured where 3 was expected, with a variance of JCJᵀ = 16 and its own error.
      double spread = 16 + variance;
      assertThat(prior.logEvidence(new Sum(10, variance)))
          .isCloseTo(-0.5 * (49 / spread + Math.log(spread / variance)), within(1e-12));
    }
  }

  @Test
  void orderOfLinearEvidenceDoesNotMatter() {
    GaussianBelief prior = GaussianBelief.of(new double[] {1, 1}, new double[][] {{4, 1}, {1, 2}});
    double[] oneWay = prior.after(new Sum(10, 1)).after(new Sum(8, 0.5)).mean();
    double[] otherWay = prior.after(new Sum(8, 0.5)).after(new Sum(10, 1)).mean();
    assertThat(oneWay).containsExactly(otherWay, within(1e-12));
  }

  @Test
  void bentEvidenceReachesTheMaximumOfThePosterior() {
    GaussianBelief prior = GaussianBelief.of(new double[] {-6}, new double[][] {{9}});
    double found = prior.after(new Exponential(20)).mean()[0];
    // The stationary point of (x + 6)²/9 + (e^x − 20)²/0.01, checked by its own derivative.
    double derivative = 2 * (found + 6) / 9 + 2 * (Math.exp(found) - 20) * Math.exp(found) / 0.01;
    double curvature = 2 * Math.exp(2 * found) / 0.01;
    assertThat(derivative / curvature).isCloseTo(0, within(1e-6));
    assertThat(found).isCloseTo(Math.log(20), within(0.01));
  }
}
