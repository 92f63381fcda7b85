package io.github.swatchwright.fuzz;

import io.github.swatchwright.testdata.LongFuzz;
import java.io.IOException;
import java.util.List;

/** A long run of spoilt inputs over every {@link ParseTarget}, as a program. */
public final class ParseFuzz {
  private ParseFuzz() {}

  /**
   * Runs; ends with status 1 when it found something.
   *
   * @param args as {@link LongFuzz#run} takes them
   */
  public static void main(String[] args) throws IOException {
    int findings = LongFuzz.run(List.of(ParseTarget.values()), FuzzTarget.WORDS, args);
    System.exit(findings == 0 ? 0 : 1);
  }
}
