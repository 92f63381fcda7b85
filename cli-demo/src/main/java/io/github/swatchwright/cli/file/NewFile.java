package io.github.swatchwright.cli.file;

import java.nio.file.Path;

/**
 * A file that a command writes, in place of the one that has its name. It is handed to {@link
 * FileWrites}, which writes it wholly or not at all.
 *
 * @param path where it will be
 */
public record NewFile(Path path) {
  /** What follows the last dot of its name, in lower case; the whole name when there is no dot. */
  public String ending() {
    return GivenFile.ending(path);
  }

  /** The path as it was given. */
  @Override
  public String toString() {
    return path.toString();
  }
}
