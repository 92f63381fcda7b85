package io.github.swatchwright.search;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Threads that do the same work at the same time, among them the thread that asks. A search uses
 * them for as long as it runs; {@link #close} ends the others.
 */
final class WorkerThreads implements AutoCloseable {
  private final int threads;
  private final @Nullable ExecutorService others;

  WorkerThreads(int threads) {
    this.threads = threads;
    others = threads == 1 ? null : Executors.newFixedThreadPool(threads - 1);
  }

  /** The result of each thread. Waits for all of them; an exception of one is thrown here. */
  <T> List<T> each(Supplier<T> work) {
    if (others == null) {
      return List.of(work.get());
    }
    try {
      List<Future<T>> futures = new ArrayList<>();
      for (int i = 1; i < threads; i++) {
        futures.add(others.submit(work::get));
      }
      List<T> results = new ArrayList<>();
      results.add(work.get());
      for (Future<T> future : futures) {
        results.add(result(future));
      }
      return results;
    } catch (ExecutionException e) {
      if (e.getCause() instanceof RuntimeException cause) {
        throw cause;
      }
      throw new IllegalStateException(e.getCause());
    }
  }

  /** Waits even when interrupted: the interrupt has stopped the search, so the wait is short. */
  private static <T> T result(Future<T> future) throws ExecutionException {
    boolean interrupted = false;
    try {
      while (true) {
        try {
          return future.get();
        } catch (InterruptedException e) {
          interrupted = true;
        }
      }
    } finally {
      if (interrupted) {
        Thread.currentThread().interrupt();
      }
    }
  }

  @Override
  public void close() {
    if (others != null) {
      others.shutdown();
    }
  }
}
