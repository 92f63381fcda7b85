package io.github.swatchwright.exchange;

import io.github.swatchwright.argument.Printable;
import java.util.Arrays;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Words and numbers in the fields of a file. */
final class Words {
  private static final Pattern NUMBER =
      Pattern.compile("[+-]?(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)(?:[eE][+-]?[0-9]+)?");

  private Words() {}

  /** The choice of that word. */
  static <T> T oneOf(String name, String text, T[] choices, Function<T, String> word) {
    return Arrays.stream(choices)
        .filter(choice -> word.apply(choice).equalsIgnoreCase(text.strip()))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    name
                        + " is "
                        + Printable.quoted(text)
                        + ", must be one of "
                        + Arrays.stream(choices).map(word).collect(Collectors.joining(", "))));
  }

  /** The number that a field holds, with a decimal point. */
  static double number(String name, String text) {
    String digits = text.strip();
    if (!NUMBER.matcher(digits).matches()) {
      throw new IllegalArgumentException(
          name + " is " + Printable.quoted(text) + ", must be a number such as 12.5");
    }
    double value = Double.parseDouble(digits);
    if (Double.isInfinite(value)) {
      throw new IllegalArgumentException(
          name + " is " + Printable.quoted(text) + ", which is too large");
    }
    return value;
  }

  /** Whether a field is nothing but a number. */
  static boolean isNumber(String text) {
    return NUMBER.matcher(text).matches();
  }
}
