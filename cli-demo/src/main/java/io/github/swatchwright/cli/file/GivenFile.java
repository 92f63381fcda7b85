package io.github.swatchwright.cli.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

/**
 * A file that a command only reads. Every message about a file that can't be read is made here.
 *
 * @param path where it is
 */
public record GivenFile(Path path) {
  /**
   * Makes something of a file's content.
   *
   * @param <T> what is made
   */
  @FunctionalInterface
  public interface Reading<T> {
    /** Reads the file. */
    T read(Path path) throws IOException;
  }

  /**
   * What is made of the file.
   *
   * @param argument what the command line calls the file, for messages
   * @param reading reads it
   * @throws IllegalArgumentException when there is no such file or it can't be read
   */
  public <T> T read(String argument, Reading<T> reading) {
    try {
      return reading.read(path);
    } catch (NoSuchFileException e) {
      throw new IllegalArgumentException(argument + ": there is no file " + path, e);
    } catch (IOException e) {
      String why =
          Files.isDirectory(path)
              ? "is a directory, must be a file"
              : "can't be read: " + FileReason.of(e);
      throw new IllegalArgumentException(argument + ": " + path + " " + why, e);
    }
  }

  /**
   * What is made of the file, or nothing when there is no such file. Only a missing file counts as
   * missing: one that can't be looked at is refused, since its content would be lost by taking it
   * for an empty one.
   *
   * @param argument what the command line calls the file, for messages
   * @param reading reads it
   * @throws IllegalArgumentException when it can't be read
   */
  public <T> Optional<T> readIfThere(String argument, Reading<T> reading) {
    return read(
        argument,
        there -> {
          try {
            return Optional.of(reading.read(there));
          } catch (NoSuchFileException e) {
            return Optional.empty();
          }
        });
  }

  /** What follows the last dot of its name, in lower case; the whole name when there is no dot. */
  public String ending() {
    return ending(path);
  }

  static String ending(Path path) {
    String name = String.valueOf(path.getFileName());
    return name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
  }
}
