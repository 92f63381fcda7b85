package io.github.swatchwright.difference;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/** Reads the rows of a comma-separated table of reference figures; # starts a comment. */
final class Fixture {
  private Fixture() {}

  /** All rows as numbers, without comments and the line of column names. */
  static List<double[]> rows(String file) {
    try (InputStream stream =
            Objects.requireNonNull(
                Fixture.class.getResourceAsStream("/io/github/swatchwright/testdata/" + file),
                file);
        BufferedReader reader =
            new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
      return reader
          .lines()
          .filter(line -> !line.startsWith("#"))
          .skip(1)
          .map(line -> Arrays.stream(line.split(",")).mapToDouble(Double::parseDouble).toArray())
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
