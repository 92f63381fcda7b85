package io.github.swatchwright.json;

/** Reads a line of a notebook without its file, for tests that read millions of them. */
public final class NotebookLine {
  private NotebookLine() {}

  /**
   * Reads the line.
   *
   * @throws JsonInputException when it isn't an entry
   */
  public static NotebookEntry read(String line) {
    return NotebookJson.read(JsonDocument.parse(line, "line 1"));
  }
}
