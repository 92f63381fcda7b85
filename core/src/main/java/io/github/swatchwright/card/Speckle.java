package io.github.swatchwright.card;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.coat.SeenPatch;
import io.github.swatchwright.colour.Lab;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Collectors;

/**
 * Speckled paint as a picture: a base, and passes that each cover a share of it, in square cells.
 * Each pass covers its share of every colour that shows before it, as independent passes do on the
 * average (Demichel 1924), so that colours show in coverageₖ · Π(1 − coverageⱼ), j later than k.
 *
 * <p>Shares are those of whole cells: each is met within {@link #TOLERANCE}. Where the blots lie is
 * drawn from the seed alone. Immutable.
 */
public final class Speckle {
  /** How far a drawn share may be from the wanted one, for up to {@value #MOST_PASSES} passes. */
  public static final double TOLERANCE = 0.001;

  /** The most passes. */
  public static final int MOST_PASSES = 12;

  private static final Cells FINE = new Cells(160, 80);
  private static final Cells COARSE = new Cells(120, 30);

  /** How far neighbouring cells hang together, in cells: about the radius of a small blot. */
  private static final int BLOT = 1;

  private final Lab base;
  private final List<Pass> passes;
  private final Cells cells;
  private final int[] top;

  /**
   * A pass of opaque speckles.
   *
   * @param colour what it looks like where it lies
   * @param coverage the share of the area that it covers, 0 to 1
   */
  public record Pass(Lab colour, double coverage) {
    /** Refuses a coverage outside 0 to 1. */
    public Pass {
      Require.within("coverage", coverage, 0, 1);
    }
  }

  /**
   * The grid.
   *
   * @param columns how many cells lie side by side
   * @param rows how many lie below each other
   */
  private record Cells(int columns, int rows) {
    int count() {
      return columns * rows;
    }

    /** The cell there; beyond an edge the grid begins again. */
    int at(int column, int row) {
      return Math.floorMod(row, rows) * columns + Math.floorMod(column, columns);
    }
  }

  private Speckle(Lab base, List<Pass> passes, Cells cells, int[] top) {
    this.base = base;
    this.passes = passes;
    this.cells = cells;
    this.top = top;
  }

  /**
   * Draws speckles.
   *
   * @param base the colour below
   * @param passes the passes, first one first; at most {@value #MOST_PASSES}
   * @param seed where the blots lie; the same seed gives the same picture
   */
  public static Speckle of(Lab base, List<Pass> passes, long seed) {
    return drawn(base, passes, seed, FINE);
  }

  /**
   * Patches of an area, each in its own colour and share. Shares are met within {@link #TOLERANCE};
   * of more than {@value #MOST_PASSES} and one patches the largest are drawn.
   *
   * @param patches at least one, the largest first
   * @param seed where they lie; the same seed gives the same picture
   */
  public static Speckle ofPatches(List<SeenPatch> patches, long seed) {
    Require.within("number of patches", patches.size(), 1, Integer.MAX_VALUE);
    List<Pass> passes = new ArrayList<>();
    double sum = patches.get(0).share();
    // A pass over all that is drawn already leaves the shares in it as they are to each other.
    for (SeenPatch patch : patches.subList(1, Math.min(patches.size(), MOST_PASSES + 1))) {
      sum += patch.share();
      passes.add(new Pass(patch.colour(), patch.share() / sum));
    }
    return drawn(patches.get(0).colour(), passes, seed, COARSE);
  }

  /** One pass as a strip of fewer cells; its share is met within 0.0002. */
  static Speckle strip(Lab base, Pass pass, long seed) {
    return drawn(base, List.of(pass), seed, COARSE);
  }

  private static Speckle drawn(Lab base, List<Pass> passes, long seed, Cells cells) {
    Require.within("number of passes", passes.size(), 0, MOST_PASSES);
    Random random = new Random(seed);
    int[] top = new int[cells.count()];
    for (int pass = 1; pass <= passes.size(); pass++) {
      double[] height = roughness(random, cells);
      int[] before = top.clone();
      for (int showing = 0; showing < pass; showing++) {
        for (int cell : highest(before, showing, passes.get(pass - 1).coverage(), height)) {
          top[cell] = pass;
        }
      }
    }
    return new Speckle(base, List.copyOf(passes), cells, top);
  }

  /** The share of the cells in which something shows that lie highest. */
  private static int[] highest(int[] top, int showing, double share, double[] height) {
    List<Integer> cells = new ArrayList<>();
    for (int cell = 0; cell < top.length; cell++) {
      if (top[cell] == showing) {
        cells.add(cell);
      }
    }
    cells.sort(Comparator.comparingDouble(cell -> -height[cell]));
    return cells.stream()
        .limit(Math.round(share * cells.size()))
        .mapToInt(Integer::intValue)
        .toArray();
  }

  /** White noise, blurred twice so that what lies high forms blots. */
  private static double[] roughness(Random random, Cells cells) {
    double[] noise = random.doubles(cells.count()).toArray();
    return blurred(blurred(noise, cells), cells);
  }

  private static double[] blurred(double[] noise, Cells cells) {
    double[] blurred = new double[noise.length];
    for (int row = 0; row < cells.rows(); row++) {
      for (int column = 0; column < cells.columns(); column++) {
        double sum = 0;
        for (int down = -BLOT; down <= BLOT; down++) {
          for (int right = -BLOT; right <= BLOT; right++) {
            sum += noise[cells.at(column + right, row + down)];
          }
        }
        blurred[cells.at(column, row)] = sum;
      }
    }
    return blurred;
  }

  /** The share of the picture in which the base shows, then each pass; they sum to 1. */
  public double[] shares() {
    double[] shares = new double[passes.size() + 1];
    Arrays.stream(top).forEach(showing -> shares[showing]++);
    Arrays.setAll(shares, showing -> shares[showing] / top.length);
    return shares;
  }

  /** The picture as an SVG file of its own, text in UTF-8. */
  public String toSvg() {
    return figure().toFile();
  }

  /** The picture, a unit a cell. */
  Figure figure() {
    List<Markup> shapes = new ArrayList<>();
    shapes.add(
        Markup.of("rect")
            .with("width", cells.columns())
            .with("height", cells.rows())
            .with("fill", new ScreenColour(base).hex()));
    for (int pass = 1; pass <= passes.size(); pass++) {
      String path = runs(pass);
      if (!path.isEmpty()) {
        shapes.add(
            Markup.of("path")
                .with("stroke", new ScreenColour(passes.get(pass - 1).colour()).hex())
                .with("shape-rendering", "crispEdges")
                .with("d", path));
      }
    }
    return new Figure(cells.columns(), cells.rows(), description(), shapes);
  }

  /** The cells in which a pass shows, as strokes along the middles of the rows. */
  private String runs(int pass) {
    StringBuilder path = new StringBuilder();
    for (int row = 0; row < cells.rows(); row++) {
      int end = -1;
      for (int column = 0; column < cells.columns(); column++) {
        int start = column;
        while (column < cells.columns() && top[cells.at(column, row)] == pass) {
          column++;
        }
        if (column > start) {
          path.append(end < 0 ? "M" + start + " " + row + ".5" : "m" + (start - end) + " 0")
              .append('h')
              .append(column - start);
          end = column;
        }
      }
    }
    return path.toString();
  }

  private String description() {
    double[] shares = shares();
    String passShares =
        Arrays.stream(shares)
            .skip(1)
            .mapToObj(share -> String.format(Locale.ROOT, "%.0f %%", 100 * share))
            .collect(Collectors.joining(", "));
    String bare = String.format(Locale.ROOT, "%.0f %%", 100 * shares[0]);
    return passes.isEmpty()
        ? "No speckle"
        : "Speckle: the base shows in " + bare + ", the passes in " + passShares;
  }
}
