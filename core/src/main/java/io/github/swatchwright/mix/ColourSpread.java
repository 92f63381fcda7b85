package io.github.swatchwright.mix;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * A colour that isn't known exactly: a Gaussian cloud in CIELAB, and what it means in ΔE00.
 *
 * <p>Questions are answered on a fixed cloud of {@value #POINTS} quasi-random points, so the same
 * question always has the same answer.
 */
public final class ColourSpread {
  private static final int POINTS = 256;
  private static final double[][] CLOUD = NormalCloud.of(POINTS);

  /** Six points on the axes and eight between them, all √3 from the middle. */
  private static final double[][] SPHERE = sphere();

  private static final double OF_AXIS = 1 / 15.0;
  private static final double OF_CORNER = 3 / 40.0;

  private final Lab centre;
  private final double[][] root;

  private ColourSpread(Lab centre, double[][] root) {
    this.centre = centre;
    this.root = root;
  }

  /**
   * A cloud about a colour.
   *
   * @param centre the most probable colour
   * @param covariance of L*, a* and b*: 3 × 3, symmetric and not negative
   */
  public static ColourSpread of(Lab centre, double[][] covariance) {
    Require.within("rows of covariance", covariance.length, 3, 3);
    double[][] root = new double[3][3];
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j <= i; j++) {
        double rest = covariance[i][j];
        if (!Double.isFinite(rest)) {
          Require.finite("covariance[" + i + "][" + j + "]", rest);
        }
        for (int m = 0; m < j; m++) {
          rest -= root[i][m] * root[j][m];
        }
        if (i == j) {
          root[i][i] = Math.sqrt(Math.max(0, rest));
        } else {
          root[i][j] = root[j][j] > 0 ? rest / root[j][j] : 0;
        }
      }
    }
    return new ColourSpread(centre, root);
  }

  /** The same cloud about another colour. */
  public ColourSpread about(Lab newCentre) {
    return new ColourSpread(newCentre, root);
  }

  /**
   * The same colour with a smaller spread, since something explains part of it.
   *
   * @param explained what is taken off the covariance of L*, a* and b*: 3 × 3
   */
  public ColourSpread less(double[][] explained) {
    double[][] rest = new double[3][3];
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        rest[i][j] = -explained[i][j];
        for (int m = 0; m < 3; m++) {
          rest[i][j] += root[i][m] * root[j][m];
        }
      }
    }
    return of(centre, rest);
  }

  /** The most probable colour. */
  public Lab centre() {
    return centre;
  }

  /** Standard deviations of L*, a* and b*. */
  public double[] standardDeviations() {
    return Arrays.stream(root)
        .mapToDouble(row -> Math.hypot(Math.hypot(row[0], row[1]), row[2]))
        .toArray();
  }

  /**
   * The ΔE00 about the centre within which the colour lies with that probability.
   *
   * @param probability above 0 to below 1
   */
  public double radius(double probability) {
    Require.within("probability", probability, 0, 1);
    double[] distances = distances(centre);
    Arrays.sort(distances);
    return distances[Math.min(POINTS - 1, (int) (probability * POINTS))];
  }

  /**
   * Colours on the edge of what is likely: where the ellipsoid that holds the colour with that
   * probability is cut by the plane of its two longest axes. The lightest comes first.
   *
   * @param colours how many, evenly about the centre: at least 1
   * @param probability above 0 to below 1
   */
  public List<Lab> outline(int colours, double probability) {
    Require.within("colours", colours, 1, 1000);
    Require.within("probability", probability, 0, 1);
    RealMatrix half = MatrixUtils.createRealMatrix(root);
    EigenDecomposition axes = new EigenDecomposition(half.multiply(half.transpose()));
    double reach =
        Math.sqrt(new ChiSquaredDistribution(3).inverseCumulativeProbability(probability));
    RealVector first = axis(axes, 0).mapMultiply(reach);
    RealVector second = axis(axes, 1).mapMultiply(reach);
    double lightest = Math.atan2(second.getEntry(0), first.getEntry(0));
    List<Lab> outline = new ArrayList<>();
    for (int i = 0; i < colours; i++) {
      double angle = lightest + 2 * Math.PI * i / colours;
      RealVector off = first.mapMultiply(Math.cos(angle)).add(second.mapMultiply(Math.sin(angle)));
      outline.add(
          new Lab(
              centre.l() + off.getEntry(0),
              centre.a() + off.getEntry(1),
              centre.b() + off.getEntry(2),
              centre.white()));
    }
    return outline;
  }

  private static RealVector axis(EigenDecomposition axes, int which) {
    double sd = Math.sqrt(Math.max(0, axes.getRealEigenvalue(which)));
    return axes.getEigenvector(which).mapMultiply(sd);
  }

  /** The mean ΔE00 to a target over the cloud: what a painter may expect to get. */
  public double expectedDeltaE00(Lab target) {
    return Arrays.stream(distances(target)).sum() / POINTS;
  }

  private static double[][] sphere() {
    double[][] points = new double[14][3];
    for (int i = 0; i < 3; i++) {
      points[2 * i][i] = Math.sqrt(3);
      points[2 * i + 1][i] = -Math.sqrt(3);
      for (int corner = 0; corner < 8; corner++) {
        points[6 + corner][i] = (corner >> i) % 2 == 0 ? 1 : -1;
      }
    }
    return points;
  }

  /**
   * About the same from 14 points √3 standard deviations out, for choosing among many clouds. Along
   * a ray that is exact up to the third degree, over directions (the axes and the corners of a
   * cube, weighted 1/15 and 3/40) up to the fifth.
   */
  public double roughlyExpectedDeltaE00(Lab target) {
    double[] distances = distances(target, SPHERE);
    double sum = 0;
    for (int i = 0; i < distances.length; i++) {
      sum += (i < 6 ? OF_AXIS : OF_CORNER) * distances[i];
    }
    return sum;
  }

  private double[] distances(Lab from) {
    return distances(from, CLOUD);
  }

  private double[] distances(Lab from, double[][] points) {
    if (!from.white().equals(centre.white())) {
      throw new IllegalArgumentException(
          "the target is relative to " + from.white() + ", must be to " + centre.white());
    }
    double[] l = new double[points.length];
    double[] a = new double[points.length];
    double[] b = new double[points.length];
    for (int i = 0; i < points.length; i++) {
      double[] p = points[i];
      l[i] = centre.l() + root[0][0] * p[0];
      a[i] = centre.a() + root[1][0] * p[0] + root[1][1] * p[1];
      b[i] = centre.b() + root[2][0] * p[0] + root[2][1] * p[1] + root[2][2] * p[2];
    }
    double[] distances = new double[points.length];
    Ciede2000.STANDARD.differences(from, l, a, b, distances);
    return distances;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ColourSpread that
        && centre.equals(that.centre)
        && Arrays.deepEquals(root, that.root);
  }

  @Override
  public int hashCode() {
    return 31 * centre.hashCode() + Arrays.deepHashCode(root);
  }

  @Override
  public String toString() {
    return "ColourSpread[centre=" + centre + ", sd=" + Arrays.toString(standardDeviations()) + "]";
  }
}
