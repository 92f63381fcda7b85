package io.github.swatchwright.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A group of neighbouring ratios of two to four paints, and the corners of a simplex of shares
 * around them: what is proved from the corners (see {@link CompiledShelf}) holds for every ratio of
 * the group, so that all of them can be skipped together. A cell with many ratios is split into
 * smaller ones, which form a tree. Some cells, such that each ratio lies in one of them, are its
 * parts: {@link SetBoxes} remembers where the colours of a part lie.
 *
 * <p>Shares are of drops. The simplex is either {c : cᵢ ≥ lᵢ} or {c : cᵢ ≤ uᵢ}, with l and u the
 * least and greatest shares of the cell's ratios, whichever is smaller and has no negative share;
 * both have one corner for each paint.
 */
final class RatioCell {
  private static final int CHILDREN = 4;

  /** Drops of each paint, per ratio. */
  final int[][] ratios;

  /** Share of each paint, per corner. */
  final float[][] corners;

  /** The smaller cells of this one; empty for a leaf. */
  final List<RatioCell> children;

  /** The number of its first part; parts are numbered from left to right, from 0. */
  final int firstPart;

  /** How many parts it has; 1 when it is one itself, 0 below a part. */
  final int parts;

  /** Whether it is a part. */
  final boolean isPart;

  private RatioCell(List<int[]> ratios, int small, int remembered, int firstPart) {
    this.ratios = ratios.toArray(int[][]::new);
    this.firstPart = firstPart;
    corners = corners(ratios);
    children = new ArrayList<>();
    isPart = ratios.size() <= remembered;
    int part = firstPart;
    if (ratios.size() > small) {
      for (List<int[]> some : split(ratios, CHILDREN)) {
        RatioCell child = new RatioCell(some, small, isPart ? 0 : remembered, part);
        children.add(child);
        part += child.parts;
      }
    }
    parts = isPart ? 1 : part - firstPart;
  }

  /**
   * The tree of all reduced ratios.
   *
   * @param paints how many paints are mixed
   * @param mostDrops the most drops in all
   * @param small cells of no more ratios are not split
   * @param remembered cells of no more ratios are parts, the largest of them; at least {@code
   *     small}, or 0 for no parts
   */
  static RatioCell whole(int paints, int mostDrops, int small, int remembered) {
    List<int[]> ratios = new ArrayList<>();
    collect(new int[paints], 0, mostDrops, 0, ratios);
    return new RatioCell(ratios, small, remembered, 0);
  }

  private static void collect(int[] drops, int place, int left, int divisor, List<int[]> ratios) {
    int later = drops.length - place - 1;
    for (int count = 1; count <= left - later; count++) {
      drops[place] = count;
      int common = greatestCommonDivisor(count, divisor);
      if (later > 0) {
        collect(drops, place + 1, left - count, common, ratios);
      } else if (common == 1) {
        ratios.add(drops.clone());
      }
    }
  }

  private static int greatestCommonDivisor(int a, int b) {
    return b == 0 ? a : greatestCommonDivisor(b, a % b);
  }

  /** Halves at the middle ratio of the paint whose share varies most, and so on. */
  private static List<List<int[]>> split(List<int[]> ratios, int parts) {
    if (parts == 1 || ratios.size() < 2) {
      return List.of(ratios);
    }
    int widest = 0;
    for (int i = 1; i < ratios.get(0).length; i++) {
      if (width(ratios, i) > width(ratios, widest)) {
        widest = i;
      }
    }
    int place = widest;
    List<int[]> sorted = new ArrayList<>(ratios);
    sorted.sort(Comparator.comparingDouble(ratio -> share(ratio, place)));
    int half = sorted.size() / 2;
    List<List<int[]>> all = new ArrayList<>();
    all.addAll(split(sorted.subList(0, half), parts / 2));
    all.addAll(split(sorted.subList(half, sorted.size()), parts / 2));
    return all;
  }

  private static double share(int[] ratio, int place) {
    int sum = 0;
    for (int drops : ratio) {
      sum += drops;
    }
    return (double) ratio[place] / sum;
  }

  private static double least(List<int[]> ratios, int place) {
    double least = 1;
    for (int[] ratio : ratios) {
      least = Math.min(least, share(ratio, place));
    }
    return least;
  }

  private static double most(List<int[]> ratios, int place) {
    double most = 0;
    for (int[] ratio : ratios) {
      most = Math.max(most, share(ratio, place));
    }
    return most;
  }

  private static double width(List<int[]> ratios, int place) {
    return most(ratios, place) - least(ratios, place);
  }

  private static float[][] corners(List<int[]> ratios) {
    if (ratios.isEmpty()) {
      return new float[0][];
    }
    int paints = ratios.get(0).length;
    double above = 1;
    double below = -1;
    for (int i = 0; i < paints; i++) {
      above -= least(ratios, i);
      below += most(ratios, i);
    }
    boolean upright = above <= below;
    for (int i = 0; i < paints; i++) {
      upright |= most(ratios, i) < below;
    }
    float[][] corners = new float[paints][paints];
    for (int corner = 0; corner < paints; corner++) {
      for (int i = 0; i < paints; i++) {
        double away = i == corner ? 1 : 0;
        corners[corner][i] =
            (float) (upright ? least(ratios, i) + away * above : most(ratios, i) - away * below);
      }
    }
    return corners;
  }
}
