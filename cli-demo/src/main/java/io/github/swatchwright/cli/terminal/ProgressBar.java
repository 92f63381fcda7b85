package io.github.swatchwright.cli.terminal;

import io.github.swatchwright.mix.Progress;
import java.io.PrintStream;
import java.util.Locale;
import java.util.function.LongSupplier;

/**
 * A bar on a terminal that shows how far a long call has come. It comes up after half a second,
 * moves ten times a second, and is gone when it is closed.
 */
public final class ProgressBar implements Progress, AutoCloseable {
  private static final int CELLS = 30;
  private static final long FIRST_AFTER = 500_000_000;
  private static final long EVERY = 100_000_000;
  private static final String CLEAR = "\r\u001B[K";

  private final PrintStream terminal;
  private final LongSupplier nanoTime;
  private long next;
  private boolean shown;

  /**
   * A bar.
   *
   * @param terminal where to draw it
   * @param nanoTime the time in nanoseconds from any start
   */
  public ProgressBar(PrintStream terminal, LongSupplier nanoTime) {
    this.terminal = terminal;
    this.nanoTime = nanoTime;
    this.next = nanoTime.getAsLong() + FIRST_AFTER;
  }

  @Override
  public synchronized void reached(double share) {
    long now = nanoTime.getAsLong();
    if (now < next) {
      return;
    }
    next = now + EVERY;
    shown = true;
    int full = (int) (CELLS * share);
    terminal.printf(
        Locale.ROOT, "\r[%s%s] %3.0f %%", "#".repeat(full), " ".repeat(CELLS - full), 100 * share);
    terminal.flush();
  }

  @Override
  public synchronized void close() {
    if (shown) {
      terminal.print(CLEAR);
      terminal.flush();
    }
  }
}
