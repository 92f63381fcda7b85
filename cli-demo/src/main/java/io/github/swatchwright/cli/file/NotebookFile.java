package io.github.swatchwright.cli.file;

import java.nio.file.Path;

/**
 * A notebook: read as an argument, grown as an option. Both may be the same file, since an entry is
 * added at its end.
 *
 * @param path where it is
 */
public record NotebookFile(Path path) {
  /** The same file, to be read. */
  public GivenFile given() {
    return new GivenFile(path);
  }
}
