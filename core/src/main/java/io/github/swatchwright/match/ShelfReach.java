package io.github.swatchwright.match;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.estimate.PaintOptics;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.optics.Viewing;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.PaintChoice;
import io.github.swatchwright.search.Screening;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Which colours a shelf can be mixed to, and which it can't: an estimate over mixes of up to three
 * paints of one medium. The colours tried are a grid of 10 units in CIELAB, as far as an sRGB
 * display shows it; of each, the nearest of some thousand sampled mixes is improved step by step. A
 * search over whole drops ({@link Matcher}) may come nearer in places.
 *
 * @param grid the colours tried, each with the ΔE00 of the nearest mix that was found
 * @param mixes colours of sampled mixes, at least 3 units apart in one coordinate
 * @param gaps regions of which half or more is out of reach, the furthest first
 */
public record ShelfReach(List<GridColour> grid, List<Lab> mixes, List<Gap> gaps) {

  /** From this ΔE00 on, a colour counts as out of reach: plainly another. */
  public static final double LIMIT = 5;

  private static final int STEP = 10;
  private static final int LARGEST_AB = 130;

  /**
   * A colour of the grid.
   *
   * @param lab the colour
   * @param nearestDeltaE00 ΔE00 between it and the nearest mix that was found
   */
  public record GridColour(Lab lab, double nearestDeltaE00) {
    /** Whether some mix of the shelf could be taken for this colour. */
    public boolean withinReach() {
      return nearestDeltaE00 <= LIMIT;
    }
  }

  /**
   * A region that is out of reach.
   *
   * @param name what its colours are called
   * @param share how much of it is out of reach, 0.5 to 1
   * @param furthest the colour in it that is furthest from any mix
   */
  public record Gap(String name, double share, GridColour furthest) {}

  /** Copies the lists. */
  public ShelfReach {
    grid = List.copyOf(grid);
    mixes = List.copyOf(mixes);
    gaps = List.copyOf(gaps);
  }

  /** Estimates the reach of a shelf under a light. */
  public static ShelfReach of(ShelfOptics optics, TristimulusWeights light) {
    MixCloud cloud = new MixCloud(new Viewing(light, optics.surface()));
    Map<Medium, List<PaintOptics>> byMedium = new EnumMap<>(Medium.class);
    for (PaintOptics paint : mixed(optics)) {
      byMedium.computeIfAbsent(paint.paint().medium(), medium -> new ArrayList<>()).add(paint);
    }
    byMedium.values().forEach(cloud::add);
    List<MixCloud.Point> points = cloud.points();
    if (points.isEmpty()) {
      throw new IllegalArgumentException(
          "the shelf '" + optics.shelf().name() + "' holds no paint that can be computed with");
    }
    List<GridColour> grid =
        coloursToTry(light).stream()
            .map(lab -> new GridColour(lab, nearest(lab, points, cloud)))
            .toList();
    return new ShelfReach(grid, points.stream().map(MixCloud.Point::lab).toList(), gaps(grid));
  }

  /** What is mixed by default. */
  private static List<PaintOptics> mixed(ShelfOptics optics) {
    return optics.paints().stream().filter(one -> PaintChoice.ALL.admits(one.paint())).toList();
  }

  /** How much of the grid is within reach, 0 to 1. */
  public double share() {
    return grid.stream().filter(GridColour::withinReach).count() / (double) grid.size();
  }

  private static List<Lab> coloursToTry(TristimulusWeights light) {
    List<Lab> grid = new ArrayList<>();
    for (int l = 20; l <= 90; l += STEP) {
      for (int a = -LARGEST_AB; a <= LARGEST_AB; a += STEP) {
        for (int b = -LARGEST_AB; b <= LARGEST_AB; b += STEP) {
          Lab lab = new Lab(l, a, b, light.whitePoint());
          if (lab.toSrgb().isDisplayable()) {
            grid.add(lab);
          }
        }
      }
    }
    return grid;
  }

  /** A single paint has no ratio to vary, so refinement starts from the nearest mix. */
  private static double nearest(Lab target, List<MixCloud.Point> points, MixCloud cloud) {
    MixCloud.Point start = points.get(0);
    double nearest = Double.MAX_VALUE;
    double nearestMix = Double.MAX_VALUE;
    for (MixCloud.Point point : points) {
      if (Screening.isBeyond(target, point.lab(), nearestMix)) {
        continue;
      }
      double deltaE00 = Ciede2000.deltaE(target, point.lab());
      nearest = Math.min(nearest, deltaE00);
      if (point.paints().size() > 1 && deltaE00 < nearestMix) {
        nearestMix = deltaE00;
        start = point;
      }
    }
    return Math.min(nearest, improved(target, start, nearestMix, cloud));
  }

  /** Makes one part after the other larger and smaller, by ever smaller factors. */
  private static double improved(
      Lab target, MixCloud.Point start, double startDeltaE00, MixCloud cloud) {
    MixCloud.Point best = start;
    double nearest = startDeltaE00;
    double factor = 2;
    while (best.paints().size() > 1 && factor > 1.05) {
      boolean better = false;
      for (int i = 0; i < 2 * best.parts().size(); i++) {
        List<Double> parts = new ArrayList<>(best.parts());
        parts.set(i / 2, parts.get(i / 2) * (i % 2 == 0 ? factor : 1 / factor));
        MixCloud.Point tried = cloud.point(best.paints(), parts);
        double deltaE00 = Ciede2000.deltaE(target, tried.lab());
        if (deltaE00 < nearest) {
          nearest = deltaE00;
          best = tried;
          better = true;
        }
      }
      factor = better ? factor : Math.sqrt(factor);
    }
    return nearest;
  }

  private static List<Gap> gaps(List<GridColour> grid) {
    Map<String, List<GridColour>> regions = new TreeMap<>();
    grid.forEach(
        one -> regions.computeIfAbsent(ColourName.of(one.lab()), n -> new ArrayList<>()).add(one));
    List<Gap> gaps = new ArrayList<>();
    regions.forEach(
        (name, colours) -> {
          long missing = colours.stream().filter(one -> !one.withinReach()).count();
          double share = missing / (double) colours.size();
          if (share >= 0.5) {
            gaps.add(
                new Gap(
                    name,
                    share,
                    colours.stream()
                        .max(Comparator.comparingDouble(GridColour::nearestDeltaE00))
                        .orElseThrow()));
          }
        });
    gaps.sort(Comparator.comparingDouble((Gap gap) -> -gap.furthest().nearestDeltaE00()));
    return gaps;
  }
}
