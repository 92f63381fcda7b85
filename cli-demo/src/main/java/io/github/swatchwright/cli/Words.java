package io.github.swatchwright.cli;

import java.util.Arrays;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Words for what is counted, and options that take one of a few words. */
final class Words {
  private Words() {}

  /** So many of something: 1 drop, 2 drops. */
  static String count(long number, String thing) {
    return number + " " + (number == 1 ? thing : thing + "s");
  }

  /**
   * The choice whose word it is.
   *
   * @param option the option's name, for messages
   * @throws IllegalArgumentException when it is none of them
   */
  static <T> T one(String option, String word, T[] choices, Function<T, String> wordOf) {
    return Arrays.stream(choices)
        .filter(choice -> wordOf.apply(choice).equals(word))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    option
                        + " is '"
                        + word
                        + "', must be one of "
                        + Arrays.stream(choices).map(wordOf).collect(Collectors.joining(", "))));
  }
}
