package io.github.swatchwright.search;

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
    tasks = scans ? sets.paints : SetSweep.runs(sets.paints);
  }

  /** Returns a ΔE00 below which no recipe of this size was left out. */
  double run(WorkerThreads threads) {
    double proven =
        threads.each(this::work).stream().mapToDouble(bound -> bound).min().orElseThrow();
    SetBoxes boxes = sets.boxes;
    if (!scans && boxes != null && next.get() >= tasks && !run.isStopped()) {
      boxes.setComplete();
    }
    return proven;
  }

  private double work() {
    SetSearcher searcher = sets.searcher(shelf, run);
    SetBoxes boxes = sets.boxes;
    for (int i = next.getAndIncrement(); i < tasks && !run.stops(); i = next.getAndIncrement()) {
      int task = tasks - 1 - i;
      if (sets.size == 2) {
        searcher.pairsEndingWith(task);
      } else if (scans && boxes != null) {
        searcher.scan(boxes, task);
      } else {
        searcher.sweep(i);
      }
      run.advance(share / tasks);
    }
    double proven = searcher.finish();
    sets.giveBack(searcher);
    return proven;
  }
}
