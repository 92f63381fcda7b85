package io.github.swatchwright.cli;

import io.github.swatchwright.cli.photo.PhotoTagsTarget;
import io.github.swatchwright.testdata.FuzzSubject;
import io.github.swatchwright.testdata.LongFuzz;
import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;

/** A long run of spoilt pictures' tags and command lines, which are only read; a program. */
public final class CliParseFuzz {
  static final List<FuzzSubject> SUBJECTS =
      Stream.concat(Stream.of(PhotoTagsTarget.values()), Stream.of(new CommandLineTarget()))
          .toList();

  static final List<String> WORDS =
      Stream.concat(PhotoTagsTarget.WORDS.stream(), CliFuzzTarget.WORDS.stream()).toList();

  private CliParseFuzz() {}

  /**
   * Runs; ends with status 1 when it found something.
   *
   * @param args as {@link LongFuzz#run} takes them
   */
  public static void main(String[] args) throws IOException {
    System.exit(LongFuzz.run(SUBJECTS, WORDS, args) == 0 ? 0 : 1);
  }
}
