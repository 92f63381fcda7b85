package io.github.swatchwright.match;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Cie76;
import io.github.swatchwright.estimate.PaintOptics;
import io.github.swatchwright.optics.OpticalConstants;
import io.github.swatchwright.optics.Viewing;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Colours that paints of one medium can be mixed to, sampled: each paint, pairs in eleven ratios,
 * and triples of the paints that lie furthest apart. Parts are continuous, drops don't come in.
 */
final class MixCloud {
  /** More paints than this are thinned out to those that lie furthest apart, before pairs. */
  private static final int MOST_FOR_PAIRS = 60;

  /** The same for triples. */
  private static final int MOST_FOR_TRIPLES = 14;

  private static final double[] PAIR_SHARES = {
    0.003, 0.01, 0.03, 0.1, 0.25, 0.5, 0.75, 0.9, 0.97, 0.99, 0.997
  };
  private static final double[][] TRIPLE_SHARES = {
    {1, 1, 1}, {4, 1, 1}, {1, 4, 1}, {1, 1, 4}, {4, 4, 1}, {4, 1, 4}, {1, 4, 4}
  };

  /** One colour is kept of each cube of this side. */
  private static final double CELL = 3;

  private final Viewing viewing;
  private final Map<Long, Point> byCell = new LinkedHashMap<>();

  /**
   * A mix and its colour.
   *
   * @param paints up to three
   * @param parts by volume, as many
   * @param lab under the cloud's light
   */
  record Point(List<PaintOptics> paints, List<Double> parts, Lab lab) {}

  MixCloud(Viewing viewing) {
    this.viewing = viewing;
  }

  /** Adds the mixes of paints of one medium. */
  void add(List<PaintOptics> paints) {
    List<Point> masstones = new ArrayList<>();
    for (PaintOptics paint : paints) {
      Point masstone = point(List.of(paint), List.of(1.0));
      masstones.add(masstone);
      keep(masstone);
    }
    List<Point> apart = furthestApart(masstones, MOST_FOR_PAIRS);
    for (int i = 0; i < apart.size(); i++) {
      for (int j = 0; j < i; j++) {
        addPair(apart.get(i).paints().get(0), apart.get(j).paints().get(0));
      }
    }
    List<Point> few = furthestApart(masstones, MOST_FOR_TRIPLES);
    for (int i = 0; i < few.size(); i++) {
      for (int j = 0; j < i; j++) {
        for (int k = 0; k < j; k++) {
          addTriple(
              List.of(
                  few.get(i).paints().get(0),
                  few.get(j).paints().get(0),
                  few.get(k).paints().get(0)));
        }
      }
    }
  }

  private void addPair(PaintOptics one, PaintOptics other) {
    for (double share : PAIR_SHARES) {
      keep(point(List.of(one, other), List.of(share, 1 - share)));
    }
  }

  private void addTriple(List<PaintOptics> paints) {
    for (double[] shares : TRIPLE_SHARES) {
      keep(point(paints, List.of(shares[0], shares[1], shares[2])));
    }
  }

  private void keep(Point point) {
    Lab lab = point.lab();
    long cell =
        ((Math.round(lab.l() / CELL) & 0xFFFF) << 32)
            | ((Math.round(lab.a() / CELL) & 0xFFFF) << 16)
            | (Math.round(lab.b() / CELL) & 0xFFFF);
    byCell.putIfAbsent(cell, point);
  }

  /** The mix with its colour. */
  Point point(List<PaintOptics> paints, List<Double> parts) {
    OpticalConstants mixed =
        OpticalConstants.mix(
            paints.stream().map(PaintOptics::constants).toArray(OpticalConstants[]::new),
            parts.stream().mapToDouble(Double::doubleValue).toArray());
    return new Point(paints, parts, viewing.lab(mixed.opaque()));
  }

  /** All that were kept. */
  List<Point> points() {
    return List.copyOf(byCell.values());
  }

  /** Farthest-point sampling (Gonzalez 1985), from the lightest on. */
  private static List<Point> furthestApart(List<Point> points, int most) {
    if (points.size() <= most) {
      return points;
    }
    List<Point> chosen = new ArrayList<>();
    double[] distance = new double[points.size()];
    Arrays.fill(distance, Double.MAX_VALUE);
    int next = 0;
    for (int i = 1; i < points.size(); i++) {
      next = points.get(i).lab().l() > points.get(next).lab().l() ? i : next;
    }
    while (chosen.size() < most) {
      Point latest = points.get(next);
      chosen.add(latest);
      for (int i = 0; i < distance.length; i++) {
        distance[i] = Math.min(distance[i], Cie76.deltaE(latest.lab(), points.get(i).lab()));
        next = distance[i] > distance[next] ? i : next;
      }
    }
    return chosen;
  }
}
