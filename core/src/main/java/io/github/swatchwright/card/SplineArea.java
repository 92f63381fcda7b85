package io.github.swatchwright.card;

import java.util.List;

/**
 * What a closed quadratic B-spline encloses of a picture, and a spline that encloses a wanted area.
 * Areas are signed: those of holes, which run the other way, are negative.
 *
 * @param width of the picture
 * @param height of the picture
 */
record SplineArea(double width, double height) {
  /** Pieces that each curve of a spline is cut into; the area lost so is below 1 in 1000. */
  private static final int PIECES = 4;

  /** What a polygon encloses of the picture. */
  double ofPolygon(List<int[]> corners) {
    double[] points = new double[2 * corners.size()];
    for (int i = 0; i < corners.size(); i++) {
      points[2 * i] = corners.get(i)[0];
      points[2 * i + 1] = corners.get(i)[1];
    }
    return clipped(points);
  }

  /** What a spline encloses of the picture, by its control points. */
  double of(double[] points) {
    int count = points.length / 2;
    double[] pieces = new double[2 * PIECES * count];
    for (int i = 0; i < count; i++) {
      for (int piece = 0; piece < PIECES; piece++) {
        double t = (double) piece / PIECES;
        for (int axis = 0; axis < 2; axis++) {
          double before = points[2 * ((i + count - 1) % count) + axis];
          double here = points[2 * i + axis];
          double after = points[2 * ((i + 1) % count) + axis];
          double start = (before + here) / 2;
          double end = (here + after) / 2;
          pieces[2 * (PIECES * i + piece) + axis] =
              (1 - t) * (1 - t) * start + 2 * t * (1 - t) * here + t * t * end;
        }
      }
    }
    return clipped(pieces);
  }

  /**
   * By the shoelace formula, after each point outside of the picture has been moved to its edge.
   * For short sides that is the same as cutting the polygon off, but for the corners of a side that
   * crosses an edge.
   */
  private double clipped(double[] points) {
    double twice = 0;
    int count = points.length / 2;
    double beforeX = inside(points[2 * count - 2], width);
    double beforeY = inside(points[2 * count - 1], height);
    for (int i = 0; i < count; i++) {
      double x = inside(points[2 * i], width);
      double y = inside(points[2 * i + 1], height);
      twice += beforeX * y - x * beforeY;
      beforeX = x;
      beforeY = y;
    }
    return twice / 2;
  }

  private static double inside(double value, double most) {
    return Math.max(0, Math.min(most, value));
  }

  /** Moves control points outwards, evenly along the spline, towards the wanted area. */
  void widen(double[] points, double wanted) {
    int count = points.length / 2;
    double length = 0;
    double[] outwards = new double[points.length];
    for (int i = 0; i < count; i++) {
      int before = 2 * ((i + count - 1) % count);
      int after = 2 * ((i + 1) % count);
      double right = points[after] - points[before];
      double down = points[after + 1] - points[before + 1];
      double size = Math.hypot(right, down);
      if (size > 0) {
        outwards[2 * i] = down / size;
        outwards[2 * i + 1] = -right / size;
      }
      boolean isSeen =
          points[2 * i] > 0
              && points[2 * i] < width
              && points[2 * i + 1] > 0
              && points[2 * i + 1] < height;
      length += isSeen ? size / 2 : 0;
    }
    double by = length > 0 ? (wanted - of(points)) / length : 0;
    for (int i = 0; i < points.length; i++) {
      points[i] += by * outwards[i];
    }
  }
}
