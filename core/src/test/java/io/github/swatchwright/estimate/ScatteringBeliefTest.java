package io.github.swatchwright.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.paint.Make;
import java.util.Optional;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The level of ln S where the make is all that says what to expect. */
class ScatteringBeliefTest {
  private static final Scattering PIGMENT = new Scattering(-3, 1, 0);
  private static final Scattering READY_MIXED = new Scattering(-0.3, 0.25, 0);

  @ParameterizedTest
  @EnumSource(Make.class)
  void intervalsReachAsFarAsFourFifthsOfTheMixture(Make make) {
    ScatteringBelief belief = ScatteringBelief.of(make, PIGMENT, READY_MIXED, Optional.empty());
    double mean = belief.likely().mean()[0];
    assertThat(mean).isEqualTo(belief.belief().mean()[0]);
    double sd = sd(belief.likely());
    // The normal distribution's own quantile, by a library.
    double reach = sd * new NormalDistribution().inverseCumulativeProbability(0.9);
    double within =
        belief.kind(Make.SINGLE_PIGMENT).weight() * share(PIGMENT, mean, reach)
            + belief.kind(Make.READY_MIXED).weight() * share(READY_MIXED, mean, reach);
    // The 1.2816 that the estimate takes for that quantile has five digits.
    assertThat(within).isCloseTo(0.8, within(1e-4));
    if (make == Make.READY_MIXED) {
      assertThat(sd).isLessThan(0.6 * sd(belief.belief()));
    }
  }

  private static double share(Scattering of, double mean, double reach) {
    return new NormalDistribution(of.mean(), of.sd()).probability(mean - reach, mean + reach);
  }

  private static double sd(GaussianBelief belief) {
    double[][] one = {OpticsPrior.flat(1.0 / OpticsPrior.flat(0).length)};
    return Math.sqrt(belief.covarianceOf(one)[0][0]);
  }
}
