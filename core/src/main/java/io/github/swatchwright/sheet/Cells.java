package io.github.swatchwright.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Small squares of an area of the sheet, each a mean of the photo's pixels divided by the light
 * there, and what they have in common.
 *
 * <p>Brush streaks run along a stroke, so that a column across it has thick and thin paint alike;
 * columns that are much brighter than others of the same paint are in glare.
 */
final class Cells {
  private static final double PITCH = FieldReading.CELL;

  /** Cells nearer to the bare base than this share of the paint's distance are gaps. */
  private static final double GAP = 0.3;

  /** The smallest difference from the base, in natural logarithms, that shows there is paint. */
  private static final double TOLD = 0.25;

  /** Columns brighter than the darkest by this share of their light are in glare. */
  private static final double GLARE = 0.12;

  /** Where no column is brighter than the darkest by this share, none is in glare. */
  private static final double PLAIN_GLARE = 0.5;

  /** The share of columns that are taken for the darkest, and the fewest that will do. */
  private static final double DARKEST = 0.2;

  private static final int FEWEST_COLUMNS = 6;

  private final List<double[]> lights = new ArrayList<>();
  private final List<Integer> columns = new ArrayList<>();
  private final List<Spot> places = new ArrayList<>();
  private final List<Spot> leftOut = new ArrayList<>();
  private int all;
  private int glare;

  /** One colour of an area. */
  static final class Common {
    private final double[] rgb;
    private final double used;
    private final double spread;
    private final double glare;
    private final List<Spot> leftOut;

    Common(double[] rgb, double used, double spread, double glare, List<Spot> leftOut) {
      this.rgb = rgb;
      this.used = used;
      this.spread = spread;
      this.glare = glare;
      this.leftOut = leftOut;
    }

    /** The middles of the cells that have no part in it, mm. */
    List<Spot> leftOut() {
      return leftOut;
    }

    double[] rgb() {
      return rgb;
    }

    double used() {
      return used;
    }

    double spread() {
      return spread;
    }

    double glare() {
      return glare;
    }
  }

  private Cells() {}

  static Cells of(
      SheetPhoto photo, Flattening flat, FieldPlace place, PaperLight paper, Area area) {
    Cells cells = new Cells();
    double middleX = area.left() + area.width() / 2;
    double middleY = area.top() + area.height() / 2;
    int half = half(flat, middleX, middleY);
    double[] rgb = new double[3];
    for (double y = area.top() + PITCH / 2; y < area.bottom(); y += PITCH) {
      for (double x = area.left() + PITCH / 2; x < area.right(); x += PITCH) {
        cells.all++;
        Spot at = flat.at(x + place.dx(), y + place.dy());
        if (!photo.mean(at.x(), at.y(), half, rgb)) {
          cells.glare++;
          cells.leftOut.add(new Spot(x, y));
        } else if (paper.isAtEdge(x, y)) {
          cells.leftOut.add(new Spot(x, y));
        } else {
          double[] light = paper.at(x, y);
          cells.lights.add(new double[] {rgb[0] / light[0], rgb[1] / light[1], rgb[2] / light[2]});
          cells.columns.add((int) ((x - area.left()) / PITCH));
          cells.places.add(new Spot(x, y));
        }
      }
    }
    return cells;
  }

  /** Half the side of the squares of pixels that make a cell. */
  static int half(Flattening flat, double x, double y) {
    return (int) Math.max(0, Math.min(4, Math.round(0.25 * flat.pixelsPerMillimetre(x, y) - 0.3)));
  }

  boolean isEmpty() {
    return lights.size() < 8;
  }

  /** The colour that a share of the cells is darker than; for a base that paint may spill onto. */
  double[] quantiles(double share) {
    double[] rgb = new double[3];
    for (int channel = 0; channel < 3; channel++) {
      int c = channel;
      rgb[c] = PaperLight.quantile(lights.stream().mapToDouble(cell -> cell[c]).toArray(), share);
    }
    return rgb;
  }

  /**
   * The cells without those of columns in glare.
   *
   * @param base what shows where there is no paint
   */
  Cells withoutGlare(double[] base) {
    Map<Integer, Double> middles = new TreeMap<>();
    byColumn().forEach((column, sums) -> middles.put(column, middleOf(sums)));
    double[] painted = painted(middles.values(), base);
    if (painted.length < FEWEST_COLUMNS) {
      return this;
    }
    double low = PaperLight.quantile(painted, DARKEST);
    if (painted[painted.length - 1] < (1 + PLAIN_GLARE) * low) {
      return this;
    }
    double most = Math.max((1 + GLARE) * low, painted[FEWEST_COLUMNS - 1]);
    Cells kept = new Cells();
    kept.all = all;
    kept.glare = glare;
    kept.leftOut.addAll(leftOut);
    for (int i = 0; i < lights.size(); i++) {
      if (middles.getOrDefault(columns.get(i), 0.0) <= most) {
        kept.lights.add(lights.get(i));
        kept.columns.add(columns.get(i));
        kept.places.add(places.get(i));
      } else {
        kept.glare++;
        kept.leftOut.add(places.get(i));
      }
    }
    return kept;
  }

  private SortedMap<Integer, List<Double>> byColumn() {
    SortedMap<Integer, List<Double>> byColumn = new TreeMap<>();
    for (int i = 0; i < lights.size(); i++) {
      double[] light = lights.get(i);
      byColumn
          .computeIfAbsent(columns.get(i), none -> new ArrayList<>())
          .add(light[0] + light[1] + light[2]);
    }
    return byColumn;
  }

  /**
   * The brightness of the columns with paint, sorted. Columns like the base are bare when the
   * others are alike, and dark paint when the others differ, as glare does from place to place.
   */
  private static double[] painted(Collection<Double> middles, double[] base) {
    double[] all = middles.stream().mapToDouble(m -> m).sorted().toArray();
    double bare = (1 + TOLD) * (base[0] + base[1] + base[2]);
    double[] others = Arrays.stream(all).filter(m -> m > bare).toArray();
    boolean isAlike =
        PaperLight.quantile(others, 0.75) < (1 + TOLD) * PaperLight.quantile(others, 0.25);
    return others.length >= FEWEST_COLUMNS && isAlike ? others : all;
  }

  private static double middleOf(List<Double> values) {
    return PaperLight.quantile(values.stream().mapToDouble(v -> v).toArray(), 0.5);
  }

  /** What the cells have in common when gaps, through which the base shows, are left out. */
  Common common(double[] base) {
    double[] distances = lights.stream().mapToDouble(cell -> distance(cell, base)).toArray();
    double far = PaperLight.quantile(distances, 0.75);
    List<double[]> paint = new ArrayList<>();
    List<Spot> painted = new ArrayList<>();
    List<Spot> lost = new ArrayList<>(leftOut);
    for (int i = 0; i < distances.length; i++) {
      if (far < TOLD || distances[i] >= GAP * far) {
        paint.add(lights.get(i));
        painted.add(places.get(i));
      } else {
        lost.add(places.get(i));
      }
    }
    double[] middle = median(paint);
    double[] off = paint.stream().mapToDouble(cell -> distance(cell, middle)).toArray();
    double usual = 1.48 * PaperLight.quantile(off, 0.5);
    double most = Math.max(0.03, 2.2 * usual);
    double[] sums = new double[3];
    int kept = 0;
    int bright = 0;
    for (int i = 0; i < off.length; i++) {
      double[] cell = paint.get(i);
      if (off[i] <= most) {
        kept++;
        for (int channel = 0; channel < 3; channel++) {
          sums[channel] += cell[channel];
        }
        continue;
      }
      lost.add(painted.get(i));
      if (cell[1] > middle[1] && cell[2] > middle[2] && cell[0] > middle[0]) {
        bright++;
      }
    }
    double[] mean = {sums[0] / kept, sums[1] / kept, sums[2] / kept};
    return new Common(mean, (double) kept / all, usual, (double) (glare + bright) / all, lost);
  }

  private static double[] median(List<double[]> cells) {
    double[] middle = new double[3];
    for (int channel = 0; channel < 3; channel++) {
      int c = channel;
      middle[c] = PaperLight.quantile(cells.stream().mapToDouble(cell -> cell[c]).toArray(), 0.5);
    }
    return middle;
  }

  /** How far two lights are apart, in natural logarithms; darker than 0.02 counts as that. */
  static double distance(double[] one, double[] other) {
    double[] squares = new double[3];
    Arrays.setAll(
        squares,
        c -> {
          double log = Math.log(Math.max(0.02, one[c]) / Math.max(0.02, other[c]));
          return log * log;
        });
    return Math.sqrt(squares[0] + squares[1] + squares[2]);
  }
}
