package io.github.swatchwright.fuzz;

import io.github.swatchwright.argument.Printable;
import io.github.swatchwright.exchange.BadLinesException;

/** How an input may be refused: in words that can be shown as they are. */
final class Refusals {
  private static final int LONGEST = 2000;

  /** A refused import lists up to a hundred lines. */
  private static final int LONGEST_LIST = 100_000;

  private Refusals() {}

  /**
   * Looks at a refusal.
   *
   * @throws AssertionError when it says nothing, too much, or what can't be printed
   */
  static void check(IllegalArgumentException refusal) {
    String message = refusal.getMessage();
    boolean list = refusal instanceof BadLinesException;
    if (message == null
        || message.isBlank()
        || message.length() > (list ? LONGEST_LIST : LONGEST)) {
      throw new AssertionError("no short refusal: " + message, refusal);
    }
    String shown = list ? message.replace("\n", "") : message;
    if (!Printable.oneLine(shown).equals(shown)) {
      throw new AssertionError("a refusal that can't be printed: " + message, refusal);
    }
  }
}
