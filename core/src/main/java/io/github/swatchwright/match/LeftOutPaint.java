package io.github.swatchwright.match;

import io.github.swatchwright.argument.Printable;

/**
 * A paint that can't be used for a match, though nobody asked to leave it out.
 *
 * @param reason why
 * @param paint its name
 * @param text the same in a sentence, without a full stop
 */
public record LeftOutPaint(Reason reason, String paint, String text) {

  /** Why a paint isn't used. */
  public enum Reason {
    /** The model doesn't hold for it, or nothing is known of its colour. */
    NOT_COMPUTABLE,
    /** It is what is to be matched. */
    IS_TARGET,
    /** Its bottle doesn't hold a drop any more. */
    USED_UP
  }

  /**
   * A paint with its reason.
   *
   * @param what what is said of it, such as {@code is used up}
   */
  static LeftOutPaint of(Reason reason, String paint, String what) {
    return new LeftOutPaint(reason, paint, Printable.quoted(paint) + " " + what);
  }
}
