package io.github.swatchwright.paint;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
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
  private final RealMatrix covariance;

  private GaussianBelief(RealVector mean, RealMatrix covariance) {
    this.mean = mean;
    this.covariance = covariance;
  }

  /** A belief with copies of the mean and the covariance, rows first. */
  static GaussianBelief of(double[] mean, double[][] covariance) {
    return new GaussianBelief(
        new ArrayRealVector(mean), new Array2DRowRealMatrix(covariance, true));
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
    RealMatrix j = new Array2DRowRealMatrix(jacobian, false);
    return symmetric(j.multiply(covariance).multiply(j.transpose())).getData();
  }

  /** The belief after the evidence; its covariance is the linearised posterior's. */
  GaussianBelief after(Evidence evidence) {
    RealMatrix noise = new Array2DRowRealMatrix(evidence.errorCovariance(), false);
    RealVector observed = new ArrayRealVector(evidence.observed(), false);
    RealVector state = mean;
    RealVector dual = new ArrayRealVector(mean.getDimension());
    double objective = objective(evidence, observed, noise, state, dual);
    for (int step = 0; step < MOST_STEPS; step++) {
      Linear linear = new Linear(evidence, state, noise);
      RealVector innovation =
          observed.subtract(linear.prediction).add(linear.jacobian.operate(state.subtract(mean)));
      RealVector wantedDual = linear.jacobian.preMultiply(linear.solve(innovation));
      double share = 1;
      double reached = Double.POSITIVE_INFINITY;
      RealVector trialDual = dual;
      RealVector trial = state;
      for (int halving = 0; halving < MOST_HALVINGS; halving++) {
        trialDual = dual.mapMultiply(1 - share).add(wantedDual.mapMultiply(share));
        trial = mean.add(covariance.operate(trialDual));
        reached = objective(evidence, observed, noise, trial, trialDual);
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
    Linear linear = new Linear(evidence, state, noise);
    return new GaussianBelief(state, covariance.subtract(linear.explained()));
  }

  /** Twice the negative log posterior: with v − m = C·dual, (v−m)ᵀC⁻¹(v−m) = dualᵀ·C·dual. */
  private double objective(
      Evidence evidence, RealVector observed, RealMatrix noise, RealVector state, RealVector dual) {
    RealVector residual = observed.subtract(new ArrayRealVector(evidence.predict(state.toArray())));
    RealVector weighted = new CholeskyDecomposition(noise).getSolver().solve(residual);
    double value = residual.dotProduct(weighted) + dual.dotProduct(state.subtract(mean));
    return Double.isNaN(value) ? Double.POSITIVE_INFINITY : value;
  }

  /** The evidence linearised at one state. */
  private final class Linear {
    private final RealVector prediction;
    private final RealMatrix jacobian;
    private final RealMatrix covarianceByJacobian;
    private final CholeskyDecomposition innovationCovariance;

    private Linear(Evidence evidence, RealVector state, RealMatrix noise) {
      double[] at = state.toArray();
      prediction = new ArrayRealVector(evidence.predict(at), false);
      jacobian = new Array2DRowRealMatrix(evidence.jacobian(at), false);
      covarianceByJacobian = covariance.multiply(jacobian.transpose());
      RealMatrix spread = jacobian.multiply(covarianceByJacobian).add(noise);
      innovationCovariance = new CholeskyDecomposition(symmetric(spread));
    }

    private RealVector solve(RealVector innovation) {
      return innovationCovariance.getSolver().solve(innovation);
    }

    /** C·Jᵀ(J·C·Jᵀ + Σ)⁻¹J·C: what the evidence takes off the covariance. */
    private RealMatrix explained() {
      RealMatrix solved = innovationCovariance.getSolver().solve(covarianceByJacobian.transpose());
      return symmetric(covarianceByJacobian.multiply(solved));
    }
  }

  private static RealMatrix symmetric(RealMatrix matrix) {
    return matrix.add(matrix.transpose()).scalarMultiply(0.5);
  }
}
