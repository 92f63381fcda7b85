package io.github.swatchwright.coat;

import io.github.swatchwright.estimate.PaintOptics;
import io.github.swatchwright.optics.OpticalConstants;
import io.github.swatchwright.spectrum.Bands;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What the paints' covariance does, all paints of a stack together: test cards tie their errors to
 * each other. Bands don't mix, so for each paint one variant with all z off, and one with all u
 * off, give every derivative: ∂K/∂z = −K(1 + R), ∂K/∂u = K, ∂S/∂u = S.
 *
 * @param stack where they are used
 */
record PaintErrors(CoatStack stack) implements Disturbance {

  @Override
  public List<CoatStack> variants() {
    List<CoatStack> variants = new ArrayList<>();
    for (String name : stack.paints()) {
      variants.addAll(variants(stack.optics().of(name)));
    }
    return variants;
  }

  private List<CoatStack> variants(PaintOptics paint) {
    OpticalConstants constants = paint.constants();
    double[] masstone = paint.masstone();
    double[] kByZ = new double[Bands.COUNT];
    double[] kByU = new double[Bands.COUNT];
    double[] s = new double[Bands.COUNT];
    double[] sByU = new double[Bands.COUNT];
    for (int i = 0; i < Bands.COUNT; i++) {
      s[i] = constants.s(i);
      kByZ[i] = constants.k(i) * Math.exp(-STEP * (1 + masstone[i]));
      kByU[i] = constants.k(i) * Math.exp(STEP);
      sByU[i] = s[i] * Math.exp(STEP);
    }
    String name = paint.paint().name();
    return List.of(
        stack.withPaint(name, OpticalConstants.of(kByZ, s)),
        stack.withPaint(name, OpticalConstants.of(kByU, sByU)));
  }

  @Override
  public double[][] covariance(double[][] slope, double[] seen, List<double[]> moved) {
    Map<String, double[][]> jacobians = new LinkedHashMap<>();
    int variant = 0;
    for (String name : stack.paints()) {
      jacobians.put(name, jacobian(slope, seen, moved.get(variant), moved.get(variant + 1)));
      variant += 2;
    }
    return stack.optics().covarianceOf(jacobians);
  }

  private static double[][] jacobian(
      double[][] slope, double[] seen, double[] movedByZ, double[] movedByU) {
    double[][] jacobian = new double[3][2 * Bands.COUNT];
    for (int row = 0; row < 3; row++) {
      for (int band = 0; band < Bands.COUNT; band++) {
        double scale = slope[row][band] / STEP;
        jacobian[row][band] = scale * (movedByZ[band] - seen[band]);
        jacobian[row][Bands.COUNT + band] = scale * (movedByU[band] - seen[band]);
      }
    }
    return jacobian;
  }
}
