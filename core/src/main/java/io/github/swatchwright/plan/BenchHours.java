package io.github.swatchwright.plan;

import java.time.DayOfWeek;
import java.util.EnumSet;
import java.util.Set;

/**
 * When a painter sits at the bench.
 *
 * @param weekdays the parts of Monday to Friday
 * @param weekends the parts of Saturday and Sunday
 */
public record BenchHours(Set<DayPart> weekdays, Set<DayPart> weekends) {
  /** Evenings, and all of the weekend. */
  public static final BenchHours USUAL =
      new BenchHours(Set.of(DayPart.EVENING), EnumSet.allOf(DayPart.class));

  /** Copies the sets; refuses when there is no time at all. */
  public BenchHours {
    weekdays = Set.copyOf(weekdays);
    weekends = Set.copyOf(weekends);
    if (weekdays.isEmpty() && weekends.isEmpty()) {
      throw new IllegalArgumentException(
          "weekdays and weekends are empty, must hold one of morning, afternoon, evening");
    }
  }

  /** Whether the painter is at the bench on that day of the week in that part of the day. */
  boolean include(DayOfWeek day, DayPart part) {
    boolean weekend = day == DayOfWeek.SATURDAY || day == DayOfWeek.SUNDAY;
    return (weekend ? weekends : weekdays).contains(part);
  }
}
