package io.github.swatchwright.estimate;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * How some values, such as the colour of a mix, depend on the unknowns of a shelf's paints, so that
 * covariances within and between such values follow: Cov(a, b) = Jₐ·C·J_bᵀ.
 *
 * <p>C is never written out. With C₀ the covariances of single paints and A the rows of evidence, a
 * value carries C₀·Jᵀ for each paint, and L⁻¹·A·C₀·Jᵀ for the rows, where L·Lᵀ = A·C₀·Aᵀ + I.
 * Further evidence only appends to the latter.
 */
public final class Dependence {
  private final Map<String, double[][]> jacobians;
  private final Map<String, double[][]> spreads;
  private final double[][] explained;

  private Dependence(
      Map<String, double[][]> jacobians, Map<String, double[][]> spreads, double[][] explained) {
    this.jacobians = jacobians;
    this.spreads = spreads;
    this.explained = explained;
  }

  /** Values with the stated Jacobians; a row for each value, a column for each unknown. */
  static Dependence of(Map<String, double[][]> jacobians, EvidenceRows rows, LowerTriangle factor) {
    int count = jacobians.values().iterator().next().length;
    Map<String, double[][]> spreads = new LinkedHashMap<>();
    jacobians.forEach(
        (paint, jacobian) ->
            spreads.put(
                paint,
                Arrays.stream(jacobian)
                    .map(rows.belief(paint)::spreadAlong)
                    .toArray(double[][]::new)));
    double[][] explained = new double[count][];
    for (int row = 0; row < count; row++) {
      Map<String, double[]> ofRow = new LinkedHashMap<>();
      int at = row;
      spreads.forEach((paint, spread) -> ofRow.put(paint, spread[at]));
      explained[row] = factor.forward(rows.along(ofRow));
    }
    return new Dependence(jacobians, spreads, explained);
  }

  /** How many values there are. */
  int size() {
    return explained.length;
  }

  /** The covariance matrix of the values. */
  public double[][] covariance() {
    return covarianceWith(this);
  }

  /** Covariances with other values of the same shelf: a row for each of these. */
  public double[][] covarianceWith(Dependence other) {
    double[][] covariance = new double[size()][other.size()];
    spreads.forEach(
        (paint, spread) -> {
          double[][] jacobian = other.jacobians.get(paint);
          if (jacobian != null) {
            for (int i = 0; i < covariance.length; i++) {
              for (int j = 0; j < jacobian.length; j++) {
                covariance[i][j] += LowerTriangle.dot(spread[i], jacobian[j]);
              }
            }
          }
        });
    for (int i = 0; i < covariance.length; i++) {
      for (int j = 0; j < other.size(); j++) {
        covariance[i][j] -= LowerTriangle.dot(explained[i], other.explained[j]);
      }
    }
    return covariance;
  }

  /** The same values when further evidence explains that much more of each. */
  Dependence with(double[][] more) {
    double[][] longer = new double[size()][];
    for (int i = 0; i < longer.length; i++) {
      double[] own = explained[i];
      longer[i] = Arrays.copyOf(own, own.length + more[i].length);
      System.arraycopy(more[i], 0, longer[i], own.length, more[i].length);
    }
    return new Dependence(jacobians, spreads, longer);
  }
}
