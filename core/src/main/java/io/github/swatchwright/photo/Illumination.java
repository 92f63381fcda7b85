package io.github.swatchwright.photo;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.colour.LinearRgb;
import io.github.swatchwright.photo.RegionCells.Cell;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * How a photo's light changes from place to place: even, or a smooth field that was fitted to plain
 * areas, each of one colour whatever it is. The field's logarithm is a polynomial of the place, of
 * degree 2 where the areas span half the picture's width and height, otherwise 1, for each channel
 * of linear light; the mean over the areas is 1.
 */
public final class Illumination {
  /** Areas that span less of the picture's width or height don't tell how the light falls. */
  static final double LEAST_SPAN = 0.1;

  /** From here on, a curve can be told from a slope. */
  private static final double SPAN_FOR_CURVES = 0.5;

  /** The largest scatter about the field, in logarithms: more isn't plain. */
  private static final double MOST_SCATTER = 0.2;

  /** The largest ratio of light within a picture that is believed; beyond, the fit is wrong. */
  private static final double MOST_RATIO = 8;

  private static final Illumination EVEN = new Illumination(1, 1, new double[3][0], 0);

  private final int width;
  private final int height;
  private final double[][] coefficients;
  private final double scatter;

  private Illumination(int width, int height, double[][] coefficients, double scatter) {
    this.width = width;
    this.height = height;
    this.coefficients = coefficients;
    this.scatter = scatter;
  }

  /** The same everywhere. */
  public static Illumination even() {
    return EVEN;
  }

  /**
   * Fits the light of a photo.
   *
   * @param photo the picture
   * @param areas plain ones, such as a wall, a sheet of paper or a painted panel; together they
   *     span at least a tenth of the picture's width and height
   * @throws IllegalArgumentException when they are too small, or aren't plain
   */
  public static Illumination fittedTo(Photo photo, List<Region> areas) {
    Require.within("the number of plain areas", areas.size(), 1, 100);
    double span = span(photo, areas);
    if (span < LEAST_SPAN) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "the plain areas span %.0f %% of the picture's width or height, must span at least "
                  + "%.0f %% to tell how the light falls",
              100 * span,
              100 * LEAST_SPAN));
    }
    int terms = span >= SPAN_FOR_CURVES ? 5 : 2;
    List<double[]> rows = new ArrayList<>();
    List<LinearRgb> lights = new ArrayList<>();
    for (int area = 0; area < areas.size(); area++) {
      for (Cell cell : RegionCells.of(photo, areas.get(area))) {
        LinearRgb light = cell.light();
        if (light.red() > 0 && light.green() > 0 && light.blue() > 0) {
          double[] row = new double[terms + areas.size()];
          polynomial(cell.x() / photo.width(), cell.y() / photo.height(), terms, row);
          row[terms + area] = 1;
          rows.add(row);
          lights.add(light);
        }
      }
    }
    return fitted(photo, rows, lights, terms);
  }

  private static Illumination fitted(
      Photo photo, List<double[]> rows, List<LinearRgb> lights, int terms) {
    double[][] coefficients = new double[3][terms + 1];
    double scatter = 0;
    for (int channel = 0; channel < 3; channel++) {
      double[] logs = new double[rows.size()];
      for (int i = 0; i < logs.length; i++) {
        logs[i] = Math.log(channel(lights.get(i), channel));
      }
      RobustLine line = RobustLine.fit(rows, logs);
      scatter = Math.max(scatter, line.scatter());
      double mean = 0;
      for (int term = 0; term < terms; term++) {
        coefficients[channel][term] = line.coefficient(term);
        int at = term;
        mean +=
            line.coefficient(term)
                * rows.stream().mapToDouble(row -> row[at]).average().orElseThrow();
      }
      coefficients[channel][terms] = -mean;
    }
    if (scatter > MOST_SCATTER) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "the plain areas aren't plain: they scatter by %.0f %% about any smooth light, must"
                  + " by at most %.0f %%",
              100 * scatter,
              100 * MOST_SCATTER));
    }
    return new Illumination(photo.width(), photo.height(), coefficients, scatter);
  }

  private static double span(Photo photo, List<Region> areas) {
    double left = areas.stream().mapToInt(Region::x).min().orElseThrow();
    double top = areas.stream().mapToInt(Region::y).min().orElseThrow();
    double right = areas.stream().mapToInt(area -> area.x() + area.width()).max().orElseThrow();
    double bottom = areas.stream().mapToInt(area -> area.y() + area.height()).max().orElseThrow();
    return Math.min((right - left) / photo.width(), (bottom - top) / photo.height());
  }

  /** u, v, u², uv, v² of a place. */
  private static void polynomial(double u, double v, int terms, double[] row) {
    row[0] = u;
    row[1] = v;
    if (terms > 2) {
      row[2] = u * u;
      row[3] = u * v;
      row[4] = v * v;
    }
  }

  private static double channel(LinearRgb light, int channel) {
    return channel == 0 ? light.red() : channel == 1 ? light.green() : light.blue();
  }

  /** Whether it is the same everywhere. */
  public boolean isEven() {
    return coefficients[0].length == 0;
  }

  /** How much the plain areas scatter about the field, sd of natural logarithms. */
  public double scatter() {
    return scatter;
  }

  /**
   * The light at a place, relative to the plain areas' mean.
   *
   * @param x pixels from the picture's left edge
   * @param y pixels from its top edge
   * @throws IllegalArgumentException when that is too far from the plain areas to tell
   */
  public LinearRgb at(double x, double y) {
    double[] light = {1, 1, 1};
    int terms = coefficients[0].length - 1;
    if (terms > 0) {
      double[] row = new double[terms];
      polynomial(x / width, y / height, terms, row);
      for (int channel = 0; channel < 3; channel++) {
        double log = coefficients[channel][terms];
        for (int term = 0; term < terms; term++) {
          log += coefficients[channel][term] * row[term];
        }
        light[channel] = Math.exp(log);
        if (Math.abs(log) > Math.log(MOST_RATIO)) {
          throw new IllegalArgumentException(
              String.format(
                  Locale.ROOT,
                  "the light at %.0f,%.0f can't be told from the plain areas: it would be %.3g of"
                      + " theirs; choose an area nearer to it",
                  x,
                  y,
                  light[channel]));
        }
      }
    }
    return new LinearRgb(light[0], light[1], light[2]);
  }

  /** A cell as even light would show it. */
  private Cell evened(Cell cell) {
    LinearRgb light = at(cell.x(), cell.y());
    LinearRgb seen = cell.light();
    return new Cell(
        cell.x(),
        cell.y(),
        new LinearRgb(
            seen.red() / light.red(), seen.green() / light.green(), seen.blue() / light.blue()),
        cell.crushed());
  }

  List<Cell> evened(List<Cell> cells) {
    return isEven() ? cells : cells.stream().map(this::evened).toList();
  }

  /**
   * Samples a region as even light would show it.
   *
   * @throws IllegalArgumentException when too few of its pixels tell a colour
   */
  public RegionSample sample(Photo photo, Region region) {
    if (isEven()) {
      return RegionSampler.sample(photo, region);
    }
    RegionSampler sampler = new RegionSampler(region, photo.space());
    RegionCells cells = new RegionCells(region, photo.space());
    photo.read(region, new BothRows(sampler, cells));
    return evened(sampler.result(), cells.result());
  }

  /** The mean changes as the mean of the cells does. */
  RegionSample evened(RegionSample sample, List<Cell> seen) {
    if (isEven()) {
      return sample;
    }
    List<LinearRgb> evened = evened(seen).stream().map(Cell::light).toList();
    LinearRgb before = mean(seen.stream().map(Cell::light).toList());
    LinearRgb after = mean(evened);
    LinearRgb mean =
        new LinearRgb(
            sample.mean().red() * after.red() / before.red(),
            sample.mean().green() * after.green() / before.green(),
            sample.mean().blue() * after.blue() / before.blue());
    return new RegionSample(sample.region(), mean, sample.shares(), evened);
  }

  private static LinearRgb mean(List<LinearRgb> lights) {
    double red = lights.stream().mapToDouble(LinearRgb::red).average().orElseThrow();
    double green = lights.stream().mapToDouble(LinearRgb::green).average().orElseThrow();
    double blue = lights.stream().mapToDouble(LinearRgb::blue).average().orElseThrow();
    return new LinearRgb(red, green, blue);
  }
}
