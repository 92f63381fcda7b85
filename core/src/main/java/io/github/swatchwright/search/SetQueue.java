package io.github.swatchwright.search;

import java.util.Arrays;

/**
 * Decides in which order sets of paints are computed: the sooner a good recipe is found, the more
 * of the others can be skipped. Sets whose box comes near the target are computed at once, the
 * others wait for a smaller limit, nearest first. For one thread.
 */
final class SetQueue {
  /** Where the next class of distance begins, as a share of the limit at the start. */
  private static final double[] SHARES = {0.1, 0.2, 0.35, 0.5, 0.7, 1};

  /** Fewer waiting sets aren't worth a round of their own, with most lanes empty. */
  private static final int WORTHWHILE = 1000;

  private final CellDescent descent;
  private final BandTables tables;
  private final TargetRegion[] regions = new TargetRegion[SHARES.length];
  private final long[][] waiting = new long[SHARES.length][256];
  private final int[] count = new int[SHARES.length];
  private SearchRun run;
  private double limit;

  SetQueue(CellDescent descent, BandTables tables, SearchRun run) {
    this.descent = descent;
    this.tables = tables;
    this.run = run;
    turnTo(run);
  }

  /** Turns to another search, or to a new limit; forgets what waits. */
  final void turnTo(SearchRun other) {
    run = other;
    limit = run.limit();
    Arrays.fill(count, 0);
    for (int i = 0; i < SHARES.length; i++) {
      regions[i] = new TargetRegion(run.target, run.map, SHARES[i] * limit, tables);
    }
  }

  /** Takes a set whose box meets the present region. */
  void put(long set, long box) {
    int level = 0;
    while (level < SHARES.length - 1 && !regions[level].meets(box)) {
      level++;
    }
    if (level == 0) {
      descent.add(set);
      return;
    }
    if (count[level] == waiting[level].length) {
      waiting[level] = Arrays.copyOf(waiting[level], 2 * waiting[level].length);
    }
    waiting[level][count[level]++] = set;
  }

  /**
   * Works off all that waits and can still matter.
   *
   * @return a ΔE00 that no set left over comes below: infinite when the search wasn't stopped
   */
  double finish() {
    double proven = 0;
    for (int level = 0; level < SHARES.length; level++) {
      if (proven > run.limit()) {
        break;
      }
      for (int i = 0; i < count[level] && !run.isStopped(); i++) {
        descent.add(waiting[level][i]);
      }
      if (level + 1 < SHARES.length && count[level + 1] < WORTHWHILE) {
        continue;
      }
      descent.finish();
      if (run.stops()) {
        return proven;
      }
      proven = SHARES[level] * limit;
    }
    return Double.POSITIVE_INFINITY;
  }
}
