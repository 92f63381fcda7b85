package io.github.swatchwright.estimate;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Turns a patch's values into ones with independent errors of 1, and keeps those that tell
 * something: of 31 measured bands about as many directions as the paints may vary in by more than
 * the error. They are the leading eigenvectors of what isn't known yet, measured in errors.
 */
final class Whitener {
  /** A direction whose variance is below this share of the error's would tell next to nothing. */
  private static final double TELLING = 0.05;

  /** A colour has three values, and all are kept. */
  private static final int FEWEST = 3;

  private final RealMatrix matrix;

  private Whitener(RealMatrix matrix) {
    this.matrix = matrix;
  }

  /** All values of a linearised patch. */
  static Whitener of(PatchModel.Linear patch) {
    int size = patch.noise().length;
    LowerTriangle root = LowerTriangle.factor(patch.noise());
    RealMatrix whitening = new Array2DRowRealMatrix(size, size);
    for (int i = 0; i < size; i++) {
      double[] unit = new double[size];
      unit[i] = 1;
      whitening.setColumn(i, root.forward(unit));
    }
    return new Whitener(whitening);
  }

  /**
   * The telling values of a linearised patch.
   *
   * @param unknowns what it depends on, in the order of its Jacobians
   * @param beliefs what is believed of these before the patch
   */
  static Whitener telling(
      PatchModel.Linear patch, List<String> unknowns, Map<String, GaussianBelief> beliefs) {
    Whitener all = of(patch);
    int size = all.size();
    if (size <= FEWEST) {
      return all;
    }
    EigenDecomposition axes =
        new EigenDecomposition(spread(all, patch.jacobians(), unknowns, beliefs));
    double[] variances = axes.getRealEigenvalues();
    int telling = FEWEST;
    while (telling < size && variances[telling] > TELLING) {
      telling++;
    }
    RealMatrix leading = axes.getVT().getSubMatrix(0, telling - 1, 0, size - 1);
    return new Whitener(leading.multiply(all.matrix));
  }

  private static RealMatrix spread(
      Whitener whitener,
      List<double[][]> jacobians,
      List<String> unknowns,
      Map<String, GaussianBelief> beliefs) {
    RealMatrix spread = new Array2DRowRealMatrix(whitener.size(), whitener.size());
    for (int p = 0; p < unknowns.size(); p++) {
      double[][] slopes = whitener.apply(jacobians.get(p));
      GaussianBelief belief = Objects.requireNonNull(beliefs.get(unknowns.get(p)));
      for (int i = 0; i < slopes.length; i++) {
        double[] along = belief.spreadAlong(slopes[i]);
        for (int j = 0; j < slopes.length; j++) {
          spread.addToEntry(i, j, LowerTriangle.dot(along, slopes[j]));
        }
      }
    }
    return spread.add(spread.transpose()).scalarMultiply(0.5);
  }

  int size() {
    return matrix.getRowDimension();
  }

  double[] apply(double[] values) {
    return matrix.operate(values);
  }

  double[][] apply(double[][] slopes) {
    return apply(slopes, 1);
  }

  /** The same of values that count by the square of {@code root}. */
  double[][] apply(double[][] slopes, double root) {
    double[][] whitened = new double[size()][slopes[0].length];
    for (int row = 0; row < whitened.length; row++) {
      for (int value = 0; value < slopes.length; value++) {
        double factor = root * matrix.getEntry(row, value);
        for (int i = 0; i < whitened[row].length; i++) {
          whitened[row][i] += factor * slopes[value][i];
        }
      }
    }
    return whitened;
  }
}
