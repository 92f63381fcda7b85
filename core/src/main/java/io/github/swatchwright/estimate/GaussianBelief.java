package io.github.swatchwright.estimate;

import java.util.Arrays;

/**
 * What is believed about a vector of unknowns: a Gaussian with mean and covariance, and how
 * evidence changes it.
 *
 * <p>With the evidence y = h(v) + error of covariance Σ, and J = ∂h/∂v, the most probable v is
 * found by {@link DampedSearch}, whose target here is v = m + C·Jᵀ(J·C·Jᵀ + Σ)⁻¹(y − h + J(v − m)).
 * Solves have as many rows as the evidence, however many unknowns there are.
 */
final class GaussianBelief {
  private static final DampedSearch SEARCH = new DampedSearch(60, 1e-11);

  private final double[] mean;
  private final Covariance covariance;

  private GaussianBelief(double[] mean, Covariance covariance) {
    this.mean = mean;
    this.covariance = covariance;
  }

  /** A belief with a copy of the mean. */
  static GaussianBelief of(double[] mean, Covariance covariance) {
    return new GaussianBelief(mean.clone(), covariance);
  }

  /** A belief with copies of the mean and the covariance, rows first. */
  static GaussianBelief of(double[] mean, double[][] covariance) {
    double[][] copy = new double[covariance.length][];
    for (int i = 0; i < copy.length; i++) {
      copy[i] = covariance[i].clone();
    }
    return of(mean, Covariance.of(copy, 1));
  }

  /** The number of unknowns. */
  int size() {
    return mean.length;
  }

  double[] mean() {
    return mean.clone();
  }

  /** C·g: how the unknowns vary with a value that depends on them by the gradient g. */
  double[] spreadAlong(double[] gradient) {
    return covariance.times(gradient);
  }

  /** The same covariance about another mean. */
  GaussianBelief about(double[] newMean) {
    return of(newMean, covariance);
  }

  /** The same mean with errors a number of times as wide. */
  GaussianBelief widened(double times) {
    return of(mean, covariance.asWide(times));
  }

  /** J·C·Jᵀ: covariance of values that depend on the unknowns by the Jacobian. */
  double[][] covarianceOf(double[][] jacobian) {
    double[][] values = new double[jacobian.length][jacobian.length];
    for (int i = 0; i < jacobian.length; i++) {
      double[] spread = spreadAlong(jacobian[i]);
      for (int j = 0; j <= i; j++) {
        values[i][j] = LowerTriangle.dot(spread, jacobian[j]);
        values[j][i] = values[i][j];
      }
    }
    return values;
  }

  /** Two beliefs about different unknowns, side by side, without any tie between them. */
  static GaussianBelief independent(GaussianBelief first, GaussianBelief second) {
    double[] mean = Arrays.copyOf(first.mean, first.size() + second.size());
    System.arraycopy(second.mean, 0, mean, first.size(), second.size());
    return new GaussianBelief(mean, Covariance.independent(first.covariance, second.covariance));
  }

  /** What is believed of the first unknowns alone. */
  GaussianBelief first(int count) {
    return new GaussianBelief(Arrays.copyOf(mean, count), covariance.first(count));
  }

  /** The belief after the evidence; its covariance is the linearised posterior's. */
  GaussianBelief after(Evidence evidence) {
    Update update = new Update(evidence);
    double[] state = update.state(update.search().d());
    return new GaussianBelief(state, covariance.minus(update.linearised(state).explained()));
  }

  /**
   * The belief after a statement that is met exactly: evidence whose error widens what is believed
   * but doesn't draw the mean to this belief's.
   *
   * @param evidence the statement with its error
   * @param met unknowns under which the evidence predicts what was stated
   */
  GaussianBelief stated(Evidence evidence, double[] met) {
    Update update = new Update(evidence);
    return of(met, covariance.minus(update.linearised(met).explained()));
  }

  /**
   * ln of how probable the evidence was, by Laplace's approximation, but for a constant of the
   * evidence's own errors: −½(objective + ln det(J·C·Jᵀ + Σ) − ln det Σ).
   */
  double logEvidence(Evidence evidence) {
    Update update = new Update(evidence);
    DampedSearch.Found found = update.search();
    double spread = update.linearised(update.state(found.d())).factor.logDeterminant();
    return -0.5 * (found.objective() + spread - update.noiseFactor.logDeterminant());
  }

  /** One piece of evidence against this belief. */
  private final class Update implements DampedSearch.Problem {
    private final Evidence evidence;
    private final double[][] noise;
    private final LowerTriangle noiseFactor;

    private Update(Evidence evidence) {
      this.evidence = evidence;
      noise = evidence.errorCovariance();
      noiseFactor = LowerTriangle.factor(lower(noise));
    }

    private DampedSearch.Found search() {
      return SEARCH.from(new double[size()], this);
    }

    private double[] state(double[] d) {
      double[] state = covariance.times(d);
      for (int i = 0; i < state.length; i++) {
        state[i] += mean[i];
      }
      return state;
    }

    private double[] residual(double[] state) {
      return ShelfFit.minus(evidence.observed(), evidence.predict(state));
    }

    @Override
    public double objective(double[] d) {
      double[] state = state(d);
      double[] residual = noiseFactor.forward(residual(state));
      return LowerTriangle.dot(residual, residual)
          + LowerTriangle.dot(d, ShelfFit.minus(state, mean));
    }

    /** Jᵀ(J·C·Jᵀ + Σ)⁻¹(y − h + J(v − m)). */
    @Override
    public double[] target(double[] d) {
      double[] state = state(d);
      Linear linear = linearised(state);
      double[] innovation = residual(state);
      double[] shift = ShelfFit.minus(state, mean);
      for (int row = 0; row < innovation.length; row++) {
        innovation[row] += LowerTriangle.dot(linear.jacobian[row], shift);
      }
      double[] weights = linear.factor.solve(innovation);
      double[] target = new double[size()];
      for (int row = 0; row < weights.length; row++) {
        for (int i = 0; i < target.length; i++) {
          target[i] += weights[row] * linear.jacobian[row][i];
        }
      }
      return target;
    }

    private Linear linearised(double[] state) {
      return new Linear(evidence.jacobian(state), noise);
    }
  }

  /** The evidence linearised at one state. */
  private final class Linear {
    private final double[][] jacobian;
    private final double[][] spread;

    /** L with L·Lᵀ = J·C·Jᵀ + Σ. */
    private final LowerTriangle factor;

    private Linear(double[][] jacobian, double[][] noise) {
      this.jacobian = jacobian;
      spread = new double[jacobian.length][];
      double[][] bracket = lower(noise);
      for (int row = 0; row < jacobian.length; row++) {
        spread[row] = spreadAlong(jacobian[row]);
        for (int column = 0; column <= row; column++) {
          bracket[row][column] += LowerTriangle.dot(spread[row], jacobian[column]);
        }
      }
      factor = LowerTriangle.factor(bracket);
    }

    /**
     * The rows W = L⁻¹·J·C: WᵀW = C·Jᵀ(J·C·Jᵀ + Σ)⁻¹J·C is what the evidence takes off the
     * covariance.
     */
    private double[][] explained() {
      return factor.forwardRows(spread);
    }
  }

  private static double[][] lower(double[][] symmetric) {
    double[][] lower = new double[symmetric.length][];
    for (int i = 0; i < lower.length; i++) {
      lower[i] = Arrays.copyOf(symmetric[i], i + 1);
    }
    return lower;
  }
}
