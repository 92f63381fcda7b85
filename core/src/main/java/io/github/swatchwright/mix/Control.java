package io.github.swatchwright.mix;

import io.github.swatchwright.argument.Require;
import java.time.Duration;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Threads, time limit, cancelling and progress of work that takes long: matching, calibrating,
 * planning, advice. None of it changes what completed work finds.
 *
 * <p>Work is stopped by its time limit, by the condition, or by interrupting the thread that called
 * it, which then stays interrupted. Stopped work that has found something already, such as {@code
 * Matcher.match}, returns that and says that it isn't complete; work whose half would mean nothing,
 * such as {@code Calibration.of}, throws a {@link CancellationException}. Each method says which.
 *
 * @param threads how many threads work on it, 1 to 256; they are its own, not those of the common
 *     pool
 * @param longest time limit; {@link #UNLIMITED} for none
 * @param cancelled checked often, from any of the threads; true stops the work
 * @param progress receives the share done; completed work ends with 1
 */
public record Control(int threads, Duration longest, BooleanSupplier cancelled, Progress progress) {

  /** A time limit that no work reaches; longer ones count as this one. */
  public static final Duration UNLIMITED = Duration.ofDays(365);

  /** How often a waiting caller asks whether to stop. */
  private static final int POLL_MILLIS = 10;

  /** One thread, no time limit, no progress. */
  public static final Control PLAIN = new Control(1, UNLIMITED, () -> false, Progress.UNHEARD);

  /** Refuses a number of threads out of range and a negative duration. */
  public Control {
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

  /**
   * Goes on, unless the work is to stop.
   *
   * @throws CancellationException when it is
   */
  public void requireGoingOn() {
    if (isCancelled()) {
      throw stopped();
    }
  }

  /** The same with its clock running: cancelled as well once the time limit is over, from now. */
  public Control started() {
    long start = System.nanoTime();
    long limit = longest.toNanos();
    return withLongest(UNLIMITED)
        .withCancelled(() -> cancelled.getAsBoolean() || System.nanoTime() - start >= limit);
  }

  /**
   * Does work on threads of its own, which parallel streams within it use too. Once it is to stop,
   * this returns within {@value #POLL_MILLIS} ms or little more, whatever the work is at; what it
   * has begun ends in the background, unheard.
   *
   * @param work receives this control with its clock running, see {@link #started}
   * @return what the work returns
   * @throws CancellationException when it was stopped
   */
  public <R> R onOwnThreads(Function<Control, R> work) {
    AtomicBoolean stopped = new AtomicBoolean();
    Control outside = started();
    Control inside =
        outside
            .withCancelled(() -> stopped.get() || outside.cancelled.getAsBoolean())
            .withProgress(new HeardUntil(stopped, progress));
    FutureTask<R> task = new FutureTask<>(() -> work.apply(inside));
    ForkJoinPool pool = new ForkJoinPool(threads);
    pool.execute(task);
    try {
      while (true) {
        outside.requireGoingOn();
        try {
          return task.get(POLL_MILLIS, TimeUnit.MILLISECONDS);
        } catch (TimeoutException e) {
          // Asks again whether to go on.
        }
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw stopped();
    } catch (ExecutionException e) {
      throw unwrapped(e.getCause());
    } finally {
      stopped.set(true);
      pool.shutdown();
    }
  }

  private static RuntimeException unwrapped(@Nullable Throwable failure) {
    if (failure instanceof Error error) {
      throw error;
    }
    return failure instanceof RuntimeException exception
        ? exception
        : new IllegalStateException(failure);
  }

  private static CancellationException stopped() {
    return new CancellationException("stopped before it was complete");
  }

  /**
   * Passes progress on as long as the caller waits for it.
   *
   * @param stopped true once nobody does
   * @param listener receives the progress
   */
  private record HeardUntil(AtomicBoolean stopped, Progress listener) implements Progress {
    @Override
    public void reached(double share) {
      if (!stopped.get()) {
        listener.reached(share);
      }
    }
  }

  /** The same with another number of threads, 1 to 256. */
  public Control withThreads(int number) {
    return new Control(number, longest, cancelled, progress);
  }

  /** The same with another time limit. */
  public Control withLongest(Duration time) {
    return new Control(threads, time, cancelled, progress);
  }

  /** The same, stopped once the condition becomes true. */
  public Control withCancelled(BooleanSupplier stop) {
    return new Control(threads, longest, stop, progress);
  }

  /** The same with another receiver of the progress. */
  public Control withProgress(Progress listener) {
    return new Control(threads, longest, cancelled, listener);
  }
}
