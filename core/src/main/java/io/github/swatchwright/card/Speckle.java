package io.github.swatchwright.card;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.coat.SeenPatch;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.sheet.Spot;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Random;
import java.util.stream.Collectors;

/**
 * Speckled paint as a picture: a base, and passes of marks that each cover a share of it. Each pass
 * covers its share of every colour that shows before it, as independent passes do on the average
 * (Demichel 1924), so that colours show in coverageₖ · Π(1 − coverageⱼ), j later than k.
 *
 * <p>The picture shows {@value #WIDTH} mm × {@value #HEIGHT} mm of a model, and tiles: its left
 * edge goes on from its right one, its upper from its lower one. Shares are met within {@link
 * #TOLERANCE} in pixels, and so is that of a pass in the drawn picture; passes that are drawn over
 * each other meet theirs within 0.004. Where marks lie is drawn from the seed alone. Immutable.
 */
public final class Speckle {
  /** How far a shown share may be from the wanted one, for up to {@value #MOST_PASSES} passes. */
  public static final double TOLERANCE = 0.001;

  /** The most passes. */
  public static final int MOST_PASSES = 12;

  /** Width of what is shown, millimetres of the model. */
  public static final double WIDTH = 20;

  /** Height of what is shown, millimetres of the model. */
  public static final double HEIGHT = 10;

  /** The most pixels of a picture: 4096 × 4096. */
  public static final int MOST_PIXELS = 1 << 24;

  private static final double STRIP_HEIGHT = 5;

  /** Cells of the drawn picture for a millimetre of the model. */
  private static final int CELLS_PER_MM = 10;

  /** A pass that covers less is flicked from a brush when nothing else is said, others sponged. */
  private static final double FLICKED_UP_TO = 0.25;

  private final Lab base;
  private final List<Pass> passes;
  private final long seed;
  private final double height;
  private final List<List<Blot>> marks = new ArrayList<>();
  private final SpeckleRaster cells;

  /**
   * A pass of opaque speckles.
   *
   * @param colour what it looks like where it lies
   * @param coverage the share of the area that it covers, 0 to 1
   * @param landing how it gets there
   */
  public record Pass(Lab colour, double coverage, Landing landing) {
    /** Refuses a coverage outside 0 to 1. */
    public Pass {
      Require.within("coverage", coverage, 0, 1);
    }

    /** A pass in the usual way: little is flicked from a brush, more is sponged. */
    public Pass(Lab colour, double coverage) {
      this(colour, coverage, coverage <= FLICKED_UP_TO ? Landing.FLICKED : Landing.SPONGED);
    }
  }

  private Speckle(Lab base, List<Pass> passes, long seed, double height) {
    Require.within("number of passes", passes.size(), 0, MOST_PASSES);
    this.base = base;
    this.passes = List.copyOf(passes);
    this.seed = seed;
    this.height = height;
    Random random = new Random(seed);
    for (Pass pass : passes) {
      marks.add(BlotField.shower(grid(), pass.landing, pass.coverage, random));
    }
    cells = raster(grid());
  }

  /**
   * Draws speckles.
   *
   * @param base the colour below
   * @param passes the passes, first one first; at most {@value #MOST_PASSES}
   * @param seed where the marks lie; the same seed gives the same picture
   */
  public static Speckle of(Lab base, List<Pass> passes, long seed) {
    return new Speckle(base, passes, seed, HEIGHT);
  }

  /**
   * Patches of an area, each in its own colour and share. Shares are met within {@link #TOLERANCE};
   * of more than {@value #MOST_PASSES} and one patches the largest are drawn.
   *
   * @param patches at least one, the largest first
   * @param landing how the patches came about
   * @param seed where they lie; the same seed gives the same picture
   */
  public static Speckle ofPatches(List<SeenPatch> patches, Landing landing, long seed) {
    Require.within("number of patches", patches.size(), 1, Integer.MAX_VALUE);
    List<Pass> passes = new ArrayList<>();
    double sum = patches.get(0).share();
    // A pass over all that is drawn already leaves the shares in it as they are to each other.
    for (SeenPatch patch : patches.subList(1, Math.min(patches.size(), MOST_PASSES + 1))) {
      sum += patch.share();
      passes.add(new Pass(patch.colour(), patch.share() / sum, landing));
    }
    return new Speckle(patches.get(0).colour(), passes, seed, STRIP_HEIGHT);
  }

  /** One pass as a strip of half the height. */
  static Speckle strip(Lab base, Pass pass, long seed) {
    return new Speckle(base, List.of(pass), seed, STRIP_HEIGHT);
  }

  private SpeckleGrid grid() {
    return new SpeckleGrid(
        (int) (CELLS_PER_MM * WIDTH), (int) (CELLS_PER_MM * height), WIDTH, height);
  }

  private SpeckleRaster raster(SpeckleGrid grid) {
    return SpeckleRaster.of(
        grid, marks, passes.stream().mapToDouble(pass -> pass.coverage).toArray());
  }

  /** The share of the picture in which the base shows, then each pass; they sum to 1. */
  public double[] shares() {
    return cells.shares();
  }

  /**
   * The picture as pixels, such as a texture for a program of one's own. It tiles. Each pass meets
   * its share to half a pixel in each colour below.
   *
   * @param columns pixels side by side, 1 to {@value #MOST_PIXELS} in all
   * @param rows pixels below each other; half of the columns for square pixels
   * @return row by row, {@code 0xAARRGGBB} in sRGB, opaque; what sRGB can't show is drawn weaker
   */
  public int[] pixels(int columns, int rows) {
    Require.within("columns", columns, 1, MOST_PIXELS);
    Require.within("rows", rows, 1, MOST_PIXELS / columns);
    SpeckleRaster raster = raster(new SpeckleGrid(columns, rows, WIDTH, height));
    int[] colours = new int[passes.size() + 1];
    Arrays.setAll(colours, showing -> 0xFF000000 | Srgb.parse(hex(showing)).toPacked());
    int[] pixels = new int[columns * rows];
    Arrays.setAll(pixels, cell -> colours[raster.top(cell)]);
    return pixels;
  }

  /** The colour of the base, 0, or of a pass, from 1 on. */
  private String hex(int showing) {
    return new ScreenColour(showing == 0 ? base : passes.get(showing - 1).colour).hex();
  }

  /** The picture as an SVG file of its own, text in UTF-8. */
  public String toSvg() {
    return PageSvg.file(figure(0, 0, 8 * WIDTH));
  }

  /** The picture in a place of a page, of a width in millimetres. */
  Page.Figure figure(double left, double top, double width) {
    double high = width * height / WIDTH;
    double cell = width / grid().columns();
    List<Page.Shape> shapes = new ArrayList<>();
    shapes.add(new Page.Box(left, top, width, high, Ink.ofPaint(hex(0), "")));
    for (int pass = 1; pass <= passes.size(); pass++) {
      List<List<Spot>> curves = BlotOutlines.of(grid(), cells, pass);
      if (!curves.isEmpty()) {
        shapes.add(new Page.Curves(left, top, cell, curves, Ink.ofPaint(hex(pass), "")));
      }
    }
    return new Page.Figure(left, top, width, high, description(), shapes);
  }

  /** How large the piece of the model is that is shown, in words. */
  String scale() {
    return String.format(
        Locale.ROOT,
        "Shown: %s mm × %s mm of the model.",
        Markup.number(WIDTH),
        Markup.number(height));
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

  /** Whether the other is of the same base, passes, seed and size, and so the same picture. */
  @Override
  public boolean equals(Object other) {
    return other instanceof Speckle that
        && base.equals(that.base)
        && passes.equals(that.passes)
        && seed == that.seed
        && height == that.height;
  }

  @Override
  public int hashCode() {
    return Objects.hash(base, passes, seed, height);
  }
}
