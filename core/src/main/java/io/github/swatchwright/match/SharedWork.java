package io.github.swatchwright.match;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Supplier;

/**
 * The same work on several threads at once, one of them the caller's.
 *
 * @param threads how many
 * @param work what each does
 */
record SharedWork<T>(int threads, Supplier<T> work) {

  /** Waits for all; what one of them throws is thrown. */
  List<T> results() {
    if (threads == 1) {
      return List.of(work.get());
    }
    ExecutorService others = Executors.newFixedThreadPool(threads - 1);
    try {
      List<Future<T>> futures = new ArrayList<>();
      for (int i = 1; i < threads; i++) {
        futures.add(others.submit(work::get));
      }
      List<T> results = new ArrayList<>();
      results.add(work.get());
      for (Future<T> future : futures) {
        results.add(future.get());
      }
      return results;
    } catch (ExecutionException e) {
      if (e.getCause() instanceof RuntimeException cause) {
        throw cause;
      }
      throw new IllegalStateException(e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while a search was under way", e);
    } finally {
      others.shutdown();
    }
  }
}
