package io.github.swatchwright.testdata;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Prints every comparison with the outside world that the tests made, as a table: source, quantity,
 * how many figures, the tolerance and the largest error found.
 */
public final class ExternalReport {
  private ExternalReport() {}

  /**
   * Prints the table to standard output.
   *
   * @param args the folders that the test processes wrote to
   */
  public static void main(String[] args) throws IOException {
    List<Path> folders = Arrays.stream(args).map(Path::of).toList();
    print(folders, new PrintStream(System.out, true, StandardCharsets.UTF_8));
  }

  static void print(List<Path> folders, PrintStream out) throws IOException {
    TreeMap<String, double[]> rows = new TreeMap<>();
    for (Path folder : folders) {
      for (String line : lines(folder)) {
        String[] cells = line.split("\t", -1);
        String key = "| " + cells[0] + " | " + cells[1] + " | ";
        double[] row = rows.computeIfAbsent(key + cells[2], unused -> new double[] {0, 0, 0});
        row[0] += Double.parseDouble(cells[3]);
        row[1] = Double.parseDouble(cells[2]);
        row[2] = Math.max(row[2], Double.parseDouble(cells[4]));
      }
    }
    if (rows.isEmpty()) {
      throw new IOException("no external check is written down in " + folders);
    }
    out.println("| source | what | figures | tolerance | largest error |");
    out.println("|---|---|---|---|---|");
    rows.forEach(
        (key, row) ->
            out.printf(
                Locale.ROOT,
                "%s%.0f | %.2g | %.2g |%n",
                key.substring(0, key.lastIndexOf("| ") + 2),
                row[0],
                row[1],
                row[2]));
  }

  private static List<String> lines(Path folder) throws IOException {
    List<String> lines = new ArrayList<>();
    if (Files.isDirectory(folder)) {
      try (Stream<Path> files = Files.list(folder)) {
        for (Path file : files.sorted().toList()) {
          lines.addAll(Files.readAllLines(file, StandardCharsets.UTF_8));
        }
      }
    }
    return lines;
  }
}
