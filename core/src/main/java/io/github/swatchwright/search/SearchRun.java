package io.github.swatchwright.search;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.mix.Control;

/** One search under way, shared by its threads. */
final class SearchRun {
  /** The smallest step of progress that is reported. */
  private static final double STEP = 0.001;

  final Lab target;
  final TargetMap map;
  final BestCandidates best;
  private final Control control;
  private final long start = System.nanoTime();
  private final long longest;
  private volatile boolean stopped;

  /** Only recipes up to here are looked for in the present pass. */
  private volatile double cap;

  private double done;
  private double lastReported = -1;

  SearchRun(TargetMap map, BestCandidates best, Control control) {
    target = map.target();
    this.map = map;
    this.best = best;
    this.control = control;
    longest = control.longest().toNanos();
  }

  void setCap(double deltaE00) {
    cap = deltaE00;
  }

  /** Recipes above don't matter now. */
  double limit() {
    return Math.min(cap, best.limit());
  }

  /** Whether to end at once; asks the caller's conditions. */
  boolean stops() {
    if (!stopped && (System.nanoTime() - start >= longest || control.isCancelled())) {
      stopped = true;
    }
    return stopped;
  }

  boolean isStopped() {
    return stopped;
  }

  /** Counts a share of the whole as done. */
  synchronized void advance(double share) {
    done += share;
    report(Math.min(done, 1 - STEP));
  }

  /** Reports that all is done. */
  synchronized void finish() {
    report(1);
  }

  private void report(double share) {
    if (share >= lastReported + STEP || (share == 1 && lastReported < 1)) {
      lastReported = share;
      control.progress().reached(share);
    }
  }
}
