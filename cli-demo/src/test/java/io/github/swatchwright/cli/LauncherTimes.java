package io.github.swatchwright.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * How long whole commands take, from typing to the last line. Its main method, run in {@code
 * cli-demo} after the jar was built, prints the table of {@code benchmarks.md}: medians of {@value
 * #RUNS} runs with kept classes, beside an empty program and beside the same with other flags. The
 * ways take turns, so that a busy moment of the machine meets all of them.
 */
final class LauncherTimes {
  private static final int RUNS = 15;
  private static final String JAVA =
      Path.of(System.getProperty("java.home"), "bin", "java").toString();
  private static final String KEPT = "-XX:SharedArchiveFile=target/swatchwright.archive";
  private static final String[] TARGETS = {"#6E5A3C", "#406080", "#8A4B2A"};

  private LauncherTimes() {}

  /** An empty Java program. */
  static final class Empty {
    private Empty() {}

    /** Does nothing. */
    public static void main(String[] args) {}
  }

  /** Prints the table; the number of runs may be given. */
  public static void main(String[] args) throws IOException, InterruptedException {
    int runs = args.length == 0 ? RUNS : Integer.parseInt(args[0]);
    Path folder = Files.createTempDirectory("times");
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    out.println(
        "| command | launcher, ms | times the empty program | first compiler alone | all |");
    out.println("|---|---|---|---|---|");
    for (Map.Entry<String, List<String>> command : commands(folder).entrySet()) {
      double[][] times = new double[4][runs];
      for (int run = -1; run < runs; run++) {
        List<List<String>> ways = ways(command.getValue());
        for (int way = 0; way < ways.size(); way++) {
          double time = time(ways.get(way));
          if (run >= 0) {
            times[way][run] = time;
          }
        }
      }
      double[] medians = Arrays.stream(times).mapToDouble(LauncherTimes::median).toArray();
      out.printf(
          Locale.ROOT,
          "| %s | %.0f | %.1f | %.0f | %.0f |%n",
          command.getKey(),
          medians[1],
          medians[1] / medians[0],
          medians[2],
          medians[3]);
    }
  }

  /** The empty program, the launcher, and the jar with other flags. */
  private static List<List<String>> ways(List<String> command) {
    List<String> jar = List.of("-Xmx512m", "-XX:+UseSerialGC", "-jar", "target/swatchwright.jar");
    return List.of(
        List.of(JAVA, "-XX:+UseSerialGC", "-cp", "target/test-classes", Empty.class.getName()),
        joined(List.of("./swatchwright"), command),
        joined(joined(List.of(JAVA, KEPT, "-XX:TieredStopAtLevel=1"), jar), command),
        joined(joined(List.of(JAVA, KEPT), jar), command));
  }

  private static List<String> joined(List<String> first, List<String> second) {
    List<String> all = new ArrayList<>(first);
    all.addAll(second);
    return Collections.unmodifiableList(all);
  }

  private static Map<String, List<String>> commands(Path folder) throws IOException {
    Map<String, List<String>> commands = new LinkedHashMap<>();
    commands.put("`match '#8A4B2A'`", List.of("match", "#8A4B2A"));
    commands.put("`compare '#8A4B2A' '#7A4B2A'`", List.of("compare", "#8A4B2A", "#7A4B2A"));
    commands.put(
        "`ladder '#C8692B' '#2E1D15' --separate`",
        List.of("ladder", "#C8692B", "#2E1D15", "--separate"));
    commands.put("`ladder '#C8642A' '#4A3226'`", List.of("ladder", "#C8642A", "#4A3226"));
    commands.put("`shelf`", List.of("shelf"));
    for (int paints : new int[] {28, 60, 120, 300}) {
      Path shelf = folder.resolve(paints + ".json");
      Files.writeString(shelf, readyMixed(paints));
      for (String target : TARGETS) {
        commands.put(
            "`match '" + target + "' --max-drops 10`, " + paints + " paints",
            List.of("match", target, "--max-drops", "10", "--shelf", shelf.toString()));
      }
    }
    return commands;
  }

  /** A shelf of ready-mixed paints of any colour, with their contrast ratios. */
  private static String readyMixed(int paints) {
    Random random = new Random(paints);
    List<String> all =
        IntStream.range(0, paints)
            .mapToObj(
                i ->
                    String.format(
                        Locale.ROOT,
                        "{\"name\":\"Paint %d\",\"medium\":\"acrylic\",\"make\":\"ready-mixed\","
                            + "\"masstone\":{\"srgb\":\"#%02X%02X%02X\"},"
                            + "\"hiding\":{\"contrastRatio\":%.3f}}",
                        i,
                        30 + random.nextInt(210),
                        30 + random.nextInt(200),
                        25 + random.nextInt(195),
                        0.88 + 0.11 * random.nextDouble()))
            .toList();
    return "{\"format\":\"swatchwright-shelf\",\"version\":1,\"name\":\"Ready-mixed\",\"paints\":["
        + String.join(",", all)
        + "]}";
  }

  private static double time(List<String> command) throws IOException, InterruptedException {
    long start = System.nanoTime();
    Process process =
        new ProcessBuilder(command)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    int status = process.waitFor();
    if (status != 0) {
      throw new IllegalStateException(command + " ended with " + status);
    }
    return (System.nanoTime() - start) / 1e6;
  }

  private static double median(double[] times) {
    double[] sorted = times.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }
}
