package io.github.swatchwright.cli;

import io.github.swatchwright.cli.file.FileReason;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** Standard output, which receives a result as a whole. */
final class ResultStream {
  private static final Path STANDARD_OUTPUT = Path.of("/dev/fd/1");

  /**
   * The bits of a file's mode that tell its kind, of a pipe and of a socket (POSIX, from memory).
   */
  private static final int KIND = 0170000;

  private static final int PIPE = 0010000;
  private static final int SOCKET = 0140000;

  private ResultStream() {}

  /**
   * Writes a result. When the reader at the other end of a pipe has gone, as {@code head} does,
   * what is left is not wanted, and that is no error.
   *
   * @throws IllegalArgumentException when it can't be written
   */
  static void write(OutputStream out, byte[] result) {
    try {
      out.write(result);
      out.flush();
    } catch (IOException e) {
      if (!readerIsGone(e)) {
        throw new IllegalArgumentException(
            "the result can't be written to standard output: " + FileReason.of(e), e);
      }
    }
  }

  private static boolean readerIsGone(IOException e) {
    if (String.valueOf(e.getMessage()).toLowerCase(Locale.ROOT).contains("pipe")) {
      return true;
    }
    try {
      int kind = (int) Files.getAttribute(STANDARD_OUTPUT, "unix:mode") & KIND;
      return kind == PIPE || kind == SOCKET;
    } catch (IOException | UnsupportedOperationException | IllegalArgumentException notUnix) {
      return false;
    }
  }
}
