package io.github.swatchwright.photo;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.LinearRgb;
import io.github.swatchwright.colour.WhitePoint;
import io.github.swatchwright.colour.Xyz;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.mix.ColourSpread;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.SingularMatrixException;

/**
 * Correction by a colour chart with known colours: a 3 × 3 matrix, or a root polynomial where that
 * does better, from linear RGB to XYZ by least squares. An error of X, Y or Z weighs as it does in
 * CIELAB, by the slope of the cube root. How good it is, and which of the two is better, is told by
 * leaving out each patch in turn and predicting it from the others.
 */
final class ChartCorrection implements PhotoCorrection {
  /** Fewer patches can't tell a fit from chance. */
  static final int FEWEST_PATCHES = 12;

  /** How much larger errors are on colours of all kinds than on the milder ones of a chart. */
  private static final double BEYOND_CHART = 1.3;

  /** What a fit leaves over changes faster from colour to colour than the camera's own error. */
  private static final double REACH = 9;

  /** Darker patches weigh no more than this one: theirs is mostly noise and stray light. */
  private static final double DARKEST = 0.05;

  private final ChartTerms terms;
  private final double[][] matrix;
  private final double residualDeltaE00;
  private final ErrorModel error;

  private ChartCorrection(
      ChartTerms terms, double[][] matrix, double residualDeltaE00, ErrorModel error) {
    this.terms = terms;
    this.matrix = matrix;
    this.residualDeltaE00 = residualDeltaE00;
    this.error = error;
  }

  /**
   * The correction by a chart.
   *
   * @param chart its patches, {@value #FEWEST_PATCHES} or more
   * @throws IllegalArgumentException when the patches are too few or too alike, or the corrected
   *     chart is no nearer to its known colours than the photo as it is
   */
  static ChartCorrection of(List<ChartPatch> chart) {
    if (chart.size() < FEWEST_PATCHES) {
      throw new IllegalArgumentException(
          "the chart has " + chart.size() + " patches, must have at least " + FEWEST_PATCHES);
    }
    try {
      double[][] linear = leftOut(chart, ChartTerms.LINEAR);
      double[][] rooted = leftOut(chart, ChartTerms.ROOT_POLYNOMIAL);
      boolean root = median(rooted[0]) < median(linear[0]);
      ChartTerms terms = root ? ChartTerms.ROOT_POLYNOMIAL : ChartTerms.LINEAR;
      double[][] errors = root ? rooted : linear;
      double residual = median(errors[0]);
      double without =
          median(
              chart.stream()
                  .mapToDouble(p -> Ciede2000.deltaE(p.seen().toXyz().toLab(), p.known()))
                  .toArray());
      if (residual >= without) {
        throw new IllegalArgumentException(
            String.format(
                Locale.ROOT,
                "the chart doesn't fit the photo: corrected by it, its patches are ΔE00 %.1f off "
                    + "(median), %.1f without; are its colours and their order right?",
                residual,
                without));
      }
      ErrorModel error =
          new ErrorModel(
              BEYOND_CHART * rootMeanSquare(errors[1]),
              BEYOND_CHART * rootMeanSquare(errors[2]),
              0,
              REACH);
      return new ChartCorrection(terms, fit(chart, terms), residual, error);
    } catch (SingularMatrixException e) {
      throw new IllegalArgumentException("the patches of the chart are too alike to fit by", e);
    }
  }

  /** ΔE00, L* errors, and a* and b* errors of each patch as the others predict it. */
  private static double[][] leftOut(List<ChartPatch> chart, ChartTerms terms) {
    double[][] errors = {
      new double[chart.size()], new double[chart.size()], new double[2 * chart.size()]
    };
    for (int i = 0; i < chart.size(); i++) {
      List<ChartPatch> others = new ArrayList<>(chart);
      ChartPatch patch = others.remove(i);
      Lab lab = xyz(fit(others, terms), terms, patch.seen()).toLab();
      errors[0][i] = Ciede2000.deltaE(lab, patch.known());
      errors[1][i] = lab.l() - patch.known().l();
      double scale = ErrorModel.scale(patch.known());
      errors[2][2 * i] = (lab.a() - patch.known().a()) / scale;
      errors[2][2 * i + 1] = (lab.b() - patch.known().b()) / scale;
    }
    return errors;
  }

  private static double[][] fit(List<ChartPatch> chart, ChartTerms terms) {
    double[][] rows = new double[chart.size()][];
    double[][] known = new double[chart.size()][];
    for (int i = 0; i < rows.length; i++) {
      rows[i] = terms.of(chart.get(i).seen());
      known[i] = relative(chart.get(i).known().toXyz());
    }
    double[][] matrix = new double[3][];
    for (int axis = 0; axis < 3; axis++) {
      RealMatrix a = new Array2DRowRealMatrix(rows.length, terms.count);
      RealMatrix y = new Array2DRowRealMatrix(rows.length, 1);
      for (int i = 0; i < rows.length; i++) {
        double weight = Math.pow(Math.max(known[i][axis], DARKEST), -2.0 / 3);
        y.setEntry(i, 0, weight * known[i][axis]);
        for (int term = 0; term < terms.count; term++) {
          a.setEntry(i, term, weight * rows[i][term]);
        }
      }
      matrix[axis] = new QRDecomposition(a, 1e-9).getSolver().solve(y).getColumn(0);
    }
    return matrix;
  }

  private static double[] relative(Xyz colour) {
    WhitePoint white = colour.white();
    return new double[] {colour.x() / white.xn(), colour.y() / white.yn(), colour.z() / white.zn()};
  }

  private static Xyz xyz(double[][] matrix, ChartTerms terms, LinearRgb seen) {
    double[] values = terms.of(seen);
    double[] sums = new double[3];
    for (int axis = 0; axis < 3; axis++) {
      for (int term = 0; term < values.length; term++) {
        sums[axis] += matrix[axis][term] * values[term];
      }
    }
    WhitePoint white = WhitePoint.D65;
    return new Xyz(sums[0] * white.xn(), sums[1] * white.yn(), sums[2] * white.zn(), white);
  }

  private static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return (sorted[(sorted.length - 1) / 2] + sorted[sorted.length / 2]) / 2;
  }

  private static double rootMeanSquare(double[] values) {
    return Math.sqrt(Arrays.stream(values).map(v -> v * v).average().orElseThrow());
  }

  ErrorModel error() {
    return error;
  }

  /** The median ΔE00 of its patches, each predicted from the others. */
  public double residualDeltaE00() {
    return residualDeltaE00;
  }

  @Override
  public LinearRgb apply(LinearRgb seen) {
    return LinearRgb.ofXyz(xyz(matrix, terms, seen));
  }

  @Override
  public ColourSpread spread(Lab corrected, boolean crushed) {
    return error.about(corrected, crushed);
  }

  @Override
  public boolean knowsLightness() {
    return true;
  }

  @Override
  public String reference() {
    return String.format(
        Locale.ROOT,
        "colour chart (its patches, each told by the others, are ΔE00 %.1f off: median)",
        residualDeltaE00);
  }
}
