package io.github.swatchwright.search;

/** Picks the sets near a target from boxes that an earlier search has left. For one thread. */
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
        rank = row(0, c, 1, last, rank, c);
      } else {
        for (int b = 1; b < c; b++) {
          rank = row(b, c, 2, last, rank, b);
        }
      }
    }
  }

  /** The sets (first, b, c, last), or (first, c, last), with first below end. */
  private int row(int b, int c, int middle, int last, int rank, int end) {
    TargetRegion within = descent.region();
    for (int first = 0; first < end; first++) {
      long box = boxes.whole(rank + first);
      if (within.meets(box)) {
        long head = middle == 1 ? first : SetsOfSize.with(first, b);
        queue.put(SetsOfSize.with(SetsOfSize.with(head, c), last), box);
      }
    }
    return rank + end;
  }
}
