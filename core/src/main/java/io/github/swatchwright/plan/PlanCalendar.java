package io.github.swatchwright.plan;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A plan's calendar in words, a line for each part of a day at the bench. */
public final class PlanCalendar {
  private static final int DAYS_OF_WEEK = 7;

  private PlanCalendar() {}

  /**
   * A part of a day.
   *
   * @param when such as {@code Saturday evening}, or {@code Saturday 5 December, evening}
   * @param what the steps with time and number, such as {@code 19:00 4 Hull, seal}
   */
  public record Line(String when, List<String> what) {
    /** Copies the list. */
    public Line {
      what = List.copyOf(what);
    }
  }

  /** The lines, in the order of time. */
  public static List<Line> of(Plan plan) {
    Map<String, List<String>> lines = new LinkedHashMap<>();
    for (Sitting sitting : plan.calendar()) {
      PlanStep step = plan.steps().get(sitting.step() - 1);
      lines
          .computeIfAbsent(when(plan, sitting), when -> new ArrayList<>())
          .add(sitting.startTime() + "  " + what(step, sitting));
    }
    List<Line> all = new ArrayList<>();
    lines.forEach((when, what) -> all.add(new Line(when, what)));
    return all;
  }

  private static String when(Plan plan, Sitting sitting) {
    String part = sitting.part().word();
    if (plan.project().starts().isPresent()) {
      LocalDate date = plan.project().starts().get().plusDays(sitting.day());
      return word(date.getDayOfWeek())
          + " "
          + date.getDayOfMonth()
          + " "
          + date.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH)
          + ", "
          + part;
    }
    int week = sitting.day() / DAYS_OF_WEEK;
    String day = word(DayOfWeek.SATURDAY.plus(sitting.day())) + " " + part;
    return week == 0 ? day : day + " of week " + (week + 1);
  }

  private static String word(DayOfWeek day) {
    return day.getDisplayName(TextStyle.FULL, Locale.ENGLISH);
  }

  private static String what(PlanStep step, Sitting sitting) {
    String coats = "";
    if (sitting.lastCoat() - sitting.firstCoat() + 1 < sitting.coats()) {
      String one = step.kind() == StepKind.LADDER ? "pass " : "coat ";
      String several = step.kind() == StepKind.LADDER ? "passes " : "coats ";
      coats =
          ", "
              + (sitting.firstCoat() == sitting.lastCoat()
                  ? one + sitting.firstCoat()
                  : several + sitting.firstCoat() + " to " + sitting.lastCoat())
              + " of "
              + sitting.coats();
    }
    return step.number()
        + " "
        + step.area()
        + ", "
        + step.kind().heading().toLowerCase(Locale.ROOT)
        + coats;
  }
}
