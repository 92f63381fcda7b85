package io.github.swatchwright.argument;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** The word that was probably meant by one that isn't known. */
public final class NearestWord {
  private NearestWord() {}

  /**
   * The word that the fewest slips of the keyboard lead to, case left out. A slip is a letter too
   * many, a letter that is missing, another letter, or two neighbours changed about (optimal string
   * alignment, the restricted Damerau–Levenshtein distance).
   *
   * @param wanted what was written
   * @param words those that there are; the first of equally near ones counts
   * @param mostSlips as many slips are believed
   */
  public static Optional<String> to(String wanted, Collection<String> words, int mostSlips) {
    String small = wanted.toLowerCase(Locale.ROOT);
    String nearest = null;
    int fewest = mostSlips + 1;
    for (String word : words) {
      String other = word.toLowerCase(Locale.ROOT);
      // A slip changes a word's length by one letter at most.
      if (Math.abs(small.length() - other.length()) < fewest) {
        int slips = slips(small, other);
        if (slips < fewest) {
          fewest = slips;
          nearest = word;
        }
      }
    }
    return Optional.ofNullable(nearest);
  }

  private static int slips(String from, String to) {
    int[][] slips = new int[from.length() + 1][to.length() + 1];
    for (int j = 0; j <= to.length(); j++) {
      slips[0][j] = j;
    }
    for (int i = 1; i <= from.length(); i++) {
      slips[i][0] = i;
      for (int j = 1; j <= to.length(); j++) {
        int other = from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1;
        int fewest = Math.min(slips[i - 1][j], slips[i][j - 1]) + 1;
        fewest = Math.min(fewest, slips[i - 1][j - 1] + other);
        if (i > 1 && j > 1 && isTurned(from, i, to, j)) {
          fewest = Math.min(fewest, slips[i - 2][j - 2] + 1);
        }
        slips[i][j] = fewest;
      }
    }
    return slips[from.length()][to.length()];
  }

  private static boolean isTurned(String from, int i, String to, int j) {
    return from.charAt(i - 1) == to.charAt(j - 2) && from.charAt(i - 2) == to.charAt(j - 1);
  }
}
