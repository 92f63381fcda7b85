package io.github.swatchwright.search;

/**
 * Finds the sets of paints whose colours may come near a target, by reading the boxes that an
 * earlier search has stored. For one thread.
 */
final class SetScan {
  private final SetsOfSize sets;
  private final SetBoxes boxes;
  private final SearchRun run;
  private final CellDescent descent;
  private final SetQueue queue;

  SetScan(SetsOfSize sets, SetBoxes boxes, SearchRun run, CellDescent descent, SetQueue queue) {
    this.sets = sets;
    this.boxes = boxes;
    this.run = run;
    this.descent = descent;
    this.queue = queue;
  }

  /** Looks at all sets of three or four paints that end with this one, in the order of rank. */
  void endingWith(int last) {
    int rank = (int) sets.rankOf(sets.size - 1, last);
    for (int c = sets.size - 2; c < last && !run.stops(); c++) {
      if (sets.size == 3) {
        rank = triples(c, last, rank);
      } else {
        for (int b = 1; b < c; b++) {
          rank = quadruples(b, c, last, rank);
        }
      }
    }
  }

  /** Looks at the sets (a, c, last) for every a; returns the rank after theirs. */
  private int triples(int c, int last, int rank) {
    TargetRegion within = descent.region();
    for (int a = 0; a < c; a++) {
      long box = boxes.whole(rank + a);
      if (within.meets(box)) {
        queue.put(SetsOfSize.with(SetsOfSize.with(a, c), last), box);
      }
    }
    return rank + c;
  }

  /** Looks at the sets (a, b, c, last) for every a; returns the rank after theirs. */
  private int quadruples(int b, int c, int last, int rank) {
    TargetRegion within = descent.region();
    for (int a = 0; a < b; a++) {
      long box = boxes.whole(rank + a);
      if (within.meets(box)) {
        queue.put(SetsOfSize.with(SetsOfSize.with(SetsOfSize.with(a, b), c), last), box);
      }
    }
    return rank + b;
  }
}
