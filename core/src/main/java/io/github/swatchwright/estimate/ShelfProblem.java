package io.github.swatchwright.estimate;

import io.github.swatchwright.argument.Printable;

/**
 * Something to look at on a shelf.
 *
 * @param kind what it is
 * @param paint the paint that it is about
 * @param text the same in a sentence, without a full stop
 */
public record ShelfProblem(Kind kind, String paint, String text) {

  /** What a problem is about. */
  public enum Kind {
    /** The paint can't be computed with. */
    NOT_COMPUTABLE,
    /** The paint looks like another of its medium. */
    LOOKS_ALIKE,
    /** What is stated of the paint is hard to believe, or leaves its strength open. */
    DOUBTFUL,
    /** The bottle is nearly empty. */
    RUNS_SHORT
  }

  /**
   * A problem with a paint.
   *
   * @param what what is said of it, such as {@code has no masstone}
   */
  static ShelfProblem of(Kind kind, String paint, String what) {
    return new ShelfProblem(kind, paint, Printable.quoted(paint) + " " + what);
  }
}
