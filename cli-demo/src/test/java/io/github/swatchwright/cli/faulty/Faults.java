package io.github.swatchwright.cli.faulty;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * What goes wrong in {@link FaultyProvider}'s file system, and when. Calls are counted from the
 * moment that a fault is armed; the trace names them.
 */
public final class Faults {
  /** What happens at the chosen call. */
  public enum Kind {
    /** Nothing; calls are only counted. */
    NONE,
    /** That one call fails. */
    FAILS,
    /** That call and all later ones fail, as when the process is killed or the disk is gone. */
    STAYS_DEAD,
    /** That one call throws an {@link OutOfMemoryError}. */
    RUNS_OUT_OF_MEMORY,
    /** That one call throws a {@link StackOverflowError}. */
    OVERFLOWS_ITS_STACK,
    /** That one call is so slow that somebody else does something before it. */
    IS_LATE,
    /** From that call on, each write takes a single byte, which is legal. */
    WRITES_LITTLE
  }

  private static Kind kind = Kind.NONE;
  private static int at;
  private static int calls;
  private static Runnable meanwhile = () -> {};
  private static final List<String> TRACE = new ArrayList<>();
  private static final List<DiskChange> CHANGES = new ArrayList<>();

  private Faults() {}

  /** Arms a fault. */
  public static synchronized void arm(Kind what, int atCall) {
    kind = what;
    at = atCall;
    calls = 0;
    TRACE.clear();
    CHANGES.clear();
  }

  /** Lets somebody else do something before that call. */
  public static synchronized void armLate(int atCall, Runnable other) {
    arm(Kind.IS_LATE, atCall);
    meanwhile = other;
  }

  /** How many calls there were since. */
  public static synchronized int calls() {
    return calls;
  }

  /** The calls since, each as {@code name path}. */
  public static synchronized List<String> trace() {
    return List.copyOf(TRACE);
  }

  /** What reached the disk since, or its buffers. */
  public static synchronized List<DiskChange> changes() {
    return List.copyOf(CHANGES);
  }

  /** Notes what a call did. */
  static synchronized void changed(DiskChange change) {
    CHANGES.add(change);
  }

  /** Counts a call, and lets it fail when its time has come. */
  static synchronized void call(String name, Object path) throws IOException {
    calls++;
    TRACE.add(name + " " + path);
    boolean fails = (kind == Kind.FAILS && calls == at) || (kind == Kind.STAYS_DEAD && calls >= at);
    if (calls == at && kind == Kind.RUNS_OUT_OF_MEMORY) {
      throw new OutOfMemoryError("injected");
    }
    if (calls == at && kind == Kind.OVERFLOWS_ITS_STACK) {
      throw new StackOverflowError("injected");
    }
    if (calls == at && kind == Kind.IS_LATE) {
      meanwhile.run();
    }
    if (fails) {
      throw new IOException("injected at call " + calls + ": " + name);
    }
  }

  /** Whether a write may take a single byte only. */
  static synchronized boolean writesLittle() {
    return kind == Kind.WRITES_LITTLE && calls >= at;
  }
}
