package io.github.swatchwright.match;

import java.util.concurrent.atomic.AtomicInteger;

/** Searches all sets of one size, on several threads. */
final class SizeSearch {
  private final CompiledShelf shelf;
  private final SetsOfSize sets;
  private final SearchRun run;
  private final double share;
  private final AtomicInteger next = new AtomicInteger();
  private final boolean scans;
  private final int tasks;

  /**
   * A search of one size.
   *
   * @param share of the whole search, for progress
   */
  SizeSearch(CompiledShelf shelf, SetsOfSize sets, SearchRun run, double share) {
    this.shelf = shelf;
    this.sets = sets;
    this.run = run;
    this.share = share;
    SetBoxes boxes = sets.boxes;
    scans = sets.size == 2 || (boxes != null && boxes.isComplete());
    tasks = scans ? sets.paints : SetSweep.tiles(sets.paints);
  }

  /** Returns a ΔE00 below which no recipe of this size was left out. */
  double run(int threads) {
    double proven =
        new SharedWork<>(threads, this::work)
            .results().stream().mapToDouble(bound -> bound).min().orElseThrow();
    SetBoxes boxes = sets.boxes;
    if (!scans && boxes != null && next.get() >= tasks && !run.isStopped()) {
      boxes.setComplete();
    }
    return proven;
  }

  private double work() {
    CellDescent descent = new CellDescent(shelf, sets, run);
    SetQueue queue = new SetQueue(shelf.tables(), descent, run);
    SetBoxes boxes = sets.boxes;
    if (sets.size == 2) {
      share(last -> pairsEndingWith(descent, last));
    } else if (scans && boxes != null) {
      share(new SetScan(sets, boxes, run, descent, queue)::endingWith);
    } else {
      share(new SetSweep(shelf.tables(), sets, run, descent, queue)::tile);
    }
    return run.isStopped() ? 0 : queue.finish();
  }

  /** Takes one task after the other until none is left. */
  private void share(Task task) {
    for (int i = next.getAndIncrement(); i < tasks && !run.stops(); i = next.getAndIncrement()) {
      task.run(tasks - 1 - i);
      run.advance(share / tasks);
    }
  }

  private static void pairsEndingWith(CellDescent descent, int last) {
    for (int first = 0; first < last; first++) {
      descent.add(SetsOfSize.with(first, last));
    }
  }

  /** A piece of work. */
  private interface Task {
    void run(int number);
  }
}
