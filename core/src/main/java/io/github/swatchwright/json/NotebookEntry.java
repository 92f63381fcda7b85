package io.github.swatchwright.json;

import io.github.swatchwright.argument.Require;
import java.time.Instant;
import java.util.List;

/**
 * What was asked once, what was found, and what it was found with.
 *
 * @param date when it was asked
 * @param library the version of this library that answered
 * @param shelfName the name of the shelf that was used
 * @param shelfHash {@link ShelfJson#hash} of it
 * @param asked the question, as command and arguments, 1 to {@value #MOST_ARGUMENTS}
 * @param found the result, a JSON object of at most {@value #LONGEST_RESULT} characters
 */
public record NotebookEntry(
    Instant date,
    String library,
    String shelfName,
    String shelfHash,
    List<String> asked,
    String found) {

  /** The version of this library. */
  public static final String LIBRARY_VERSION = "0.1.0-SNAPSHOT";

  /** The most arguments of a question. */
  public static final int MOST_ARGUMENTS = 1000;

  /** The longest result, in characters. */
  public static final int LONGEST_RESULT = 2_000_000;

  /** Copies the list; refuses too few and too many arguments, and too long a result. */
  public NotebookEntry {
    asked = List.copyOf(asked);
    Require.within("number of arguments", asked.size(), 1, MOST_ARGUMENTS);
    Require.within("length of found", found.length(), 2, LONGEST_RESULT);
  }
}
