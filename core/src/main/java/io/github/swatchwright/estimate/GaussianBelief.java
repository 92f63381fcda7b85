package io.github.swatchwright.estimate;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * What is believed about a vector of unknowns: a Gaussian with mean and covariance, and the one
 * update by which every piece of evidence enters.
 *
 * <p>The update is the damped, linearised one: with the evidence y = h(v) + error of covariance Σ,
 * and J = ∂h/∂v, iterate v ← m + C·Jᵀ(J·C·Jᵀ + Σ)⁻¹(y − h(v) + J(v − m)) (the Gauss–Newton step of
 * the maximum a posteriori problem), halving a step until the objective falls. Solves have as many
 * rows as the evidence, however many unknowns there are.
 */
final class GaussianBelief {
  private static final int MOST_STEPS = 60;
  private static final int MOST_HALVINGS = 30;
  private static final double SETTLED = 1e-11;

  private final RealVector mean;
  private final Array2DRowRealMatrix covariance;

  private GaussianBelief(RealVector mean, Array2DRowRealMatrix covariance) {
    this.mean = mean;
    this.covariance = covariance;
  }

  /** A belief with copies of the mean and the covariance, rows first. */
  static GaussianBelief of(double[] mean, double[][] covariance) {
    return new GaussianBelief(
        new ArrayRealVector(mean), new Array2DRowRealMatrix(covariance, true));
  }

  /** The number of unknowns. */
  int size() {
    return mean.getDimension();
  }

  double[] mean() {
    return mean.toArray();
  }

  /** C·g: how the unknowns vary with a value that depends on them by the gradient g. */
  double[] spreadAlong(double[] gradient) {
    return covariance.operate(gradient);
  }

  /** The same covariance about another mean. */
  GaussianBelief about(double[] newMean) {
    return new GaussianBelief(new ArrayRealVector(newMean), covariance);
  }

  /** J·C·Jᵀ: covariance of values that depend on the unknowns by the Jacobian. */
  double[][] covarianceOf(double[][] jacobian) {
    Array2DRowRealMatrix j = new Array2DRowRealMatrix(jacobian, false);
    return symmetric(j.multiply(covariance).multiply(j.transpose())).getData();
  }

  /** Two beliefs about different unknowns, side by side, without any tie between them. */
  static GaussianBelief independent(GaussianBelief first, GaussianBelief second) {
    int size = first.mean.getDimension();
    Array2DRowRealMatrix covariance =
        new Array2DRowRealMatrix(
            size + second.mean.getDimension(), size + second.mean.getDimension());
    covariance.setSubMatrix(first.covariance.getData(), 0, 0);
    covariance.setSubMatrix(second.covariance.getData(), size, size);
    return new GaussianBelief(first.mean.append(second.mean), covariance);
  }

  /** The belief after the evidence; its covariance is the linearised posterior's. */
  GaussianBelief after(Evidence evidence) {
    Update update = new Update(evidence);
    RealVector state = mostProbable(update).state;
    return new GaussianBelief(state, covariance.subtract(update.linearised(state).explained()));
  }

  /**
   * ln of how probable the evidence was, by Laplace's approximation, but for a constant of the
   * evidence's own errors: −½(objective + ln det(J·C·Jᵀ + Σ) − ln det Σ).
   */
  double logEvidence(Evidence evidence) {
    Update update = new Update(evidence);
    Settled settled = mostProbable(update);
    double spread = update.linearised(settled.state).innovationCovariance.getDeterminant();
    double noise =
        new CholeskyDecomposition(new Array2DRowRealMatrix(update.noise, false)).getDeterminant();
    return -0.5 * (settled.objective + Math.log(spread) - Math.log(noise));
  }

  /**
   * Where the steps have ended.
   *
   * @param state the most probable unknowns
   * @param objective twice the negative log posterior there
   */
  private record Settled(RealVector state, double objective) {}

  private Settled mostProbable(Update update) {
    RealVector state = mean;
    RealVector dual = new ArrayRealVector(mean.getDimension());
    double objective = update.objective(state, dual);
    for (int step = 0; step < MOST_STEPS; step++) {
      RealVector wantedDual = update.linearised(state).wantedDual();
      double share = 1;
      double reached = Double.POSITIVE_INFINITY;
      RealVector trialDual = dual;
      RealVector trial = state;
      for (int halving = 0; halving < MOST_HALVINGS; halving++) {
        trialDual = dual.mapMultiply(1 - share).add(wantedDual.mapMultiply(share));
        trial = mean.add(covariance.operate(trialDual));
        reached = update.objective(trial, trialDual);
        if (reached <= objective) {
          break;
        }
        share /= 2;
      }
      if (!(reached <= objective)) {
        break;
      }
      double gain = objective - reached;
      state = trial;
      dual = trialDual;
      objective = reached;
      if (gain <= SETTLED * (1 + objective)) {
        break;
      }
    }
    return new Settled(state, objective);
  }

  /** One piece of evidence against this belief. */
  private final class Update {
    private final Evidence evidence;
    private final RealVector observed;
    private final double[][] noise;
    private final DecompositionSolver noiseSolver;

    private Update(Evidence evidence) {
      this.evidence = evidence;
      this.observed = new ArrayRealVector(evidence.observed(), false);
      this.noise = evidence.errorCovariance();
      this.noiseSolver =
          new CholeskyDecomposition(new Array2DRowRealMatrix(noise, false)).getSolver();
    }

    private RealVector residual(RealVector state) {
      return observed.subtract(new ArrayRealVector(evidence.predict(state.toArray()), false));
    }

    /** Twice the negative log posterior: with v − m = C·dual, (v−m)ᵀC⁻¹(v−m) = dualᵀ·(v−m). */
    private double objective(RealVector state, RealVector dual) {
      RealVector residual = residual(state);
      double value =
          residual.dotProduct(noiseSolver.solve(residual)) + dual.dotProduct(state.subtract(mean));
      return Double.isNaN(value) ? Double.POSITIVE_INFINITY : value;
    }

    private Linear linearised(RealVector state) {
      return new Linear(this, state);
    }
  }

  /** The evidence linearised at one state. */
  private final class Linear {
    private final RealVector innovation;
    private final Array2DRowRealMatrix jacobian;
    private final Array2DRowRealMatrix jacobianByCovariance;
    private final CholeskyDecomposition innovationCovariance;

    private Linear(Update update, RealVector state) {
      jacobian = new Array2DRowRealMatrix(update.evidence.jacobian(state.toArray()), false);
      innovation = update.residual(state).add(jacobian.operate(state.subtract(mean)));
      jacobianByCovariance = jacobian.multiply(covariance);
      innovationCovariance = new CholeskyDecomposition(spread(update.noise));
    }

    /** J·C·Jᵀ + Σ, symmetric to the last digit. */
    private RealMatrix spread(double[][] noise) {
      double[][] j = jacobian.getDataRef();
      double[][] jc = jacobianByCovariance.getDataRef();
      double[][] spread = new double[j.length][j.length];
      for (int row = 0; row < j.length; row++) {
        for (int column = 0; column <= row; column++) {
          spread[row][column] = dot(jc[row], j[column]) + noise[row][column];
          spread[column][row] = spread[row][column];
        }
      }
      return new Array2DRowRealMatrix(spread, false);
    }

    /** Jᵀ(J·C·Jᵀ + Σ)⁻¹(y − h + J(v − m)): C times it is the step from the mean. */
    private RealVector wantedDual() {
      return jacobian.preMultiply(innovationCovariance.getSolver().solve(innovation));
    }

    /**
     * C·Jᵀ(J·C·Jᵀ + Σ)⁻¹J·C, what the evidence takes off the covariance: WᵀW with W = L⁻¹·J·C,
     * where L·Lᵀ is the bracket.
     */
    private Array2DRowRealMatrix explained() {
      double[][] w = new double[jacobianByCovariance.getRowDimension()][];
      double[][] l = innovationCovariance.getL().getData();
      for (int row = 0; row < w.length; row++) {
        w[row] = jacobianByCovariance.getRow(row);
        for (int earlier = 0; earlier < row; earlier++) {
          subtract(w[row], l[row][earlier], w[earlier]);
        }
        for (int i = 0; i < w[row].length; i++) {
          w[row][i] /= l[row][row];
        }
      }
      double[][] explained = new double[w[0].length][w[0].length];
      for (double[] row : w) {
        for (int i = 0; i < row.length; i++) {
          subtract(explained[i], -row[i], row);
        }
      }
      return new Array2DRowRealMatrix(explained, false);
    }
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  private static void subtract(double[] from, double times, double[] row) {
    for (int i = 0; i < from.length; i++) {
      from[i] -= times * row[i];
    }
  }

  private static RealMatrix symmetric(RealMatrix matrix) {
    return matrix.add(matrix.transpose()).scalarMultiply(0.5);
  }
}
