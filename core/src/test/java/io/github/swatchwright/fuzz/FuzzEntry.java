package io.github.swatchwright.fuzz;

/** What a coverage-guided fuzzer calls; its argument names a {@link FuzzTarget}. */
public final class FuzzEntry {
  private static FuzzTarget target = FuzzTarget.SHELF;

  private FuzzEntry() {}

  /** Chooses the target. */
  public static void fuzzerInitialize(String[] args) {
    target = FuzzTarget.valueOf(args[0]);
  }

  /** Feeds it one input. */
  public static void fuzzerTestOneInput(byte[] input) {
    target.feed(input);
  }
}
