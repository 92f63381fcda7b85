package io.github.swatchwright.exchange;

import static java.util.stream.Collectors.joining;

import io.github.swatchwright.argument.Printable;
import java.io.Serializable;
import java.util.List;
import java.util.stream.Stream;

/** A file that nothing is read from, because of lines that can't be taken. */
public final class BadLinesException extends IllegalArgumentException {
  private static final long serialVersionUID = 1;

  /** The most lines that the message lists; {@link #lines} has them all. */
  private static final int LISTED = 100;

  private final String source;

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
      reason = Printable.oneLine(reason);
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
    this.source = source;
    this.lines = List.copyOf(lines);
  }

  private static String message(String source, List<BadLine> lines) {
    return summary(source, lines) + listed(lines).map(line -> "\n  " + line).collect(joining());
  }

  private static String summary(String source, List<BadLine> lines) {
    return Printable.oneLine(source)
        + ": nothing was read from it, because of "
        + lines.size()
        + (lines.size() == 1 ? " line" : " lines");
  }

  private static Stream<String> listed(List<BadLine> lines) {
    Stream<String> first = lines.stream().limit(LISTED).map(BadLine::toText);
    return lines.size() > LISTED
        ? Stream.concat(first, Stream.of("and " + (lines.size() - LISTED) + " more"))
        : first;
  }

  /** What was refused, in one line. */
  public String summary() {
    return summary(source, lines);
  }

  /**
   * A line for each of the first hundred lines that can't be taken, and how many more there are.
   */
  public List<String> listed() {
    return listed(lines).toList();
  }

  /** All of them, by number. */
  public List<BadLine> lines() {
    return lines;
  }
}
