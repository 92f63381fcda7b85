package io.github.swatchwright.cli.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * The files that a command writes. Nothing changes on the disk before {@link #commit}: a command
 * that is refused halfway has written nothing.
 *
 * <p>Each file is then the old one or the whole new one, whatever fails: all drafts are complete
 * and on the disk before the first takes the place of an old file. Notebooks come last, so that
 * they tell only of what was done. For use by one thread.
 */
public final class FileWrites implements AutoCloseable {
  private final List<Pending> pending = new ArrayList<>();
  private final List<Growth> grown = new ArrayList<>();
  private final List<FolderLock> locks = new ArrayList<>();

  private record Pending(String argument, Path path, ByteBuffer content) {}

  private record Growth(String argument, Path path, Appending appending) {}

  /** Adds to the end of a file. */
  @FunctionalInterface
  public interface Appending {
    /** Appends to the file at that path. */
    void append(Path path) throws IOException;
  }

  /**
   * Writes a text at the end of the command.
   *
   * @param argument what the command line calls the file, for messages
   * @param file where to
   * @param text what, written as UTF-8
   */
  public void write(String argument, NewFile file, String text) {
    write(argument, file, text.getBytes(StandardCharsets.UTF_8));
  }

  /** The same with bytes, which must not be changed afterwards. */
  public void write(String argument, NewFile file, byte[] content) {
    pending.add(new Pending(argument, file.path(), ByteBuffer.wrap(content)));
  }

  /** Lets a notebook grow at the end of the command, when all files are written. */
  public void append(String argument, NotebookFile file, Appending appending) {
    grown.add(new Growth(argument, file.path(), appending));
  }

  /**
   * Keeps other processes from changing the file until this is closed, so that what is read now is
   * still there when it is written. Only those that ask for the same lock wait.
   *
   * @throws IllegalArgumentException when there can be no lock in its folder
   */
  public void lock(String argument, NewFile file) {
    Path target = TargetFile.of(argument, file.path()).file();
    try {
      locks.add(FolderLock.of(target.resolveSibling("")));
    } catch (IOException e) {
      throw new IllegalArgumentException(
          argument + ": " + file + " can't be locked: " + FileReason.of(e), e);
    }
  }

  /**
   * Writes everything.
   *
   * @throws IllegalArgumentException when a file can't be written; it is then as it was before
   */
  public void commit() {
    List<Draft> drafts = new ArrayList<>();
    try {
      for (Pending next : pending) {
        Draft draft = Draft.beside(TargetFile.of(next.argument, next.path).file());
        drafts.add(draft);
        attempt(next.argument, next.path, () -> draft.write(next.content));
      }
      for (int i = 0; i < drafts.size(); i++) {
        Draft draft = drafts.get(i);
        attempt(pending.get(i).argument, pending.get(i).path, draft::publish);
        attempt(pending.get(i).argument, pending.get(i).path, draft::forceFolder);
      }
    } catch (RuntimeException | Error e) {
      drafts.forEach(draft -> draft.discard(e));
      throw e;
    }
    pending.clear();
    for (Growth next : grown) {
      attempt(next.argument, next.path, () -> next.appending.append(next.path));
    }
    grown.clear();
  }

  private interface Step {
    void run() throws IOException;
  }

  private static void attempt(String argument, Path path, Step step) {
    try {
      step.run();
    } catch (IOException e) {
      throw new IllegalArgumentException(
          argument + ": " + path + " can't be written: " + FileReason.of(e), e);
    }
  }

  /** Gives the locks back. */
  @Override
  public void close() {
    locks.forEach(FolderLock::close);
    locks.clear();
  }
}
