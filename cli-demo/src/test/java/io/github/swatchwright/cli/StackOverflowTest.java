package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Commands that are begun so deep in the stack that it ends in the middle of them. */
class StackOverflowTest {
  private static final int RUNS = 60;

  /** A command takes about 3 % of the stack, and begins in the last 4.5 %. */
  private static final int REACH = 22;

  /** In a process of its own, since a class whose making overflows stays broken. */
  static final class DeeperAndDeeper {
    private final Path folder;
    private final String[] command;
    private int done;
    private int overflowed;

    private DeeperAndDeeper(Path folder) {
      this.folder = folder;
      this.command =
          new String[] {
            "compare",
            "#808080",
            "#828282",
            "--shelf",
            Run.fiveShelf(),
            "--table",
            folder.resolve("b.csv").toString(),
            "--card",
            folder.resolve("a.svg").toString()
          };
    }

    public static void main(String[] args) throws IOException {
      DeeperAndDeeper runs = new DeeperAndDeeper(Path.of(args[0]));
      runs.all();
      System.out.println("done " + runs.done + ", overflowed " + runs.overflowed);
    }

    private void all() throws IOException {
      Run.of(command);
      String table = read("b.csv");
      String card = read("a.svg");
      int deepest = deepest();
      for (int run = 1; run <= RUNS; run++) {
        Files.writeString(folder.resolve("b.csv"), "old");
        Files.writeString(folder.resolve("a.svg"), "old");
        begin(deepest - deepest * run / (REACH * RUNS));
        check(read("b.csv"), table);
        check(read("a.svg"), card);
      }
    }

    private static int deepest() {
      int[] depth = new int[1];
      try {
        descend(Integer.MAX_VALUE, () -> {}, depth);
      } catch (StackOverflowError e) {
        return depth[0];
      }
      throw new AssertionError("the stack has no end");
    }

    private static void descend(int levels, Runnable then, int[] depth) {
      depth[0]++;
      if (levels > 0) {
        descend(levels - 1, then, depth);
      } else {
        then.run();
      }
    }

    private void begin(int levels) {
      try {
        descend(levels, this::once, new int[1]);
      } catch (StackOverflowError e) {
        overflowed++;
      }
    }

    private void once() {
      Run run = Run.of(command);
      if (run.status() == Main.DONE) {
        done++;
      } else {
        overflowed++;
      }
    }

    private String read(String name) throws IOException {
      return Files.readString(folder.resolve(name));
    }

    private static void check(String now, String whole) {
      if (!now.equals("old") && !now.equals(whole)) {
        throw new AssertionError("between: " + now);
      }
    }
  }

  @Test
  void filesAreOldOrNewWhereverItEnds(@TempDir Path folder) throws Exception {
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                // Interpreted: compiled frames have other sizes, and the stack would end elsewhere.
                "-Xint",
                "-Xss600k",
                "-cp",
                System.getProperty("java.class.path"),
                DeeperAndDeeper.class.getName(),
                folder.toString())
            .redirectErrorStream(true)
            .start();
    String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(out).isZero();
    // Some commands end well, and many don't.
    assertThat(out).matches("(?s).*done [1-9]\\d+, overflowed [1-9]\\d+\\s*");
  }
}
