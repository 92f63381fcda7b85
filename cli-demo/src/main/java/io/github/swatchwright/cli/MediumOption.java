package io.github.swatchwright.cli;

import io.github.swatchwright.paint.Medium;
import java.util.Arrays;
import java.util.stream.Collectors;

/** The value of {@code --medium}. */
final class MediumOption {
  private MediumOption() {}

  /**
   * The medium of that word.
   *
   * @throws IllegalArgumentException when it is none
   */
  static Medium parse(String word) {
    return Arrays.stream(Medium.values())
        .filter(known -> known.word().equals(word))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "--medium is '"
                        + word
                        + "', must be one of "
                        + Arrays.stream(Medium.values())
                            .map(Medium::word)
                            .collect(Collectors.joining(", "))));
  }
}
