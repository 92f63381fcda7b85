package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.cli.faulty.DiskChange;
import io.github.swatchwright.cli.faulty.Faults;
import io.github.swatchwright.cli.faulty.FaultyProvider;
import io.github.swatchwright.cli.faulty.PowerCut;
import io.github.swatchwright.cli.photo.PhotoBytes;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every call to the file system, of every command that writes, fails once: each file is then the
 * old one or the whole new one. So it is when memory or the stack runs out there, when all later
 * calls fail, when somebody else writes the files in between, and when the power is cut.
 *
 * <p>A printed sheet holds the time of its making, so that two are never the same; its files go the
 * same way.
 */
class StepwiseFailureTest {
  /** In each line {@code *} stands for the folder. Old files of these names are there already. */
  private static final List<String> COMMANDS =
      List.of(
          "compare #808080 #828282 --card */a.svg --table */b.csv --notebook */n.jsonl",
          "shelf --import */in.csv --out */c.json --replace",
          "notebook */notes.jsonl --test-card 1 --measured #8A8A88 --out */cards.json",
          "predict White:2 --table */b.gpl --card */a.html --notebook */new.jsonl",
          "match #8A6B5A --max-drops 2 --paints 1 --card */a.svg --notebook */n.jsonl",
          "correct White:6,Black:2 --measured #C3C0BF --target #B4B4B4 --card */a.html",
          "ladder Black White --rungs 2 --picture */a.svg --table */b.csv",
          "coat --base #808080 --coats White:2@1:4 --card */a.html --table */b.csv",
          "sample */p.png --preview */d.png --card */a.svg --notebook */new.jsonl",
          "calibrate */white.json --out */c.json --table */b.csv --notebook */n.jsonl",
          "shelf --export */b.gpl --plot */a.svg");

  private static final List<String> WRITTEN =
      List.of(
          "a.svg",
          "b.csv",
          "n.jsonl",
          "c.json",
          "c.json.bak",
          "cards.json",
          "b.gpl",
          "a.html",
          "d.png");

  private static final byte[] THEIRS = "theirs\n".getBytes(StandardCharsets.UTF_8);
  private static final Predicate<String> IS_DRAFT = name -> name.endsWith(".draft");

  /** Written where nothing was. */
  private static final String NEW_NOTEBOOK = "new.jsonl";

  /** Runs the commands in a process whose file system is faulty; its argument is a folder. */
  static final class FaultyRuns {
    private final String folder;
    private final Map<String, byte[]> before = new TreeMap<>();
    private int runs;
    private int powerCuts;
    private String printed = "";

    private FaultyRuns(String folder) {
      this.folder = folder;
    }

    public static void main(String[] args) throws IOException {
      FaultyRuns runs = new FaultyRuns(args[0]);
      for (String command : COMMANDS) {
        runs.all(command);
      }
      System.out.println("runs " + runs.runs + ", power cuts " + runs.powerCuts);
    }

    private Run run(String command) {
      return Run.of((command + " --shelf */shelf.json").replace("*", folder).split(" ", -1));
    }

    private void all(String command) throws IOException {
      remember();
      Faults.arm(Faults.Kind.NONE, 0);
      Run good = run(command);
      check(good.status() == Main.DONE, command + ": " + good.err());
      printed = good.out();
      int calls = Faults.calls();
      checkTrace(command, Faults.trace());
      List<DiskChange> changes = Faults.changes();
      Map<String, byte[]> after = content();
      cutPower(command, changes, after);
      restore();
      for (int at = 1; at <= calls; at++) {
        fail(command, Faults.Kind.FAILS, at, calls, after);
        switch (at % 4) {
          case 0 -> intrude(command, at, after);
          case 1 -> fail(command, Faults.Kind.RUNS_OUT_OF_MEMORY, at, calls, after);
          case 2 -> fail(command, Faults.Kind.OVERFLOWS_ITS_STACK, at, calls, after);
          default -> fail(command, Faults.Kind.STAYS_DEAD, at, calls, after);
        }
      }
      // One legal run with short writes from the first call on is enough.
      fail(command, Faults.Kind.WRITES_LITTLE, 1, calls, after);
    }

    private void fail(
        String command, Faults.Kind kind, int at, int calls, Map<String, byte[]> after)
        throws IOException {
      Faults.arm(kind, at);
      Run run = run(command);
      List<String> trace = Faults.trace();
      Faults.arm(Faults.Kind.NONE, 0);
      runs++;
      String what = command + ", " + kind + " at call " + at + " of " + calls + ": " + run.err();
      boolean error =
          kind == Faults.Kind.RUNS_OUT_OF_MEMORY || kind == Faults.Kind.OVERFLOWS_ITS_STACK;
      check(error || run.status() != Main.FAULT, what);
      check(run.status() != Main.DONE || run.out().equals(printed), what + run.out());
      check(run.status() == Main.DONE || run.out().isEmpty() || error, what + run.out());
      checkFiles(what, run.status(), after, trace);
      boolean cannotClearUp = kind == Faults.Kind.STAYS_DEAD || trace.get(at - 1).startsWith("del");
      check(
          cannotClearUp || content().keySet().stream().noneMatch(IS_DRAFT), what + " left a draft");
      restore();
    }

    /** Somebody else writes all of the files while the command waits for that call. */
    private void intrude(String command, int at, Map<String, byte[]> after) throws IOException {
      Faults.armLate(at, this::writeTheirs);
      Run run = run(command);
      Faults.arm(Faults.Kind.NONE, 0);
      runs++;
      Map<String, byte[]> now = content();
      for (String name : WRITTEN) {
        byte[] bytes = bytes(now, name);
        boolean kept = name.endsWith(".bak") && Arrays.equals(bytes, bytes(before, "c.json"));
        check(
            kept
                || name.endsWith(".jsonl")
                || Arrays.equals(bytes, THEIRS)
                || Arrays.equals(bytes, bytes(after, name)),
            command + " mixed " + name + " with another's at call " + at + ": " + run.err());
      }
      restore();
    }

    private void writeTheirs() {
      Faults.arm(Faults.Kind.NONE, 0);
      for (String name : WRITTEN) {
        // A notebook is changed under its lock alone, which NotebookProcessTest looks at.
        if (name.endsWith(".jsonl")) {
          continue;
        }
        File draft = new File(folder, "their.draft");
        try (OutputStream out = new FileOutputStream(draft)) {
          out.write(THEIRS);
        } catch (IOException e) {
          throw new UncheckedIOException(e);
        }
        check(draft.renameTo(new File(folder, name)), name);
      }
    }

    /** The power is cut after each change of the disk. */
    private void cutPower(String command, List<DiskChange> changes, Map<String, byte[]> after) {
      for (int done = 0; done <= changes.size(); done++) {
        List<DiskChange> made = changes.subList(0, done);
        for (Map<String, byte[]> state : PowerCut.states(folder, before, made)) {
          powerCuts++;
          for (String name : WRITTEN) {
            byte[] bytes = bytes(state, name);
            boolean isNew = Arrays.equals(bytes, bytes(after, name));
            boolean torn = name.endsWith(".jsonl") && startsWith(bytes, bytes(before, name));
            check(
                isNew || torn || Arrays.equals(bytes, bytes(before, name)),
                command + ": a power cut leaves " + name + " between, after " + made);
          }
          check(
              done < changes.size() || sameWritten(state, after),
              command + ": a power cut after its end undoes something");
        }
      }
    }

    private static boolean sameWritten(Map<String, byte[]> state, Map<String, byte[]> after) {
      return Stream.concat(WRITTEN.stream(), Stream.of(NEW_NOTEBOOK))
          .allMatch(name -> Arrays.equals(bytes(state, name), bytes(after, name)));
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
    Files.writeString(folder.resolve("white.json"), cards());
    BufferedImage picture = new BufferedImage(24, 16, BufferedImage.TYPE_INT_RGB);
    for (int x = 0; x < 24; x++) {
      for (int y = 0; y < 16; y++) {
        picture.setRGB(x, y, x < 12 ? 0x806040 : 0x405060);
      }
    }
    Files.write(folder.resolve("p.png"), PhotoBytes.png(picture));
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
                "-XX:TieredStopAtLevel=1",
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
        .matches("runs \\d{4,}, power cuts \\d{3,}");
  }
}
