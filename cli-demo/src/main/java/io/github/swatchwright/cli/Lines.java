package io.github.swatchwright.cli;

import java.util.ArrayList;
import java.util.List;

/** Text broken into lines between words. */
final class Lines {
  private static final String HANGING = "  ";

  private Lines() {}

  /**
   * The line, in as many as it takes; the later ones are indented by two more spaces. A word that
   * is longer than the width stays whole, and so does a line with escape sequences.
   */
  static List<String> of(String line, int width) {
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
