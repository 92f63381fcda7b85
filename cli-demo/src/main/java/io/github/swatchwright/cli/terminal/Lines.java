package io.github.swatchwright.cli.terminal;

import java.util.ArrayList;
import java.util.List;

/** Breaks long lines between words, for terminals that are narrower. */
public final class Lines {
  private static final String HANGING = "  ";

  private Lines() {}

  /**
   * The line, broken into as many as it takes; all but the first are indented by two more spaces. A
   * word that is longer than the width stays whole, and so does a line that shows colours.
   */
  public static List<String> of(String line, int width) {
    if (length(line) <= width || line.indexOf('\u001B') >= 0) {
      return List.of(line);
    }
    String indent = " ".repeat(line.length() - line.stripLeading().length());
    List<String> lines = new ArrayList<>();
    StringBuilder current = new StringBuilder(indent);
    for (String word : line.strip().split(" ", -1)) {
      boolean first = current.toString().isBlank();
      if (!first && length(current) + 1 + length(word) > width) {
        lines.add(current.toString().stripTrailing());
        current = new StringBuilder(indent).append(HANGING);
        first = true;
      }
      current.append(first ? "" : " ").append(word);
    }
    lines.add(current.toString());
    return List.copyOf(lines);
  }

  private static int length(CharSequence text) {
    return Character.codePointCount(text, 0, text.length());
  }
}
