package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.cli.faulty.Faults;
import io.github.swatchwright.cli.faulty.FaultyProvider;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every call to the file system, of every kind of file that commands write, fails once: each file
 * is then the old one or the whole new one.
 */
class StepwiseFailureTest {
  /** In each line {@code *} stands for the folder. Old files of these names are there already. */
  private static final List<String> COMMANDS =
      List.of(
          "compare #808080 #828282 --card */a.svg --table */b.csv --notebook */n.jsonl",
          "shelf --import */in.csv --out */c.json --replace",
          "notebook */notes.jsonl --test-card 1 --measured #8A8A88 --out */cards.json",
          "predict White:2 --table */b.gpl --card */a.html");

  private static final List<String> WRITTEN =
      List.of("a.svg", "b.csv", "n.jsonl", "c.json", "c.json.bak", "cards.json", "b.gpl", "a.html");

  /** Runs the commands in a process whose file system is faulty; its argument is a folder. */
  static final class FaultyRuns {
    private final String folder;
    private final Map<String, byte[]> before = new TreeMap<>();
    private int runs;

    private FaultyRuns(String folder) {
      this.folder = folder;
    }

    public static void main(String[] args) throws IOException {
      FaultyRuns runs = new FaultyRuns(args[0]);
      for (String command : COMMANDS) {
        runs.all(command);
      }
      System.out.println("runs " + runs.runs);
    }

    private Run run(String command) {
      return Run.of((command + " --shelf */shelf.json").replace("*", folder).split(" ", -1));
    }

    private void all(String command) throws IOException {
      remember();
      Faults.arm(Faults.Kind.NONE, 0);
      Run good = run(command);
      check(good.status() == Main.DONE, command + ": " + good.err());
      int calls = Faults.calls();
      checkTrace(command, Faults.trace());
      Map<String, byte[]> after = content();
      restore();
      for (Faults.Kind kind :
          List.of(Faults.Kind.FAILS, Faults.Kind.STAYS_DEAD, Faults.Kind.WRITES_LITTLE)) {
        // One legal run with short writes from the first call on is enough.
        for (int at = kind == Faults.Kind.WRITES_LITTLE ? calls : 1; at <= calls; at++) {
          Faults.arm(kind, kind == Faults.Kind.WRITES_LITTLE ? 1 : at);
          Run run = run(command);
          List<String> trace = Faults.trace();
          Faults.arm(Faults.Kind.NONE, 0);
          runs++;
          String what =
              command + ", " + kind + " at call " + at + " of " + calls + ": " + run.err();
          check(run.status() != Main.FAULT, what);
          check(run.status() == Main.REFUSED || run.out().equals(good.out()), what + run.out());
          checkFiles(what, run.status(), after, trace);
          restore();
        }
      }
    }

    /** Old or new, and nothing left behind by a process that could still clear up. */
    private void checkFiles(String what, int status, Map<String, byte[]> after, List<String> trace)
        throws IOException {
      Map<String, byte[]> now = content();
      for (String name : WRITTEN) {
        boolean old = Arrays.equals(bytes(now, name), bytes(before, name));
        boolean isNew = Arrays.equals(bytes(now, name), bytes(after, name));
        boolean torn = name.endsWith(".jsonl") && startsWith(bytes(now, name), bytes(before, name));
        check(
            old || isNew || torn, what + " left " + name + " between\n" + String.join("\n", trace));
        check(
            status != Main.DONE || isNew || name.endsWith(".jsonl"),
            what + " is done, but " + name + " is old");
      }
    }

    private static byte[] bytes(Map<String, byte[]> content, String name) {
      return content.getOrDefault(name, new byte[0]);
    }

    /** A notebook that was torn keeps all that it held; its readers set the torn line aside. */
    private static boolean startsWith(byte[] now, byte[] old) {
      return now.length >= old.length && Arrays.equals(Arrays.copyOf(now, old.length), old);
    }

    /**
     * What outlives a power cut: the draft is forced before it takes its place, the folder after.
     */
    private static void checkTrace(String command, List<String> trace) {
      for (int i = 0; i < trace.size(); i++) {
        if (trace.get(i).startsWith("move ")) {
          List<String> earlier = trace.subList(0, i);
          List<String> later = trace.subList(i, trace.size());
          check(
              earlier.stream().anyMatch(call -> call.matches("force .*\\.draft")),
              command + " doesn't force its draft");
          String moved = trace.get(i).substring("move ".length());
          String folder = moved.substring(0, moved.lastIndexOf('/'));
          check(
              later.stream().anyMatch(call -> call.replaceAll("/$", "").equals("force " + folder)),
              command + " doesn't force " + folder + "\n" + String.join("\n", later));
        }
      }
      check(trace.stream().anyMatch(call -> call.startsWith("move ")), command + " writes nothing");
    }

    private static void check(boolean holds, String what) {
      if (!holds) {
        throw new AssertionError(what);
      }
    }

    private void remember() throws IOException {
      before.clear();
      before.putAll(content());
    }

    private Map<String, byte[]> content() throws IOException {
      Map<String, byte[]> content = new TreeMap<>();
      for (File file : new File(folder).listFiles()) {
        content.put(file.getName(), Files.readAllBytes(file.toPath()));
      }
      return content;
    }

    private void restore() throws IOException {
      for (File file : new File(folder).listFiles()) {
        byte[] old = before.get(file.getName());
        if (old == null) {
          Files.delete(file.toPath());
        } else {
          Files.write(file.toPath(), old);
        }
      }
    }
  }

  private static void prepare(Path folder) throws IOException {
    Files.copy(Path.of(Run.fiveShelf()), folder.resolve("shelf.json"));
    for (String name : WRITTEN) {
      Files.writeString(folder.resolve(name), name.equals("cards.json") ? cards() : "old\n");
    }
    Files.writeString(folder.resolve("in.csv"), "name,medium,srgb\nGrey,oil,#808080\n");
    Run.of(
        "predict",
        "White:3, Black:1",
        "--shelf",
        Run.fiveShelf(),
        "--notebook",
        folder.resolve("notes.jsonl").toString());
  }

  private static String cards() {
    return "{\"format\":\"swatchwright-cards\",\"version\":1,\"cards\":["
        + "{\"parts\":{\"White\":5,\"Black\":1},\"measured\":{\"srgb\":\"#808080\"}}]}";
  }

  @Test
  void leavesOldOrNewFilesAtEveryCall(@TempDir Path folder) throws Exception {
    prepare(folder);
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Djava.nio.file.spi.DefaultFileSystemProvider=" + FaultyProvider.class.getName(),
                "-cp",
                System.getProperty("java.class.path"),
                FaultyRuns.class.getName(),
                folder.toString())
            .redirectErrorStream(true)
            .start();
    String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(out).isZero();
    assertThat(out.lines().filter(line -> line.startsWith("runs ")).collect(Collectors.joining()))
        .matches("runs \\d{3,}");
  }
}
