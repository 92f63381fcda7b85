package io.github.swatchwright.exchange;

import java.io.Serializable;
import java.util.List;
import java.util.stream.Collectors;

/** A file that isn't imported, because of lines that can't be taken. */
public final class BadLinesException extends IllegalArgumentException {
  private static final long serialVersionUID = 1;

  /** So many lines are listed in the message; {@link #lines} has them all. */
  private static final int LISTED = 100;

  /** Always from {@code List.copyOf}, which can be serialised. */
  @SuppressWarnings("serial")
  private final List<BadLine> lines;

  /**
   * A line that can't be taken.
   *
   * @param number from 1
   * @param reason in one line
   */
  public record BadLine(int number, String reason) implements Serializable {
    /** Keeps the reason to one line. */
    public BadLine {
      reason = reason.replaceAll("[\\p{Cntrl}\\p{Zl}\\p{Zp}]", " ");
    }

    /** The line in a list, such as {@code line 3: has 2 fields, must have 4}. */
    public String toText() {
      return "line " + number + ": " + reason;
    }
  }

  /**
   * Of a file.
   *
   * @param source what messages call the file
   * @param lines at least one
   */
  public BadLinesException(String source, List<BadLine> lines) {
    super(message(source, lines));
    this.lines = List.copyOf(lines);
  }

  private static String message(String source, List<BadLine> lines) {
    String head =
        source
            + ": nothing was imported, because of "
            + lines.size()
            + (lines.size() == 1 ? " line" : " lines");
    String more = lines.size() > LISTED ? "\n  and " + (lines.size() - LISTED) + " more" : "";
    return lines.stream()
        .limit(LISTED)
        .map(line -> "\n  " + line.toText())
        .collect(Collectors.joining("", head, more));
  }

  /** All of them, by number. */
  public List<BadLine> lines() {
    return lines;
  }
}
