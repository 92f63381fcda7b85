package io.github.swatchwright.cli.file;

import java.io.IOException;
import java.nio.channels.ClosedByInterruptException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;

/** Why a file can't be read or written, in words. Java's own messages are often the path alone. */
public final class FileReason {
  private FileReason() {}

  /** The reason, one phrase that is never empty. */
  public static String of(IOException e) {
    if (e instanceof AccessDeniedException) {
      return "permission denied";
    }
    if (e instanceof NoSuchFileException) {
      return "it is not there";
    }
    if (e instanceof FileAlreadyExistsException) {
      return "another file has its name";
    }
    if (e instanceof ClosedByInterruptException) {
      return "it was interrupted";
    }
    String text = e instanceof FileSystemException system ? system.getReason() : e.getMessage();
    return text == null || text.isBlank() ? "the system gives no reason" : text;
  }
}
