package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.json.Notebook;
import io.github.swatchwright.json.NotebookEntry;
import io.github.swatchwright.json.ShelfJson;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Processes whose heap is too small for what they are to write. */
class OutOfMemoryTest {
  private static final int PAINTS = 10_000;

  /**
   * Appends entries to a notebook, each twice as long as the one before; prints how many it did.
   */
  static final class LongerAndLonger {
    private LongerAndLonger() {}

    public static void main(String[] args) throws IOException {
      Notebook notebook = Notebook.at(Path.of(args[0]));
      for (int count = 1; ; count *= 2) {
        String found = "{\"numbers\":[" + "0,".repeat(5_000 * count) + "0]}";
        notebook.append(new NotebookEntry(Instant.EPOCH, "1", "s", "h", List.of("match"), found));
        System.out.println(count);
      }
    }
  }

  /** What a process did. */
  private record Ended(int status, String out) {}

  private static Ended run(String heap, Class<?> main, String... args) throws Exception {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-Xmx" + heap, "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1"));
    command.addAll(List.of("-cp", System.getProperty("java.class.path"), main.getName()));
    command.addAll(List.of(args));
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    return new Ended(process.waitFor(), out);
  }

  private static String manyPaints() {
    return IntStream.range(0, PAINTS)
        .mapToObj(i -> "Paint %d,#%06X,acrylic".formatted(i, i * 1601))
        .collect(Collectors.joining("\n", "name,srgb,medium\n", "\n"));
  }

  @Test
  void anExportIsTheOldFileOrAllOfTheNewOne(@TempDir Path folder) throws Exception {
    Path csv = Files.writeString(folder.resolve("many.csv"), manyPaints());
    Path out = Files.createDirectory(folder.resolve("out")).resolve("many.json");
    int kept = 0;
    int replaced = 0;
    // From where reading fails to where everything fits; in between, some step of writing fails.
    for (int megabytes : new int[] {8, 32, 128, 256}) {
      Files.writeString(out, "old");
      Ended ended =
          run(
              megabytes + "m",
              Main.class,
              "shelf",
              "--import",
              csv.toString(),
              "--export",
              out.toString());
      if (Files.size(out) == "old".length()) {
        kept++;
        assertThat(ended.out()).contains("OutOfMemoryError");
        assertThat(ended.status()).isNotZero();
      } else {
        // Memory may still run out after the file was written.
        replaced++;
        assertThat(ShelfJson.read(out).paints()).hasSize(PAINTS);
      }
      assertThat(out.getParent()).isDirectoryNotContaining(other -> !other.equals(out));
    }
    assertThat(kept).isPositive();
    assertThat(replaced).isPositive();
  }

  @Test
  void aNotebookKeepsWhatWasWrittenBefore(@TempDir Path folder) throws Exception {
    Path file = folder.resolve("bench.jsonl");
    Ended ended = run("16m", LongerAndLonger.class, file.toString());
    long appended = ended.out().lines().filter(line -> line.matches("\\d+")).count();
    assertThat(ended.out()).contains("OutOfMemoryError");
    assertThat(appended).isGreaterThan(3);
    Notebook.Contents contents = Notebook.at(file).read();
    assertThat(contents.entries()).hasSize((int) appended);
    assertThat(contents.setAside()).isEmpty();
  }
}
