package io.github.swatchwright.estimate;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Turns a patch's values into ones with independent errors of 1, and keeps those that tell most:
 * the leading eigenvectors of what is not yet known, measured in errors.
 */
final class Whitener {
  private final RealMatrix matrix;

  private Whitener(RealMatrix matrix) {
    this.matrix = matrix;
  }

  /** At most so many values of a linearised patch. */
  static Whitener of(
      PatchModel.Linear patch,
      List<String> paints,
      Map<String, GaussianBelief> beliefs,
      int mostValues) {
    int size = patch.noise().length;
    LowerTriangle root = LowerTriangle.factor(patch.noise());
    RealMatrix whitening = new Array2DRowRealMatrix(size, size);
    for (int i = 0; i < size; i++) {
      double[] unit = new double[size];
      unit[i] = 1;
      whitening.setColumn(i, root.forward(unit));
    }
    Whitener all = new Whitener(whitening);
    if (size <= mostValues) {
      return all;
    }
    RealMatrix spread = new Array2DRowRealMatrix(size, size);
    for (int p = 0; p < paints.size(); p++) {
      double[][] slopes = all.apply(patch.jacobians().get(p));
      spread =
          spread.add(
              new Array2DRowRealMatrix(
                  Objects.requireNonNull(beliefs.get(paints.get(p))).covarianceOf(slopes), false));
    }
    RealMatrix leading =
        new EigenDecomposition(spread).getVT().getSubMatrix(0, mostValues - 1, 0, size - 1);
    return new Whitener(leading.multiply(whitening));
  }

  int size() {
    return matrix.getRowDimension();
  }

  double[] apply(double[] values) {
    return matrix.operate(values);
  }

  double[][] apply(double[][] slopes) {
    return matrix.multiply(new Array2DRowRealMatrix(slopes, false)).getData();
  }
}
