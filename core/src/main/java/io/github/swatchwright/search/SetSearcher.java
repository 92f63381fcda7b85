package io.github.swatchwright.search;

import org.jspecify.annotations.Nullable;

/** What one thread needs to search sets of one size: its memory serves one search after another. */
final class SetSearcher {
  private final CompiledShelf shelf;
  private final SetsOfSize sets;
  private final CellDescent descent;
  private final SetQueue queue;
  private @Nullable SetSweep sweep;
  private SearchRun run;

  SetSearcher(CompiledShelf shelf, SetsOfSize sets, SearchRun run) {
    this.shelf = shelf;
    this.sets = sets;
    this.run = run;
    descent = new CellDescent(shelf, sets, run);
    queue = new SetQueue(descent, shelf.tables(), run);
  }

  /** Turns to another search, or another pass of one. */
  void turnTo(SearchRun other) {
    run = other;
    descent.turnTo(other);
    queue.turnTo(other);
  }

  /** Takes all pairs that end with this paint. */
  void pairsEndingWith(int last) {
    for (int first = 0; first < last; first++) {
      descent.add(SetsOfSize.with(first, last));
    }
  }

  /** Takes the sets of three or four paints that end with this one, from boxes left earlier. */
  void scan(SetBoxes boxes, int last) {
    new SetScan(sets, boxes, run, descent, queue).endingWith(last);
  }

  /** Boxes the sets of one run of {@link SetSweep}, and takes those near enough. */
  void sweep(int number) {
    if (sweep == null) {
      sweep = new SetSweep(shelf.tables(), sets, descent, queue);
    }
    sweep.run(number, run);
  }

  /**
   * Works off all that waits.
   *
   * @return a ΔE00 below which no set taken was left out
   */
  double finish() {
    return run.isStopped() ? 0 : queue.finish();
  }
}
