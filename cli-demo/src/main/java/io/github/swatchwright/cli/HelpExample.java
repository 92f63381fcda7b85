package io.github.swatchwright.cli;

import java.util.Arrays;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Examples in the help: lines that are too long go on in the next, as a shell takes them. */
final class HelpExample {
  private static final String BEGINS = "  swatchwright ";
  private static final String NEXT = " \\\n      ";

  /** A word of a command line: quotes keep blanks inside together. */
  private static final Pattern WORD = Pattern.compile("(?:'[^']*'|[^\\s'])+");

  private HelpExample() {}

  /** A help's lines, with examples broken so that each fits the width. */
  static String[] wrapped(String[] lines, int width) {
    return Arrays.stream(lines)
        .map(line -> line.startsWith(BEGINS) ? wrapped(line, width) : line)
        .toArray(String[]::new);
  }

  private static String wrapped(String line, int width) {
    StringBuilder all = new StringBuilder(" ");
    int used = 1;
    List<String> words = WORD.matcher(line).results().map(MatchResult::group).toList();
    for (String word : words) {
      if (used + 1 + word.length() + 2 > width) {
        all.append(NEXT).append(word);
        used = NEXT.length() - 3 + word.length();
      } else {
        all.append(' ').append(word);
        used += 1 + word.length();
      }
    }
    return all.toString();
  }
}
