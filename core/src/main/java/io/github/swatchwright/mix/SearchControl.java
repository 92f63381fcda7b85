package io.github.swatchwright.mix;

import io.github.swatchwright.argument.Require;
import java.time.Duration;
import java.util.function.BooleanSupplier;

/**
 * Threads, time limit, cancelling and progress of a search. None of it changes what a completed
 * search finds.
 *
 * @param threads how many threads work on it, 1 to 256
 * @param longest time limit, after which the search returns what it has found; {@link #UNLIMITED}
 *     for none
 * @param cancelled checked often, from any of the threads; true stops the search. Interrupting the
 *     thread that called does the same, with any number of threads: the search returns what it has
 *     found, and the thread stays interrupted
 * @param progress receives the share done; a completed search ends with 1
 */
public record SearchControl(
    int threads, Duration longest, BooleanSupplier cancelled, Progress progress) {

  /** A time limit that no search reaches; longer ones count as this one. */
  public static final Duration UNLIMITED = Duration.ofDays(365);

  /** One thread, no time limit, no progress. */
  public static final SearchControl PLAIN =
      new SearchControl(1, UNLIMITED, () -> false, Progress.UNHEARD);

  /** Refuses a number of threads out of range and a negative duration. */
  public SearchControl {
    Require.within("threads", threads, 1, 256);
    if (longest.isNegative()) {
      throw new IllegalArgumentException("longest is " + longest + ", must be 0 or more");
    }
    longest = longest.compareTo(UNLIMITED) > 0 ? UNLIMITED : longest;
  }

  /** Whether to stop: by the condition, or because this thread was interrupted. */
  public boolean isCancelled() {
    return cancelled.getAsBoolean() || Thread.currentThread().isInterrupted();
  }

  /** The same with another number of threads, 1 to 256. */
  public SearchControl withThreads(int number) {
    return new SearchControl(number, longest, cancelled, progress);
  }

  /** The same with another time limit. */
  public SearchControl withLongest(Duration time) {
    return new SearchControl(threads, time, cancelled, progress);
  }

  /** The same, stopped once the condition becomes true. */
  public SearchControl withCancelled(BooleanSupplier stop) {
    return new SearchControl(threads, longest, stop, progress);
  }

  /** The same with another receiver of the progress. */
  public SearchControl withProgress(Progress listener) {
    return new SearchControl(threads, longest, cancelled, listener);
  }
}
