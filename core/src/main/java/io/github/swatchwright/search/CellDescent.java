package io.github.swatchwright.search;

import io.github.swatchwright.spectrum.Bands;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Finds the ratios of sets of paints that come near a target, without computing all of them.
 *
 * <p>The ratios of a set form a tree of {@link RatioCell}s. Each set starts at the root and goes
 * down, {@link LaneKernel#LANES} sets at a time:
 *
 * <ol>
 *   <li>{@link #sift}: where the colours of a cell's corners show that no mix of the cell lies in
 *       the target's region, the set skips that cell; otherwise it waits for it.
 *   <li>{@link #tryAll}: at a leaf every ratio is computed in single precision, and those that may
 *       be within the limit in double precision, in the very arithmetic of {@link
 *       ExhaustiveSearch}, which decides.
 * </ol>
 *
 * <p>What is learned of a part's colours is stored in {@link SetBoxes}, so that a set that has been
 * here before goes straight to its parts. For one thread.
 */
final class CellDescent {
  private static final int LANES = LaneKernel.LANES;

  /** The region is computed again once the limit has shrunk by this factor. */
  private static final double SHRUNK = 0.98;

  private final BandTables tables;
  private final SetsOfSize sets;
  private final WaitingCell root;
  private final List<WaitingCell> parts = new ArrayList<>();

  /** The parts once more, for sets that have come by before, to be computed in full. */
  private final List<WaitingCell> wholeParts = new ArrayList<>();

  private final ExactMix exact;
  private SearchRun run;
  private TargetRegion region;

  private final float[][][] k;
  private final float[][][] s;
  private final float[][][] r;
  private final float[][] low = LaneKernel.byBand();
  private final float[][] high = LaneKernel.byBand();
  private final float[][] lowSums = new float[3][LANES];
  private final float[][] highSums = new float[3][LANES];
  private final float[][] colour = new float[3][LANES];
  private final float[] outside = new float[LANES];
  private final int[] paints = new int[LANES];
  private final float[] drops;

  CellDescent(CompiledShelf shelf, SetsOfSize sets, SearchRun run) {
    tables = shelf.tables();
    this.sets = sets;
    this.run = run;
    exact = new ExactMix(shelf, sets, run);
    root = WaitingCell.tree(sets.ratios, parts);
    parts.forEach(part -> wholeParts.add(WaitingCell.whole(part.cell)));
    region = regionOf(run);
    k = new float[sets.size][Bands.COUNT][LANES];
    s = new float[sets.size][Bands.COUNT][LANES];
    r = new float[sets.size][Bands.COUNT + 1][LANES];
    drops = new float[sets.size];
  }

  private TargetRegion regionOf(SearchRun search) {
    return new TargetRegion(search.target, search.map, search.limit(), tables);
  }

  /** Turns to another search, or to a new limit; forgets what waits. */
  void turnTo(SearchRun other) {
    run = other;
    exact.turnTo(other);
    region = regionOf(other);
    root.clear();
    wholeParts.forEach(WaitingCell::clear);
  }

  /** The region of the present limit, or a little more. */
  TargetRegion region() {
    double limit = run.limit();
    if (limit < SHRUNK * region.limit) {
      region = regionOf(run);
    }
    return region;
  }

  /** Takes a set; it waits until enough others have come to be computed with it. */
  void add(long set) {
    SetBoxes boxes = sets.boxes;
    if (boxes != null && boxes.hasParts()) {
      int rank = sets.rank(set);
      if (boxes.part(rank, 0) != 0) {
        addParts(boxes, set, rank);
        return;
      }
    }
    addTo(root, set);
  }

  private void addTo(WaitingCell node, long set) {
    node.add(set);
    if (node.count >= LANES) {
      descend(node, LANES);
    }
  }

  /**
   * A part that comes up for the second time is computed in full, since it may come again: where
   * its colours lie is then known far better than by its corners.
   */
  private void addParts(SetBoxes boxes, long set, int rank) {
    TargetRegion within = region();
    for (int part = 0; part < parts.size(); part++) {
      long box = boxes.part(rank, part);
      if (within.meets(box)) {
        addTo((BoxWord.isLab(box) ? parts : wholeParts).get(part), set);
      }
    }
  }

  /** Works off all that waits. */
  void finish() {
    finish(root);
    wholeParts.forEach(this::finish);
  }

  private void finish(WaitingCell node) {
    descend(node, 1);
    for (WaitingCell child : node.children) {
      finish(child);
    }
  }

  /**
   * Takes the waiting sets one level down, a batch at a time, while at least "least" of them wait.
   */
  private void descend(WaitingCell node, int least) {
    while (node.count >= least && !run.stops()) {
      int lanes = Math.min(LANES, node.count);
      node.count -= lanes;
      gather(node, lanes);
      if (node.isBestTried()) {
        for (RatioCell part : node.parts) {
          tryAll(node, part, lanes);
        }
        continue;
      }
      for (WaitingCell child : node.children) {
        sift(node, child, lanes);
      }
      for (WaitingCell child : node.children) {
        descend(child, LANES);
      }
    }
  }

  /** Copies K and S of the paints of the next sets into the lanes. */
  private void gather(WaitingCell node, int lanes) {
    for (int place = 0; place < sets.size; place++) {
      for (int lane = 0; lane < lanes; lane++) {
        paints[lane] = sets.paint(node.waiting[node.count + lane], place);
      }
      tables.copyDrops(lanes, paints, k[place], s[place]);
    }
  }

  /** Passes the sets on to a child whose cell may hold a colour of the target's region. */
  private void sift(WaitingCell node, WaitingCell child, int lanes) {
    TargetRegion within = region();
    boxCorners(child.cell.corners, within, lanes);
    SetBoxes boxes = sets.boxes;
    RatioCell cell = child.cell;
    node.sifted += lanes;
    for (int lane = 0; lane < lanes; lane++) {
      long set = node.waiting[node.count + lane];
      long box = BoxWord.ofF(lowSums, highSums, lane);
      boolean meets = outside[lane] == 0 && within.meets(box);
      if (meets) {
        child.add(set);
        node.kept++;
      }
      if (boxes != null && cell.parts > 0 && (!meets || cell.isPart)) {
        boxes.setUnknownParts(sets.rank(set), cell.firstPart, cell.firstPart + cell.parts, box);
      }
    }
  }

  /**
   * Boxes the colours of a cell by its corners: lowSums and highSums become f(X/Xn), f(Y/Yn),
   * f(Z/Zn) of the least and the greatest reflectances, and outside 0 where the region may be met.
   */
  private void boxCorners(float[][] corners, TargetRegion within, int lanes) {
    for (int corner = 0; corner < corners.length; corner++) {
      LaneKernel.reflect(lanes, k, s, corners[corner], tables.rest, r[corner]);
    }
    LaneKernel.span(lanes, r, low, high);
    Arrays.fill(outside, 0);
    for (int i = 0; i < 3; i++) {
      LaneKernel.weigh(lanes, low, tables.positive[i], lowSums[i]);
      LaneKernel.weigh(lanes, high, tables.positive[i], highSums[i]);
      LaneKernel.outside(lanes, lowSums[i], highSums[i], within.from[i], within.to[i], outside);
      LaneKernel.encode(lanes, (float) tables.surface[i], lowSums[i]);
      LaneKernel.encode(lanes, (float) tables.surface[i], highSums[i]);
    }
  }

  /** Computes all ratios of a cell for the sets in the lanes, and offers those that may be near. */
  private void tryAll(WaitingCell node, RatioCell cell, int lanes) {
    SetBoxes boxes = sets.boxes;
    boolean remembers = cell.isPart && boxes != null;
    float[][] least = lowSums;
    float[][] most = highSums;
    for (int i = 0; i < 3; i++) {
      Arrays.fill(least[i], Float.MAX_VALUE);
      Arrays.fill(most[i], -Float.MAX_VALUE);
    }
    for (int[] ratio : cell.ratios) {
      computeColours(ratio, lanes);
      TargetRegion within = region();
      Arrays.fill(outside, 0);
      for (int i = 0; i < 3; i++) {
        LaneKernel.apart(lanes, colour[i], within.centre[i], within.reach[i], outside);
        if (remembers) {
          LaneKernel.widen(lanes, colour[i], least[i], most[i]);
        }
      }
      for (int lane = 0; lane < lanes; lane++) {
        if (outside[lane] == 0 && within.meets(colour[0][lane], colour[1][lane], colour[2][lane])) {
          exact.offer(node.waiting[node.count + lane], ratio);
        }
      }
    }
    if (remembers && boxes != null) {
      for (int lane = 0; lane < lanes; lane++) {
        long set = node.waiting[node.count + lane];
        boxes.setComputed(sets.rank(set), cell.firstPart, BoxWord.ofLab(least, most, lane));
      }
    }
  }

  /** a*, L* and b* of one ratio of each set in the lanes. */
  private void computeColours(int[] ratio, int lanes) {
    for (int i = 0; i < drops.length; i++) {
      drops[i] = ratio[i];
    }
    LaneKernel.reflect(lanes, k, s, drops, tables.rest, r[0]);
    for (int i = 0; i < 3; i++) {
      LaneKernel.weigh(lanes, r[0], tables.weights[i], colour[i]);
      LaneKernel.encode(lanes, (float) tables.surface[i], colour[i]);
    }
    LaneKernel.lab(lanes, colour[0], colour[1], colour[2]);
  }
}
