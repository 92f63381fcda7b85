package io.github.swatchwright.argument;

/** Refuses bad arguments with a message that names the argument, its value and what is allowed. */
public final class Require {
  private Require() {}

  /** Returns {@code value}, refusing NaN and infinities. */
  public static double finite(String name, double value) {
    if (!Double.isFinite(value)) {
      throw new BadArgumentException(name, "is " + value + ", must be a finite number");
    }
    return value;
  }

  /** Returns {@code value}, refusing all outside the closed range and NaN. */
  public static double within(String name, double value, double lowest, double highest) {
    if (!(value >= lowest && value <= highest)) {
      throw new BadArgumentException(
          name, "is " + value + ", must be within [" + lowest + ", " + highest + "]");
    }
    return value;
  }

  /** Returns {@code value}, refusing all outside the closed range. */
  public static int within(String name, int value, int lowest, int highest) {
    if (value < lowest || value > highest) {
      throw new BadArgumentException(
          name, "is " + value + ", must be within [" + lowest + ", " + highest + "]");
    }
    return value;
  }

  /** Returns {@code value}, refusing zero, negative numbers, NaN and infinities. */
  public static double positive(String name, double value) {
    if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
      throw new BadArgumentException(name, "is " + value + ", must be a finite number above 0");
    }
    return value;
  }

  /** Returns {@code value}, refusing negative numbers, NaN and infinities. */
  public static double nonNegative(String name, double value) {
    if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
      throw new BadArgumentException(
          name, "is " + value + ", must be a finite number of at least 0");
    }
    return value;
  }

  /**
   * Does the same for one element of an array; its name is put together only when it is refused,
   * since that takes longer than the check.
   */
  public static double within(
      String array, int index, double value, double lowest, double highest) {
    return value >= lowest && value <= highest
        ? value
        : within(element(array, index), value, lowest, highest);
  }

  /** Does the same for one element of an array, without making up its name when all is well. */
  public static double positive(String array, int index, double value) {
    return value > 0 && value < Double.POSITIVE_INFINITY
        ? value
        : positive(element(array, index), value);
  }

  /** Does the same for one element of an array, without making up its name when all is well. */
  public static double nonNegative(String array, int index, double value) {
    return value >= 0 && value < Double.POSITIVE_INFINITY
        ? value
        : nonNegative(element(array, index), value);
  }

  private static String element(String array, int index) {
    return array + "[" + index + "]";
  }
}
