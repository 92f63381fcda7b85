package io.github.swatchwright.search;

import io.github.swatchwright.spectrum.Bands;

/**
 * Finds a box around the colours of each set of three or four paints, {@link LaneKernel#LANES} sets
 * at a time: those that share their first paints and differ in the last two. For one thread.
 */
final class SetSweep {
  private static final int LANES = LaneKernel.LANES;

  private final BandTables tables;
  private final SetsOfSize sets;
  private final CellDescent descent;
  private final SetQueue queue;
  private final float[][] corners;
  private final float[][][] k;
  private final float[][][] s;
  private final float[][][] r;
  private final float[][] low = LaneKernel.byBand();
  private final float[][] high = LaneKernel.byBand();
  private final float[][] lowSums = new float[3][LANES];
  private final float[][] highSums = new float[3][LANES];
  private final float[] moreK = new float[Bands.COUNT];
  private final float[] moreS = new float[Bands.COUNT];
  private final int[] beforeLast = new int[LANES];
  private final int[] last = new int[LANES];

  /** How many pairs of the run come after the first paints in hand. */
  private int lanes;

  SetSweep(BandTables tables, SetsOfSize sets, CellDescent descent, SetQueue queue) {
    this.tables = tables;
    this.sets = sets;
    this.descent = descent;
    this.queue = queue;
    corners = sets.ratios.corners;
    k = new float[sets.size][Bands.COUNT][LANES];
    s = new float[sets.size][Bands.COUNT][LANES];
    r = new float[sets.size][Bands.COUNT][LANES];
  }

  private static int pairs(int paints) {
    return paints * (paints - 1) / 2;
  }

  /** How many runs there are. */
  static int runs(int paints) {
    return (pairs(paints) + LANES - 1) / LANES;
  }

  /** Finds the boxes of all sets whose last two paints are one of the run's pairs. */
  void run(int number, SearchRun run) {
    fill(number * LANES);
    for (int corner = 0; corner < sets.size; corner++) {
      float[] shares = corners[corner];
      for (int lane = 0; lane < lanes; lane++) {
        tables.copyMix(
            beforeLast[lane],
            shares[sets.size - 2],
            last[lane],
            shares[sets.size - 1],
            k[corner],
            s[corner],
            lane);
      }
    }
    int filled = lanes;
    for (int b = sets.size - 3; b < beforeLast[0] && !run.stops(); b++) {
      lanes = filled;
      while (beforeLast[lanes - 1] <= b) {
        lanes--;
      }
      if (sets.size == 3) {
        box(b, -1);
      } else {
        for (int a = 0; a < b && !run.stops(); a++) {
          box(b, a);
        }
      }
    }
  }

  /**
   * Pairs in the order of their first paint, the last one first: C(j + 1, 2) come before n − 2 − j.
   */
  private void fill(int first) {
    int earlier = (int) ((Math.sqrt(8.0 * first + 1) - 1) / 2);
    int c = sets.paints - 2 - earlier;
    int d = c + 1 + first - earlier * (earlier + 1) / 2;
    lanes = Math.min(LANES, pairs(sets.paints) - first);
    for (int lane = 0; lane < lanes; lane++) {
      beforeLast[lane] = c;
      last[lane] = d;
      d++;
      if (d == sets.paints) {
        c--;
        d = c + 1;
      }
    }
  }

  /** Finds the boxes of the run's sets that begin with a and b, or with b alone when a is −1. */
  private void box(int b, int a) {
    for (int corner = 0; corner < sets.size; corner++) {
      float[] shares = corners[corner];
      for (int band = 0; band < Bands.COUNT; band++) {
        moreK[band] = shares[sets.size - 3] * tables.k[b * Bands.COUNT + band];
        moreS[band] = shares[sets.size - 3] * tables.s[b * Bands.COUNT + band];
        if (a >= 0) {
          moreK[band] += shares[0] * tables.k[a * Bands.COUNT + band];
          moreS[band] += shares[0] * tables.s[a * Bands.COUNT + band];
        }
      }
      LaneKernel.reflectWith(lanes, k[corner], s[corner], moreK, moreS, tables.rest, r[corner]);
    }
    LaneKernel.span(lanes, r, low, high);
    for (int i = 0; i < 3; i++) {
      LaneKernel.weigh(lanes, low, tables.positive[i], lowSums[i]);
      LaneKernel.encode(lanes, (float) tables.surface[i], lowSums[i]);
      LaneKernel.weigh(lanes, high, tables.positive[i], highSums[i]);
      LaneKernel.encode(lanes, (float) tables.surface[i], highSums[i]);
    }
    TargetRegion within = descent.region();
    SetBoxes boxes = sets.boxes;
    long head = a < 0 ? b : SetsOfSize.with(a, b);
    long headRank = a < 0 ? sets.rankOf(0, b) : sets.rankOf(0, a) + sets.rankOf(1, b);
    for (int lane = 0; lane < lanes; lane++) {
      int c = beforeLast[lane];
      long box = BoxWord.ofF(lowSums, highSums, lane);
      if (boxes != null) {
        long rank =
            headRank + sets.rankOf(sets.size - 2, c) + sets.rankOf(sets.size - 1, last[lane]);
        boxes.setWhole((int) rank, box);
      }
      if (within.meets(box)) {
        queue.put(SetsOfSize.with(SetsOfSize.with(head, c), last[lane]), box);
      }
    }
  }
}
