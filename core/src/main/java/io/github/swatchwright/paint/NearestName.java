package io.github.swatchwright.paint;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** The name that was probably meant, by Levenshtein distance without regard to case. */
final class NearestName {
  private NearestName() {}

  /** The nearest of the names, when no more than half of the letters differ. */
  static Optional<String> to(String wanted, Collection<String> names) {
    String nearest = null;
    int smallest = Math.max(2, wanted.length() / 2) + 1;
    for (String name : names) {
      int distance = distance(wanted.toLowerCase(Locale.ROOT), name.toLowerCase(Locale.ROOT));
      if (distance < smallest) {
        smallest = distance;
        nearest = name;
      }
    }
    return Optional.ofNullable(nearest);
  }

  private static int distance(String from, String to) {
    int[] previous = new int[to.length() + 1];
    for (int j = 0; j <= to.length(); j++) {
      previous[j] = j;
    }
    for (int i = 1; i <= from.length(); i++) {
      int[] current = new int[to.length() + 1];
      current[0] = i;
      for (int j = 1; j <= to.length(); j++) {
        int swap = from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1;
        current[j] = Math.min(previous[j - 1] + swap, 1 + Math.min(previous[j], current[j - 1]));
      }
      previous = current;
    }
    return previous[to.length()];
  }
}
