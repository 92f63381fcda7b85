package io.github.swatchwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Where a field really is: paper curls, so the black bar's own edges say by how much the flattening
 * is off there, and how sharp the photo is.
 *
 * @param dx how much farther right the field is, mm
 * @param dy how much farther down it is, mm
 * @param edge how wide the change from paper to black is, mm
 */
record FieldPlace(double dx, double dy, double edge) {
  /** A part of the sheet that lies where the flattening says. */
  static final FieldPlace AS_PRINTED = new FieldPlace(0, 0, 0);

  /** How far from its printed place an edge is searched, mm. */
  private static final double REACH = 2.6;

  private static final double STEP = 0.13;
  private static final int PROFILES = 9;

  /** Light falls to less than this share from paper to printed black. */
  private static final double LEAST_FALL = 0.6;

  /** An edge along a profile. */
  private record Edge(double at, double width) {}

  static FieldPlace of(SheetPhoto photo, Flattening flat, SheetField field) {
    Area black = field.black();
    List<Edge> tops = new ArrayList<>();
    List<Edge> bottoms = new ArrayList<>();
    List<Edge> lefts = new ArrayList<>();
    double bare = field.stroke().top() - black.top();
    for (int i = 1; i <= PROFILES; i++) {
      double x = black.left() + black.width() * i / (PROFILES + 1);
      add(tops, t -> grey(photo, flat, x, black.top() + t), bare);
      add(bottoms, t -> grey(photo, flat, x, black.bottom() - t), bare);
      double y = black.top() + bare * i / (PROFILES + 1);
      double low = black.bottom() - bare * i / (PROFILES + 1);
      add(lefts, t -> grey(photo, flat, black.left() + t, y), bare);
      add(lefts, t -> grey(photo, flat, black.left() + t, low), bare);
    }
    double top = middle(tops);
    double bottom = -middle(bottoms);
    double down = Double.isNaN(top) ? bottom : Double.isNaN(bottom) ? top : (top + bottom) / 2;
    double right = middle(lefts);
    double width =
        PaperLight.quantile(
            java.util.stream.Stream.of(tops, bottoms, lefts)
                .flatMap(List::stream)
                .mapToDouble(Edge::width)
                .toArray(),
            0.5);
    return new FieldPlace(Double.isNaN(right) ? 0 : right, Double.isNaN(down) ? 0 : down, width);
  }

  private static double grey(SheetPhoto photo, Flattening flat, double x, double y) {
    Spot at = flat.at(x, y);
    int p = photo.argb(at.x(), at.y());
    return p >> 8 & 0xFF;
  }

  /** Where the level falls from the outside to the inside, halfway. */
  private static void add(List<Edge> edges, DoubleUnaryOperator level, double bare) {
    double inside = Math.min(REACH, bare);
    double light = level.applyAsDouble(-REACH);
    double dark = level.applyAsDouble(inside);
    if (dark > LEAST_FALL * light) {
      return;
    }
    double from = Double.NaN;
    double half = Double.NaN;
    for (double t = -REACH; t <= inside; t += STEP) {
      double share = (light - level.applyAsDouble(t)) / (light - dark);
      from = Double.isNaN(from) && share > 0.2 ? t : from;
      half = Double.isNaN(half) && share > 0.5 ? t : half;
      if (share > 0.8) {
        edges.add(new Edge(half, t - from + STEP));
        return;
      }
    }
  }

  private static double middle(List<Edge> edges) {
    return edges.size() < 4
        ? Double.NaN
        : PaperLight.quantile(edges.stream().mapToDouble(Edge::at).toArray(), 0.5);
  }
}
