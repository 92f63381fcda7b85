package io.github.swatchwright.search;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.mix.Progress;
import io.github.swatchwright.mix.SearchControl;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReferenceArray;

/** Searches for many targets on one shelf; each target is one thread's. */
final class SearchBatch {
  private final CompiledShelf shelf;
  private final List<Lab> targets;
  private final int count;
  private final SearchControl control;
  private final long end;
  private final AtomicInteger next = new AtomicInteger();
  private final AtomicReferenceArray<SearchOutcome> outcomes;
  private int done;

  SearchBatch(CompiledShelf shelf, List<Lab> targets, int count, SearchControl control) {
    this.shelf = shelf;
    this.targets = List.copyOf(targets);
    this.count = count;
    this.control = control;
    end = System.nanoTime() + control.longest().toNanos();
    outcomes = new AtomicReferenceArray<>(targets.size());
  }

  List<SearchOutcome> run() {
    if (!targets.isEmpty()) {
      // The first search fills in what the others read, on all threads.
      search(next.getAndIncrement(), control.threads());
      try (WorkerThreads threads = new WorkerThreads(control.threads())) {
        threads.each(this::work);
      }
    }
    List<SearchOutcome> all = new ArrayList<>();
    for (int i = 0; i < targets.size(); i++) {
      all.add(outcomes.get(i));
    }
    return all;
  }

  private boolean work() {
    for (int i = next.getAndIncrement(); i < targets.size(); i = next.getAndIncrement()) {
      search(i, 1);
    }
    return true;
  }

  private void search(int target, int threads) {
    Duration left = Duration.ofNanos(Math.max(0, end - System.nanoTime()));
    SearchControl one =
        control.withThreads(threads).withLongest(left).withProgress(Progress.UNHEARD);
    outcomes.set(target, shelf.search(targets.get(target), count, one));
    tell();
  }

  private synchronized void tell() {
    done++;
    control.progress().reached((double) done / targets.size());
  }
}
