package io.github.swatchwright.plan;

import java.util.Locale;

/** A part of a day at the bench, in hours after midnight. */
public enum DayPart {
  /** 9 to 12 o'clock. */
  MORNING(9, 12),
  /** 13 to 18 o'clock. */
  AFTERNOON(13, 18),
  /** 19 to 22 o'clock. */
  EVENING(19, 22);

  private final int from;
  private final int until;

  DayPart(int from, int until) {
    this.from = from;
    this.until = until;
  }

  /** When it begins, in minutes after midnight. */
  int fromMinute() {
    return 60 * from;
  }

  /** When it ends, in minutes after midnight. */
  int untilMinute() {
    return 60 * until;
  }

  /** The word for it, such as {@code evening}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
