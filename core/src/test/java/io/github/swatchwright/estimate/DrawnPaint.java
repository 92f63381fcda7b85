package io.github.swatchwright.estimate;

import io.github.swatchwright.optics.OpticalConstants;
import java.util.Random;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;

/** What a paint may really be, drawn from what is believed of it. */
public final class DrawnPaint {
  private final double[] mean;
  private final RealMatrix root;

  public DrawnPaint(PaintOptics paint) {
    mean = paint.belief().mean();
    RealMatrix covariance = MatrixUtils.createRealMatrix(mean.length, mean.length);
    for (int i = 0; i < mean.length; i++) {
      double[] axis = new double[mean.length];
      axis[i] = 1;
      covariance.setColumn(i, paint.belief().spreadAlong(axis));
    }
    EigenDecomposition eigen =
        new EigenDecomposition(covariance.add(covariance.transpose()).scalarMultiply(0.5));
    root = eigen.getV();
    for (int i = 0; i < mean.length; i++) {
      double sd = Math.sqrt(Math.max(0, eigen.getRealEigenvalue(i)));
      root.setColumnVector(i, root.getColumnVector(i).mapMultiply(sd));
    }
  }

  public OpticalConstants draw(Random random) {
    double[] normal = random.doubles(mean.length).map(u -> random.nextGaussian()).toArray();
    double[] state = root.operate(normal);
    for (int i = 0; i < state.length; i++) {
      state[i] += mean[i];
    }
    return OpticsState.constants(state);
  }
}
