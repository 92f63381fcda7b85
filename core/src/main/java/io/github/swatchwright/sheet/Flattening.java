package io.github.swatchwright.sheet;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.util.Pair;

/**
 * Where each place of the paper is in the photo: a curl of the paper, a homography, and what the
 * lens bends (one radial term about the picture's middle), fitted to the marks by least squares.
 * With four marks it is the homography alone.
 */
public final class Flattening {
  private static final int PLANE = 8;
  private static final int LENS = 8;
  private static final int CURL = 9;
  private static final int PARAMETERS = 13;

  /** How large the lens's term and the curl's are usually (sd), and how well a mark is found. */
  private static final double USUAL_LENS = 0.04;

  private static final double USUAL_CURL = 0.006;
  private static final double USUAL_ERROR_PIXELS = 0.5;

  /** Marks must spread as far as those of a whole sheet to tell a lens from perspective. */
  private static final int FEWEST_TO_BEND = 7;

  private final double width;
  private final double height;
  private final double middleX;
  private final double middleY;
  private final double radius;
  private final double[] parameters;
  private final double residualPixels;

  private Flattening(
      double width,
      double height,
      SheetPhoto photo,
      double[] parameters,
      List<Spot> marks,
      List<Spot> seen) {
    this.width = width;
    this.height = height;
    middleX = photo.width() / 2.0;
    middleY = photo.height() / 2.0;
    radius = Math.hypot(middleX, middleY);
    this.parameters = marks.size() < FEWEST_TO_BEND ? parameters : bent(parameters, marks, seen);
    double off = 0;
    for (int i = 0; i < marks.size(); i++) {
      off = Math.max(off, at(marks.get(i).x(), marks.get(i).y()).distanceTo(seen.get(i)));
    }
    residualPixels = off;
  }

  /**
   * The flattening by marks.
   *
   * @param width of the paper, mm
   * @param height of the paper, mm
   * @param photo the photo
   * @param marks four or more, in mm; no three of the first four on a line
   * @param seen where the photo shows them, in pixels
   */
  static Flattening by(
      double width, double height, SheetPhoto photo, List<Spot> marks, List<Spot> seen) {
    List<Spot> relative =
        marks.stream().map(mark -> new Spot(mark.x() / width, mark.y() / height)).toList();
    double[] start = new double[PARAMETERS];
    System.arraycopy(Homography.between(relative, seen).h(), 0, start, 0, PLANE);
    return new Flattening(width, height, photo, start, marks, seen);
  }

  private double[] bent(double[] start, List<Spot> marks, List<Spot> seen) {
    int rows = 2 * marks.size() + PARAMETERS - PLANE;
    double[] target = new double[rows];
    for (int i = 0; i < seen.size(); i++) {
      target[2 * i] = seen.get(i).x() / USUAL_ERROR_PIXELS;
      target[2 * i + 1] = seen.get(i).y() / USUAL_ERROR_PIXELS;
    }
    try {
      return new LevenbergMarquardtOptimizer()
          .optimize(
              new LeastSquaresBuilder()
                  .start(start)
                  .target(target)
                  .model(
                      point -> {
                        double[] p = point.toArray();
                        double[] value = model(p, marks, rows);
                        return new Pair<>(
                            new ArrayRealVector(value, false),
                            new Array2DRowRealMatrix(slopes(p, value, marks), false));
                      })
                  .maxEvaluations(200)
                  .maxIterations(200)
                  .build())
          .getPoint()
          .toArray();
    } catch (MathIllegalStateException e) {
      return start;
    }
  }

  private double[] model(double[] p, List<Spot> marks, int rows) {
    double[] value = new double[rows];
    int at = 0;
    for (Spot mark : marks) {
      Spot spot = at(p, mark.x(), mark.y());
      value[at++] = spot.x() / USUAL_ERROR_PIXELS;
      value[at++] = spot.y() / USUAL_ERROR_PIXELS;
    }
    value[at++] = p[LENS] / USUAL_LENS;
    for (int i = CURL; i < PARAMETERS; i++) {
      value[at++] = p[i] / USUAL_CURL;
    }
    return value;
  }

  private double[][] slopes(double[] p, double[] value, List<Spot> marks) {
    double[][] slopes = new double[value.length][PARAMETERS];
    for (int i = 0; i < PARAMETERS; i++) {
      double step = 1e-6 * Math.max(1, Math.abs(p[i]));
      double[] moved = p.clone();
      moved[i] += step;
      double[] there = model(moved, marks, value.length);
      for (int row = 0; row < value.length; row++) {
        slopes[row][i] = (there[row] - value[row]) / step;
      }
    }
    return slopes;
  }

  /** The farthest that a mark is from where the fit has it, pixels. */
  public double residualPixels() {
    return residualPixels;
  }

  /**
   * Where the photo shows a place of the paper.
   *
   * @param x mm from the left edge
   * @param y mm from the top edge
   * @return the place in pixels of the photo, which may lie outside of it
   */
  public Spot at(double x, double y) {
    return at(parameters, x, y);
  }

  private Spot at(double[] p, double x, double y) {
    double u = x / width;
    double v = y / height;
    double alongU = u * (1 - u);
    double alongV = v * (1 - v);
    double curledU = u + 4 * (p[CURL] * alongU + p[CURL + 1] * alongV);
    double curledV = v + 4 * (p[CURL + 2] * alongU + p[CURL + 3] * alongV);
    Spot flat = new Homography(p).at(curledU, curledV);
    double dx = flat.x() - middleX;
    double dy = flat.y() - middleY;
    double bend = 1 + p[LENS] * Math.min(4, (dx * dx + dy * dy) / (radius * radius));
    return new Spot(held(middleX + bend * dx), held(middleY + bend * dy));
  }

  private static double held(double value) {
    return Math.max(-1e6, Math.min(1e6, value));
  }

  /** Pixels of the photo for a millimetre of paper, about a place. */
  double pixelsPerMillimetre(double x, double y) {
    Spot here = at(x, y);
    double right = at(x + 1, y).distanceTo(here);
    double down = at(x, y + 1).distanceTo(here);
    return Math.min(right, down);
  }

  /** The corners of an area in the photo, clockwise from the left upper one. */
  public List<Spot> corners(Area area) {
    List<Spot> corners = new ArrayList<>();
    corners.add(at(area.left(), area.top()));
    corners.add(at(area.right(), area.top()));
    corners.add(at(area.right(), area.bottom()));
    corners.add(at(area.left(), area.bottom()));
    return corners;
  }
}
