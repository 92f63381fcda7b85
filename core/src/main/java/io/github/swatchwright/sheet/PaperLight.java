package io.github.swatchwright.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularMatrixException;

/**
 * How bright bare paper would look at each place of a field: the logarithm of the light is a plane
 * through the bare paper about it, with a step where the edge of a shadow crosses the field. Print
 * and stray paint are left out as outliers.
 */
final class PaperLight {
  /** Print is darker than this share of the brightest paper about it, also in half shadow. */
  private static final double PRINT = 0.3;

  /** A plane that leaves more than that, as sd of natural logarithms, may cross a shadow's edge. */
  private static final double UNEVEN = 0.035;

  /** Nearer than that to a shadow's edge, mm, nothing is read: edges are soft. */
  private static final double PENUMBRA = 2.5;

  private static final int DIRECTIONS = 24;
  private static final int FEWEST = 12;

  private final double x0;
  private final double y0;
  private final double[][] plane;
  private final double[] edge;
  private final double scatter;

  private PaperLight(double x0, double y0, double[][] plane, double[] edge, double scatter) {
    this.x0 = x0;
    this.y0 = y0;
    this.plane = plane;
    this.edge = edge;
    this.scatter = scatter;
  }

  /** Bare paper as it is seen: its place in mm, and its linear light by channel. */
  static final class Sample {
    private final double x;
    private final double y;
    private final double[] rgb;

    Sample(double x, double y, double[] rgb) {
      this.x = x;
      this.y = y;
      this.rgb = rgb;
    }

    double x() {
      return x;
    }

    double y() {
      return y;
    }

    double[] rgb() {
      return rgb;
    }

    double green() {
      return rgb[1];
    }
  }

  /**
   * The light about a field.
   *
   * @throws IllegalArgumentException when hardly any bare paper is seen
   */
  static PaperLight by(List<Sample> all) {
    double brightest = quantile(all.stream().mapToDouble(Sample::green).toArray(), 0.9);
    List<Sample> samples =
        all.stream()
            .filter(s -> Math.min(s.rgb()[0], Math.min(s.rgb()[1], s.rgb()[2])) > 1e-4)
            .filter(s -> s.green() > PRINT * brightest)
            .toList();
    if (samples.size() < FEWEST) {
      throw new IllegalArgumentException("hardly any bare paper is seen about it");
    }
    double x0 = samples.stream().mapToDouble(Sample::x).average().orElseThrow();
    double y0 = samples.stream().mapToDouble(Sample::y).average().orElseThrow();
    PaperLight flat = fitted(samples, x0, y0, new double[0]);
    if (flat.scatter <= UNEVEN) {
      return flat;
    }
    PaperLight best = flat;
    for (int i = 0; i < DIRECTIONS; i++) {
      double angle = 2 * Math.PI * i / DIRECTIONS;
      double[] along =
          samples.stream()
              .mapToDouble(s -> Math.cos(angle) * (s.x() - x0) + Math.sin(angle) * (s.y() - y0))
              .toArray();
      for (double share = 0.08; share < 0.95; share += 0.07) {
        double[] edge = {Math.cos(angle), Math.sin(angle), quantile(along, share)};
        PaperLight stepped = fitted(samples, x0, y0, edge);
        best = stepped.scatter < best.scatter ? stepped : best;
      }
    }
    return best.scatter < 0.6 * flat.scatter ? best : flat;
  }

  private static PaperLight fitted(List<Sample> samples, double x0, double y0, double[] edge) {
    int terms = edge.length > 0 ? 4 : 3;
    List<Sample> kept = samples;
    double[][] plane = new double[3][terms];
    double scatter = Double.POSITIVE_INFINITY;
    for (int round = 0; round < 3 && kept.size() >= FEWEST; round++) {
      PaperLight light = solved(kept, x0, y0, edge, terms);
      double[] off = light.off(kept);
      double middle = quantile(Arrays.stream(off).map(Math::abs).toArray(), 0.5);
      plane = light.plane;
      scatter = 1.48 * middle;
      double most = Math.max(0.02, 2.5 * scatter);
      List<Sample> inner = new ArrayList<>();
      for (int i = 0; i < off.length; i++) {
        if (Math.abs(off[i]) <= most) {
          inner.add(kept.get(i));
        }
      }
      kept = inner;
    }
    PaperLight last = new PaperLight(x0, y0, plane, edge, scatter);
    // All samples that aren't print have a say in how well it fits, also those in a shadow.
    double spread = quantile(Arrays.stream(last.off(samples)).map(Math::abs).toArray(), 0.8) / 1.28;
    return new PaperLight(x0, y0, plane, edge, spread);
  }

  private static PaperLight solved(
      List<Sample> samples, double x0, double y0, double[] edge, int terms) {
    double[][] rows = new double[samples.size()][];
    PaperLight shape = new PaperLight(x0, y0, new double[3][terms], edge, 0);
    for (int i = 0; i < rows.length; i++) {
      rows[i] = shape.row(samples.get(i).x(), samples.get(i).y());
    }
    double[][] plane = new double[3][];
    try {
      QRDecomposition qr = new QRDecomposition(new Array2DRowRealMatrix(rows, false), 1e-9);
      for (int channel = 0; channel < 3; channel++) {
        double[] logs = new double[rows.length];
        for (int i = 0; i < logs.length; i++) {
          logs[i] = Math.log(samples.get(i).rgb()[channel]);
        }
        RealVector solution = qr.getSolver().solve(new ArrayRealVector(logs, false));
        plane[channel] = solution.toArray();
      }
    } catch (SingularMatrixException e) {
      for (int channel = 0; channel < 3; channel++) {
        plane[channel] = new double[terms];
      }
    }
    return new PaperLight(x0, y0, plane, edge, 0);
  }

  private double[] off(List<Sample> samples) {
    return samples.stream()
        .mapToDouble(s -> Math.log(s.green()) - sum(plane[1], row(s.x(), s.y())))
        .toArray();
  }

  private double[] row(double x, double y) {
    double dx = x - x0;
    double dy = y - y0;
    if (edge.length == 0) {
      return new double[] {1, dx, dy};
    }
    return new double[] {1, dx, dy, beyond(x, y) > 0 ? 1 : 0};
  }

  private double beyond(double x, double y) {
    return edge[0] * (x - x0) + edge[1] * (y - y0) - edge[2];
  }

  private static double sum(double[] coefficients, double[] row) {
    double sum = 0;
    for (int i = 0; i < row.length; i++) {
      sum += coefficients[i] * row[i];
    }
    return sum;
  }

  /** Whether the edge of a shadow crosses the field. */
  boolean hasEdge() {
    return edge.length > 0;
  }

  /** Whether a place is so near to a shadow's edge that its light isn't known. */
  boolean isAtEdge(double x, double y) {
    return hasEdge() && Math.abs(beyond(x, y)) < PENUMBRA;
  }

  /** How far bare paper scatters about it, sd of natural logarithms. */
  double scatter() {
    return scatter;
  }

  /** What bare paper would look like at a place, linear light by channel. */
  double[] at(double x, double y) {
    double[] row = row(x, y);
    double[] light = new double[3];
    for (int channel = 0; channel < 3; channel++) {
      light[channel] = Math.exp(sum(plane[channel], row));
    }
    return light;
  }

  static double quantile(double[] values, double share) {
    if (values.length == 0) {
      return 0;
    }
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted[(int) Math.min(sorted.length - 1, share * sorted.length)];
  }
}
