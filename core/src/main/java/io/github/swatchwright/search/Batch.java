package io.github.swatchwright.search;

import io.github.swatchwright.mix.Control;
import io.github.swatchwright.mix.Progress;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.Consumer;

/**
 * Does the same for many targets, a target a thread. The first target gets all threads to itself:
 * its search fills in what the others read.
 *
 * @param <R> what is found for one target
 */
public final class Batch<R> {
  private final Task<R> task;
  private final Control control;
  private final Consumer<R> found;
  private final long end;
  private final AtomicInteger next = new AtomicInteger();
  private final AtomicReferenceArray<R> results;
  private int done;

  /**
   * The work for one target.
   *
   * @param <R> what is found
   */
  @FunctionalInterface
  public interface Task<R> {
    /**
     * Does the work.
     *
     * @param target number of the target, from 0
     * @param control threads, time and cancelling of this target's work
     */
    R of(int target, Control control);
  }

  private Batch(int targets, Task<R> task, Control control, Consumer<R> found) {
    this.task = task;
    this.control = control;
    this.found = found;
    end = System.nanoTime() + control.longest().toNanos();
    results = new AtomicReferenceArray<>(targets);
  }

  /**
   * Does the work for all targets.
   *
   * @param targets how many there are, from 0
   * @param task the work for one
   * @param control of all of them together; once it stops the batch, no further target is begun
   * @param found receives each result as soon as it is there, one at a time, from any of the
   *     threads
   * @return the results in the order of the targets; of those alone that were begun when the batch
   *     was stopped
   */
  public static <R> List<R> run(int targets, Task<R> task, Control control, Consumer<R> found) {
    return new Batch<>(targets, task, control, found).run();
  }

  private List<R> run() {
    if (results.length() > 0) {
      if (!stops()) {
        work(next.getAndIncrement(), control.threads());
      }
      try (WorkerThreads threads = new WorkerThreads(control.threads())) {
        threads.each(this::workOn);
      }
    }
    List<R> all = new ArrayList<>();
    for (int i = 0; i < results.length(); i++) {
      if (results.get(i) != null) {
        all.add(results.get(i));
      }
    }
    return all;
  }

  private boolean stops() {
    return System.nanoTime() >= end || control.isCancelled();
  }

  private boolean workOn() {
    while (!stops()) {
      int target = next.getAndIncrement();
      if (target >= results.length()) {
        return true;
      }
      work(target, 1);
    }
    return false;
  }

  private void work(int target, int threads) {
    Duration left = Duration.ofNanos(Math.max(0, end - System.nanoTime()));
    R result =
        Objects.requireNonNull(
            task.of(
                target,
                control.withThreads(threads).withLongest(left).withProgress(Progress.UNHEARD)));
    results.set(target, result);
    report(result);
  }

  private synchronized void report(R result) {
    done++;
    found.accept(result);
    control.progress().reached((double) done / results.length());
  }
}
