package io.github.swatchwright.photo;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.LinearRgb;
import io.github.swatchwright.mix.ColourSpread;
import java.util.List;
import org.apache.commons.math3.stat.regression.SimpleRegression;

/**
 * White balance and exposure from neutral patches of known luminance: a gain for each channel of
 * linear light. Three or more patches that span at least {@value #LEAST_SPAN} to 1 also fit a tone
 * curve, a power of each channel, by least squares of logarithms.
 */
final class GreyCorrection implements PhotoCorrection {
  private static final double LEAST_SPAN = 4;
  private static final int FEWEST_FOR_CURVE = 3;

  /** The grey tells the light, so what is left is the camera's. */
  static final ErrorModel ERROR = new ErrorModel(2, 2, 0, ErrorModel.CAMERA_REACH);

  private final double[] gains = new double[3];
  private final double[] exponents = {1, 1, 1};
  private final int patches;

  private GreyCorrection(List<NeutralPatch> patches) {
    this.patches = patches.size();
    double[] y = patches.stream().mapToDouble(p -> Math.log(p.luminance() / 100)).toArray();
    double[][] seen =
        patches.stream().map(p -> logarithms(p.sample().mean())).toArray(double[][]::new);
    double lowest = patches.stream().mapToDouble(NeutralPatch::luminance).min().orElseThrow();
    double highest = patches.stream().mapToDouble(NeutralPatch::luminance).max().orElseThrow();
    boolean curve = y.length >= FEWEST_FOR_CURVE && highest >= LEAST_SPAN * lowest;
    for (int channel = 0; channel < 3; channel++) {
      SimpleRegression line = new SimpleRegression();
      double offset = 0;
      for (int i = 0; i < y.length; i++) {
        line.addData(seen[i][channel], y[i]);
        offset += (y[i] - seen[i][channel]) / y.length;
      }
      exponents[channel] = curve ? line.getSlope() : 1;
      gains[channel] = Math.exp(curve ? line.getIntercept() : offset);
    }
  }

  /**
   * The correction by neutral patches.
   *
   * @param patches one or more
   */
  static GreyCorrection of(List<NeutralPatch> patches) {
    if (patches.isEmpty()) {
      throw new IllegalArgumentException("patches is empty, must hold at least one");
    }
    return new GreyCorrection(patches);
  }

  private static double[] logarithms(LinearRgb mean) {
    return new double[] {Math.log(mean.red()), Math.log(mean.green()), Math.log(mean.blue())};
  }

  @Override
  public LinearRgb apply(LinearRgb seen) {
    return new LinearRgb(
        corrected(seen.red(), 0), corrected(seen.green(), 1), corrected(seen.blue(), 2));
  }

  private double corrected(double light, int channel) {
    double size = Math.abs(light);
    double curved = exponents[channel] == 1 ? size : Math.pow(size, exponents[channel]);
    return Math.copySign(gains[channel] * curved, light);
  }

  @Override
  public ColourSpread spread(Lab corrected, boolean crushed) {
    return ERROR.about(corrected, crushed);
  }

  @Override
  public boolean knowsLightness() {
    return true;
  }

  @Override
  public String reference() {
    return patches == 1 ? "grey patch" : patches + " grey patches";
  }
}
