package io.github.swatchwright.cli.terminal;

/**
 * Lets a long search end early when it is interrupted from the keyboard, with what it has found.
 * The thread that opened this has {@value #LONGEST_MILLIS} ms to notice, to print and to end; then
 * the program ends in any case.
 */
public final class EarlyEnd implements AutoCloseable {
  private static final int LONGEST_MILLIS = 5000;

  private final Thread worker = Thread.currentThread();
  private final Thread hook = new Thread(this::waitForTheResult, "early end");
  private volatile boolean asked;

  private EarlyEnd() {}

  /** Begins to listen; close it when the search is over. */
  public static EarlyEnd whenInterrupted() {
    EarlyEnd end = new EarlyEnd();
    Runtime.getRuntime().addShutdownHook(end.hook);
    return end;
  }

  private void waitForTheResult() {
    asked = true;
    try {
      worker.join(LONGEST_MILLIS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Whether the search should end now. */
  public boolean isAsked() {
    return asked;
  }

  /** Stops listening; does nothing when the program is ending already. */
  @Override
  public void close() {
    if (!asked) {
      try {
        Runtime.getRuntime().removeShutdownHook(hook);
      } catch (IllegalStateException e) {
        asked = true;
      }
    }
  }
}
