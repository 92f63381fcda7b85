package io.github.swatchwright.ladder;

import java.util.List;

/** Thrown when the ends and the rules of a request leave no ladder. */
public final class NoLadderException extends IllegalArgumentException {
  private static final long serialVersionUID = 1;

  private final Reason reason;
  private final transient List<LadderRequest> instead;

  /** Why there is none. */
  public enum Reason {
    /** Mixes between the ends get lighter and darker by turns. */
    NOT_STEADY,
    /** So many rungs can't be told apart, or not by whole drops. */
    STEPS_TOO_SMALL
  }

  NoLadderException(Reason reason, List<LadderRequest> instead, String message) {
    super(message);
    this.reason = reason;
    this.instead = List.copyOf(instead);
  }

  /** Why there is none. */
  public Reason reason() {
    return reason;
  }

  /**
   * Requests near to the refused one, each of which was tried and gives a ladder: with a larger
   * pot, with a recipe of its own for each rung, with fewer rungs. Empty when none does, and after
   * the exception was serialised.
   */
  public List<LadderRequest> instead() {
    return instead == null ? List.of() : instead;
  }
}
