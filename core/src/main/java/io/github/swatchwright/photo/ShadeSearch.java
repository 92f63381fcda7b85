package io.github.swatchwright.photo;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.LinearRgb;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.photo.RegionCells.Cell;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import org.apache.commons.math3.ml.clustering.Clusterable;
import org.apache.commons.math3.ml.clustering.KMeansPlusPlusClusterer;
import org.apache.commons.math3.ml.clustering.MultiKMeansPlusPlusClusterer;
import org.apache.commons.math3.ml.distance.EuclideanDistance;
import org.apache.commons.math3.random.Well19937c;

/**
 * Searches the shades that a region consists of: k-means++ (Arthur and Vassilvitskii 2007) of its
 * cells in CIELAB, seeded. A shade's colour is the mean of its cells in linear light. Shades that
 * lie closer together than one can see are made one.
 *
 * @param count how many shades at most; when empty, the fewest, up to {@value #MOST_BY_ITSELF}, of
 *     which {@value #WELL_SHARE} of the area isn't plainly different
 * @param seed of the clustering: the same seed gives the same shades
 */
public record ShadeSearch(OptionalInt count, long seed) {
  /** The most shades that can be asked for. */
  public static final int MOST = 24;

  private static final int MOST_BY_ITSELF = 6;

  /** The share of the area that its shades must stand for. */
  private static final double WELL_SHARE = 0.9;

  /** Colours further apart than that ΔE00 are different ones (facts of the trade, from memory). */
  static final double DIFFERENT = 5;

  /** Below that ΔE00, a difference doesn't show at a glance (likewise). */
  private static final double UNSEEN = 2;

  private static final int TRIALS = 3;
  private static final int MOST_ROUNDS = 60;

  /** Refuses a count out of range. */
  public ShadeSearch {
    count.ifPresent(k -> Require.within("the number of shades", k, 1, MOST));
  }

  /** A cell as a point of CIELAB. */
  private record Point(Cell cell, Lab lab) implements Clusterable {
    @Override
    public double[] getPoint() {
      return new double[] {lab.l(), lab.a(), lab.b()};
    }
  }

  /** Cells of one shade. */
  private record Group(List<Point> points, LinearRgb mean, Lab lab) {
    static Group of(List<Point> points, PhotoCorrection correction) {
      double r = 0;
      double g = 0;
      double b = 0;
      for (Point point : points) {
        r += point.cell().light().red();
        g += point.cell().light().green();
        b += point.cell().light().blue();
      }
      int n = points.size();
      LinearRgb mean = new LinearRgb(r / n, g / n, b / n);
      return new Group(points, mean, correction.apply(mean).toXyz().toLab());
    }

    double distance(Group other) {
      return Ciede2000.deltaE(lab, other.lab);
    }
  }

  /**
   * The shades of a region, the largest first; their shares sum to 1.
   *
   * @param photo the picture
   * @param region the part of it
   * @param light its illumination
   * @param correction what corrects its colours
   * @throws IllegalArgumentException when too few pixels tell a colour
   */
  public List<RegionShade> in(
      Photo photo, Region region, Illumination light, PhotoCorrection correction) {
    RegionSampler sampler = new RegionSampler(region, photo.space());
    RegionCells cells = new RegionCells(region, photo.space());
    photo.read(region, new BothRows(sampler, cells));
    RegionSample sample = sampler.result();
    List<Point> points =
        light.evened(cells.result()).stream()
            .map(cell -> new Point(cell, correction.apply(cell.light()).toXyz().toLab()))
            .toList();
    List<Group> groups =
        count.isPresent()
            ? clustered(points, count.getAsInt(), correction)
            : fewest(points, correction);
    return merged(groups, correction).stream()
        .sorted(Comparator.comparingInt((Group group) -> group.points().size()).reversed())
        .map(group -> shade(group, points.size(), sample.shares(), correction))
        .toList();
  }

  private List<Group> fewest(List<Point> points, PhotoCorrection correction) {
    List<Group> groups = List.of(Group.of(points, correction));
    for (int k = 2; k <= MOST_BY_ITSELF && wellShare(groups, points.size()) < WELL_SHARE; k++) {
      groups = clustered(points, k, correction);
    }
    return groups;
  }

  private static double wellShare(List<Group> groups, int all) {
    double well = 0;
    for (Group group : groups) {
      well +=
          group.points().stream()
              .filter(point -> Ciede2000.deltaE(group.lab(), point.lab()) <= DIFFERENT)
              .count();
    }
    return well / all;
  }

  private List<Group> clustered(List<Point> points, int k, PhotoCorrection correction) {
    KMeansPlusPlusClusterer<Point> clusterer =
        new KMeansPlusPlusClusterer<>(
            Math.min(k, points.size()),
            MOST_ROUNDS,
            new EuclideanDistance(),
            new Well19937c(seed),
            KMeansPlusPlusClusterer.EmptyClusterStrategy.FARTHEST_POINT);
    return new MultiKMeansPlusPlusClusterer<>(clusterer, TRIALS)
        .cluster(points).stream()
            .filter(cluster -> !cluster.getPoints().isEmpty())
            .map(cluster -> Group.of(cluster.getPoints(), correction))
            .toList();
  }

  /** Joins the two closest again and again, until all can be told apart. */
  private static List<Group> merged(List<Group> apart, PhotoCorrection correction) {
    List<Group> groups = new ArrayList<>(apart);
    while (true) {
      double closest = UNSEEN;
      int one = -1;
      int other = -1;
      for (int i = 0; i < groups.size(); i++) {
        for (int j = i + 1; j < groups.size(); j++) {
          double distance = groups.get(i).distance(groups.get(j));
          if (distance < closest) {
            closest = distance;
            one = i;
            other = j;
          }
        }
      }
      if (one < 0) {
        return groups;
      }
      List<Point> joined = new ArrayList<>(groups.get(one).points());
      joined.addAll(groups.remove(other).points());
      groups.set(one, Group.of(joined, correction));
    }
  }

  private static RegionShade shade(
      Group group, int all, PixelShares shares, PhotoCorrection correction) {
    long crushed = group.points().stream().filter(point -> point.cell().crushed()).count();
    double n = group.points().size();
    PixelShares own =
        new PixelShares(
            shares.used(),
            shares.clipped(),
            shares.nearBlack(),
            shares.transparent(),
            shares.stray(),
            crushed / n * shares.used());
    List<LinearRgb> lights = group.points().stream().map(point -> point.cell().light()).toList();
    return new RegionShade(correction.colour(group.mean(), lights, own), n / all);
  }
}
