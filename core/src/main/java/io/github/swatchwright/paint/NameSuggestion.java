package io.github.swatchwright.paint;

import io.github.swatchwright.argument.NearestWord;
import io.github.swatchwright.argument.Printable;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The name that was probably meant, told without regard to case. */
final class NameSuggestion {
  /** More names than these help nobody. */
  private static final int MOST_NAMES = 5;

  /** Shorter words, such as "the", are in too many names. */
  private static final int SHORTEST_WORD = 4;

  private NameSuggestion() {}

  /**
   * What to say of a name that isn't there: a slip of the keyboard, names that hold what was
   * written, a rather similar name, or names that share a word with it; in this order.
   */
  static Optional<String> of(String wanted, Collection<String> names) {
    String small = wanted.strip().toLowerCase(Locale.ROOT);
    int slips = Math.max(1, small.length() / 5);
    return nearest(small, names, slips)
        .or(() -> holding(List.of(small), names))
        .or(() -> nearest(small, names, Math.max(2, small.length() / 2)))
        .or(() -> holding(List.of(small.split("[^\\p{L}\\p{N}]+", -1)), names));
  }

  private static Optional<String> nearest(String small, Collection<String> names, int slips) {
    return NearestWord.to(small, names, slips).map(name -> "nearest is " + Printable.quoted(name));
  }

  private static Optional<String> holding(List<String> words, Collection<String> names) {
    List<String> holding =
        names.stream()
            .filter(name -> words.stream().anyMatch(word -> isIn(word, name)))
            .limit(MOST_NAMES)
            .map(Printable::quoted)
            .toList();
    return holding.isEmpty()
        ? Optional.empty()
        : Optional.of("there is " + String.join(", ", holding));
  }

  private static boolean isIn(String word, String name) {
    return word.length() >= SHORTEST_WORD && name.toLowerCase(Locale.ROOT).contains(word);
  }
}
