package io.github.swatchwright.json;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.paint.Shelf;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A file that remembers what was asked and found: JSON Lines, format {@code swatchwright-notebook}
 * version 1, one {@link NotebookEntry} a line. It only grows, to at most {@value #MOST_BYTES}
 * bytes.
 *
 * <p>An entry is on the disk when {@link #append} returns, under a lock that other processes keep
 * as well. A crash while one is written costs that entry alone: its torn line is set aside by every
 * reader, and later entries follow it.
 */
public final class Notebook {
  /** The longest notebook, in bytes. */
  public static final int MOST_BYTES = 50_000_000;

  private final LockedLines lines;

  private Notebook(LockedLines lines) {
    this.lines = lines;
  }

  /** The notebook in a file, which need not be there yet. */
  public static Notebook at(Path file) {
    return new Notebook(new LockedLines(file, MOST_BYTES));
  }

  /**
   * What a notebook holds.
   *
   * @param entries in the order in which they were written
   * @param setAside lines that aren't entries
   */
  public record Contents(List<NotebookEntry> entries, List<SetAside> setAside) {
    /** Copies the lists. */
    public Contents {
      entries = List.copyOf(entries);
      setAside = List.copyOf(setAside);
    }
  }

  /**
   * A line that isn't an entry.
   *
   * @param line its number, from 1
   * @param reason what is wrong with it, in one line
   */
  public record SetAside(int line, String reason) {}

  /**
   * Appends an entry, and makes the file when there is none.
   *
   * @throws IllegalArgumentException when {@code found} isn't a JSON object
   * @throws IOException when it can't be written, or the notebook would become too long
   */
  public void append(NotebookEntry entry) throws IOException {
    lines.append(NotebookJson.toLine(entry));
  }

  /**
   * Reads all entries.
   *
   * @throws IOException when the file can't be read, or is too long
   */
  public Contents read() throws IOException {
    List<NotebookEntry> entries = new ArrayList<>();
    List<SetAside> setAside = new ArrayList<>();
    int number = 0;
    for (String line : lines.read().split("\n", -1)) {
      number++;
      if (!line.isBlank()) {
        try {
          entries.add(NotebookJson.read(JsonDocument.parse(line, "line " + number)));
        } catch (JsonInputException e) {
          setAside.add(new SetAside(number, String.valueOf(e.getMessage())));
        }
      }
    }
    return new Contents(entries, setAside);
  }

  /**
   * The mixes that an entry's result holds, with today's paints, in the result's order: of each
   * recipe, rung and prediction, of a corrected pot, of each coat and of each step of a plan. A
   * result of another kind has none.
   *
   * @throws IllegalArgumentException when a paint is no longer on the shelf
   */
  public static List<FoundMix> mixes(NotebookEntry entry, Shelf shelf) {
    return FoundMixes.of(JsonDocument.parse(entry.found(), "the entry"), shelf);
  }

  /**
   * The colour that an entry's recipes are for, if it names one; its white is that of its light.
   */
  public static Optional<Lab> target(NotebookEntry entry) {
    return FoundMixes.target(JsonDocument.parse(entry.found(), "the entry"));
  }
}
