package io.github.swatchwright.cli;

import io.github.swatchwright.cli.faulty.DiskChange;
import io.github.swatchwright.cli.faulty.Faults;
import io.github.swatchwright.cli.faulty.PowerCut;
import java.io.File;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Runs the commands in a process whose file system is faulty; its arguments are a folder and how
 * many calls to go on by.
 */
final class FaultyRuns {
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
          "plan */plan.json --table */b.csv --card */a.html",
          "reach #808080 --catalogue */shelf.json --max-drops 2 --paints 1 --table */b.csv",
          "shelf --export */b.gpl --plot */a.svg");

  /** Of that many first commands every call fails, of the others only some. */
  private static final int ALWAYS_ALL = 4;

  static final List<String> WRITTEN =
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

  /** Written where nothing was. */
  private static final String NEW_NOTEBOOK = "new.jsonl";

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
      runs.all(command, COMMANDS.indexOf(command) < ALWAYS_ALL ? 1 : Integer.parseInt(args[1]));
    }
    System.out.println("runs " + runs.runs + ", power cuts " + runs.powerCuts);
  }

  private Run run(String command) {
    return Run.of((command + " --shelf */shelf.json").replace("*", folder).split(" ", -1));
  }

  private void all(String command, int step) throws IOException {
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
    for (int at = 1; at <= calls; at += step) {
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

  private void fail(String command, Faults.Kind kind, int at, int calls, Map<String, byte[]> after)
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
        cannotClearUp || content().keySet().stream().noneMatch(FaultyRuns::isDraft),
        what + " left a draft");
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
      check(old || isNew || torn, what + " left " + name + " between\n" + String.join("\n", trace));
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

  /** What outlives a power cut: the draft is forced before it takes its place, the folder after. */
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

  private static boolean isDraft(String name) {
    return name.endsWith(".draft");
  }
}
