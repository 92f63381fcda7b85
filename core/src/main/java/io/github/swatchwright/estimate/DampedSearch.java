package io.github.swatchwright.estimate;

/**
 * Finds the most probable unknowns of a Gaussian belief with mean m and covariance C, given
 * evidence that depends on them by a curve: damped Gauss–Newton steps.
 *
 * <p>Unknowns are searched as v = m + C·d. Then (v−m)ᵀC⁻¹(v−m) = dᵀ(v−m), so that C is never
 * inverted, and directions that C leaves no room for are never entered. Each step goes to the most
 * probable d of the evidence made linear at the present v, or only half, a quarter … of the way,
 * until the objective no longer rises. One class serves a single paint and a whole shelf; the
 * problem decides how d is laid out.
 *
 * <p>Steps end when they gain less than a share of the objective, when no part of a step helps, or
 * at the largest number of steps. An objective that isn't a number counts as too far: the step is
 * halved. Matrices that rounding has taken to the edge of being positive definite are dealt with by
 * {@link LowerTriangle#factor}.
 */
final class DampedSearch {
  private static final int MOST_HALVINGS = 30;

  private final int mostSteps;
  private final double settled;

  /** What is searched. */
  interface Problem {

    /** The d that would be most probable if the evidence were linear, with its slopes at this d. */
    double[] target(double[] d);

    /** Twice the negative log posterior; errors as they were at the last {@link #target}. */
    double objective(double[] d);
  }

  /** Where a search has ended. */
  static final class Found {
    private final double[] d;
    private final double objective;

    private Found(double[] d, double objective) {
      this.d = d;
      this.objective = objective;
    }

    /** The unknowns, as v = m + C·d. */
    double[] d() {
      return d;
    }

    /** Twice the negative log posterior there. */
    double objective() {
      return objective;
    }
  }

  /**
   * A search.
   *
   * @param mostSteps steps after which it ends in any case
   * @param settled it ends when a step gains less than this share of 1 + objective
   */
  DampedSearch(int mostSteps, double settled) {
    this.mostSteps = mostSteps;
    this.settled = settled;
  }

  /** Searches from a start; 0 is the mean. */
  Found from(double[] start, Problem problem) {
    double[] d = start;
    double objective = Double.NaN;
    for (int step = 0; step < mostSteps; step++) {
      double[] target = problem.target(d);
      objective = finite(problem.objective(d));
      Found better = better(d, target, objective, problem);
      double gain = objective - better.objective;
      d = better.d;
      objective = better.objective;
      if (!(gain > settled * (1 + objective))) {
        break;
      }
    }
    return new Found(d, objective);
  }

  private static Found better(double[] d, double[] target, double objective, Problem problem) {
    double share = 1;
    for (int halving = 0; halving < MOST_HALVINGS; halving++) {
      double[] trial = new double[d.length];
      for (int i = 0; i < trial.length; i++) {
        trial[i] = d[i] + share * (target[i] - d[i]);
      }
      double reached = finite(problem.objective(trial));
      if (reached <= objective) {
        return new Found(trial, reached);
      }
      share /= 2;
    }
    return new Found(d, objective);
  }

  private static double finite(double objective) {
    return Double.isNaN(objective) ? Double.POSITIVE_INFINITY : objective;
  }
}
