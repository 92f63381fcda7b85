package io.github.swatchwright.cli;

import io.github.swatchwright.testdata.FuzzRun;
import java.io.IOException;
import java.nio.file.Path;

/** What a coverage-guided fuzzer calls; its argument names a {@link CliFuzzTarget}, or ALL. */
public final class CliFuzzEntry {
  private static FuzzRun run = FuzzRun.of(FuzzRun.ALL, CliFuzzTarget.values());

  private CliFuzzEntry() {}

  /**
   * Writes good inputs and a dictionary to start from.
   *
   * @param args the target's name, the folder for its seeds, the file for the dictionary
   */
  public static void main(String[] args) throws IOException {
    FuzzRun.of(args[0], CliFuzzTarget.values())
        .writeSeeds(Path.of(args[1]), CliFuzzTarget.WORDS, Path.of(args[2]));
  }

  /** Chooses the target. */
  public static void fuzzerInitialize(String[] args) {
    run = FuzzRun.of(args[0], CliFuzzTarget.values());
  }

  /** Feeds it one input. */
  public static void fuzzerTestOneInput(byte[] input) {
    run.feed(input);
  }

  /** Tells what was fed. */
  public static void fuzzerTearDown() {
    System.out.println(run.report());
  }
}
