package io.github.swatchwright.coat;

import io.github.swatchwright.argument.BadArgumentException;
import java.util.OptionalInt;

/** Coats until a paint hides, as a painter counts them: whole coats, and "never" for the rest. */
public final class HidingCoats {
  /** Nobody paints more coats than this to hide something (common practice). */
  public static final int MOST = 30;

  private HidingCoats() {}

  /**
   * The coats in words, such as {@code hides after 3 coats}.
   *
   * @param coats coats at which it hides, not whole, above 0
   */
  public static String inWords(double coats) {
    OptionalInt whole = whole(coats);
    return whole.isEmpty()
        ? "never hides"
        : "hides after " + whole.getAsInt() + (whole.getAsInt() == 1 ? " coat" : " coats");
  }

  /**
   * Coats as a painter counts them: 1 for a tenth of a coat, empty for never.
   *
   * @param coats coats at which it hides, not whole, above 0; may be infinite
   */
  public static OptionalInt whole(double coats) {
    if (!(coats > 0)) {
      throw new BadArgumentException("coats", "is " + coats + ", must be above 0");
    }
    // A computed 2.0000001 is two coats.
    return coats > MOST
        ? OptionalInt.empty()
        : OptionalInt.of((int) Math.max(1, Math.ceil(coats - 0.05)));
  }
}
