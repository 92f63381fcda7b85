package io.github.swatchwright.coat;

import io.github.swatchwright.argument.Require;

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
    Require.positive("coats", coats);
    if (coats > MOST) {
      return "never hides";
    }
    // A computed 2.0000001 is two coats.
    int whole = (int) Math.max(1, Math.ceil(coats - 0.05));
    return "hides after " + whole + (whole == 1 ? " coat" : " coats");
  }
}
