package io.github.swatchwright.photo;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.colour.Lab;
import java.util.ArrayList;
import java.util.List;

/**
 * A colour chart: where its patches are on it, and which colours they have.
 *
 * @param patches the patches, at most {@value #MOST_PATCHES}
 */
public record Chart(List<Patch> patches) {
  /** The most patches of a chart. */
  public static final int MOST_PATCHES = 2000;

  /** The part of a patch that is looked at where patches are given by a grid alone. */
  private static final double MIDDLE = 0.5;

  /**
   * A patch: a rectangle of the chart, whose own left upper corner is 0, 0 and whose right lower
   * corner is 1, 1, and its colour.
   *
   * @param left its left edge
   * @param top its top edge
   * @param width its width
   * @param height its height
   * @param known its colour, relative to D65
   */
  public record Patch(double left, double top, double width, double height, Lab known) {
    /** Refuses what isn't on the chart. */
    public Patch {
      Require.within("left", left, 0, 1);
      Require.within("top", top, 0, 1);
      Require.within("width", width, 0, 1 - left + 1e-9);
      Require.within("height", height, 0, 1 - top + 1e-9);
    }

    Region on(Region chart) {
      long x = Math.round(chart.x() + left * chart.width());
      long y = Math.round(chart.y() + top * chart.height());
      long right = Math.round(chart.x() + (left + width) * chart.width());
      long bottom = Math.round(chart.y() + (top + height) * chart.height());
      if (right <= x || bottom <= y) {
        throw new IllegalArgumentException(
            "a patch of the chart in " + chart.toText() + " is smaller than a pixel");
      }
      return new Region((int) x, (int) y, (int) (right - x), (int) (bottom - y));
    }
  }

  /** A patch while its pixels come. */
  private record Reading(Patch patch, Region region, RegionSampler sampler, RegionCells cells) {
    static Reading of(Patch patch, Region region, Photo photo) {
      return new Reading(
          patch,
          region,
          new RegionSampler(region, photo.space()),
          new RegionCells(region, photo.space()));
    }

    SplitRows.Part part() {
      return new SplitRows.Part(region, new BothRows(sampler, cells));
    }
  }

  /** Refuses too few and too many patches. */
  public Chart {
    patches = List.copyOf(patches);
    Require.within(
        "the number of patches", patches.size(), ChartCorrection.FEWEST_PATCHES, MOST_PATCHES);
  }

  /**
   * A chart of patches in even rows and columns.
   *
   * @param columns how many patches a row has
   * @param known their colours row by row, relative to D65
   */
  public static Chart ofGrid(int columns, List<Lab> known) {
    Require.within("columns", columns, 1, known.size());
    int rows = (known.size() + columns - 1) / columns;
    List<Patch> patches = new ArrayList<>();
    for (int i = 0; i < known.size(); i++) {
      int column = i % columns;
      int row = i / columns;
      double left = (column + (1 - MIDDLE) / 2) / columns;
      double top = (row + (1 - MIDDLE) / 2) / rows;
      patches.add(new Patch(left, top, MIDDLE / columns, MIDDLE / rows, known.get(i)));
    }
    return new Chart(patches);
  }

  /**
   * The patches as a photo shows them. Those that are clipped or tell no colour are left out.
   *
   * @param photo the photo
   * @param light its illumination
   * @param where the chart is in it
   * @throws IllegalArgumentException when too few are left
   */
  public List<ChartPatch> seenIn(Photo photo, Illumination light, Region where) {
    List<Reading> readings =
        patches.stream().map(patch -> Reading.of(patch, patch.on(where), photo)).toList();
    photo.read(where, new SplitRows(where, readings.stream().map(Reading::part).toList()));
    List<ChartPatch> seen = new ArrayList<>();
    for (Reading reading : readings) {
      if (reading.sampler().tellsColour()) {
        RegionSample sample = light.evened(reading.sampler().result(), reading.cells().result());
        if (sample.shares().clipped() <= NeutralPatch.MOST_CLIPPED) {
          seen.add(new ChartPatch(sample.mean(), reading.patch().known()));
        }
      }
    }
    if (seen.size() < ChartCorrection.FEWEST_PATCHES) {
      throw new IllegalArgumentException(
          "of the chart's patches, "
              + seen.size()
              + " are neither clipped nor too dark, must be at least "
              + ChartCorrection.FEWEST_PATCHES);
    }
    return seen;
  }
}
