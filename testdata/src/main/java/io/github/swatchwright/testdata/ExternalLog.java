package io.github.swatchwright.testdata;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/**
 * Counts the comparisons of this process and writes them down when it ends, where the system
 * property {@value #FILE} says; without the property nothing is written.
 */
final class ExternalLog {
  /** Names the file; each process of the tests has its own. */
  static final String FILE = "swatchwright.externalChecks";

  private static final Map<String, Tally> TALLIES = new TreeMap<>();

  static {
    Runtime.getRuntime().addShutdownHook(new Thread(ExternalLog::write, "external checks"));
  }

  private ExternalLog() {}

  /** Comparisons of one quantity with one source under one tolerance. */
  static final class Tally {
    private int count;
    private double largestError;

    private void add(double error) {
      count++;
      if (!(error <= largestError)) {
        largestError = error;
      }
    }
  }

  static synchronized void add(String source, String quantity, double tolerance, double error) {
    TALLIES
        .computeIfAbsent(source + "\t" + quantity + "\t" + tolerance, key -> new Tally())
        .add(error);
  }

  private static synchronized void write() {
    String file = System.getProperty(FILE);
    if (file == null) {
      return;
    }
    List<String> lines = new ArrayList<>();
    TALLIES.forEach(
        (key, tally) -> lines.add(key + "\t" + tally.count + "\t" + tally.largestError));
    try {
      Path path = Path.of(file).toAbsolutePath();
      Files.createDirectories(Objects.requireNonNull(path.getParent()));
      Files.write(path, lines, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException("the external checks can't be written to " + file, e);
    }
  }
}
