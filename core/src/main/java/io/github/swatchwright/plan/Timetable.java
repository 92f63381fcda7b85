package io.github.swatchwright.plan;

import io.github.swatchwright.coat.Coat;
import io.github.swatchwright.coat.CoatOrder;
import io.github.swatchwright.coat.SolventVerdict;
import io.github.swatchwright.coat.Wait;
import io.github.swatchwright.paint.Medium;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds the time for each coat: while one area dries, another is painted. All minutes are common
 * practice of the trade, without a source: what the label says wins.
 */
final class Timetable {
  private static final int DAY = 24 * 60;
  private static final int MIX_AND_MASK = 15;
  private static final int COAT = 15;

  /** Half an hour until the coat can be lifted, and half an hour of lifting it. */
  private static final int WEAR = 60;

  private static final int CHIPPING_MEDIUM_DRIES = 60;

  /**
   * Some work at one time.
   *
   * @param step its place among the steps of its area
   * @param firstCoat the first coat in it
   * @param lastCoat the last coat in it
   * @param minutes how long it takes
   * @param dries minutes until the area can be touched again
   */
  private record Job(int step, int firstCoat, int lastCoat, int minutes, int dries) {}

  /** A line of jobs, one after the other. */
  private static final class Line {
    private final List<PlanStep> steps;
    private final List<Job> jobs;
    private int next;
    private int ready;

    private Line(List<PlanStep> steps, List<Job> jobs) {
      this.steps = steps;
      this.jobs = jobs;
    }
  }

  /**
   * A job in its place.
   *
   * @param line the area's place
   * @param step the step's place in it
   * @param firstCoat the first coat in it
   * @param lastCoat the last coat in it
   * @param minute when it begins, after midnight before the first day
   */
  record Placed(int line, int step, int firstCoat, int lastCoat, int minute) {}

  private final BenchHours hours;
  private final DayOfWeek firstDay;
  private final List<Line> lines = new ArrayList<>();
  private int free;

  Timetable(Project project) {
    hours = project.hours();
    firstDay = project.starts().map(day -> day.getDayOfWeek()).orElse(DayOfWeek.SATURDAY);
  }

  /** Adds an area with its steps in order. */
  void add(ProjectArea area, List<PlanStep> steps) {
    List<Job> jobs = new ArrayList<>();
    List<Coat> below = new ArrayList<>();
    for (int i = 0; i < steps.size(); i++) {
      below.addAll(steps.get(i).work().coats());
      Optional<PlanStep> next =
          i + 1 < steps.size() ? Optional.of(steps.get(i + 1)) : Optional.empty();
      jobs.addAll(jobs(i, steps.get(i), wait(area, below, steps.get(i), next)));
    }
    lines.add(new Line(steps, jobs));
  }

  /** Minutes that a step dries: the longer of the usual ones where the next coat needs care. */
  private static int wait(
      ProjectArea area, List<Coat> below, PlanStep step, Optional<PlanStep> next) {
    if (step.kind() == StepKind.CHIPPING_MEDIUM) {
      return CHIPPING_MEDIUM_DRIES;
    }
    Optional<Medium> medium = step.medium();
    if (medium.isEmpty()) {
      return 0;
    }
    Wait wait = Wait.after(medium.get());
    List<Coat> then = next.map(some -> some.work().coats()).orElse(List.of());
    boolean care =
        CoatOrder.check(area.bare(), Layers.joined(below, then)).stream()
            .anyMatch(note -> note.coat() > below.size() && note.verdict() != SolventVerdict.SAFE);
    return (int) Math.round(60 * (care ? wait.mostHours() : wait.leastHours()));
  }

  private static List<Job> jobs(int place, PlanStep step, int dries) {
    int coats = step.work().passes();
    if (coats == 0) {
      return List.of(new Job(place, 0, 0, 0, 0)); // Left out, but it has its place.
    }
    int between = step.medium().map(Timetable::betweenCoats).orElse(0);
    if (step.work().worn() > 0 || between < DAY / 2) {
      int wear = step.work().worn() > 0 ? WEAR : 0;
      int whole = MIX_AND_MASK + coats * COAT + (coats - 1) * between + wear;
      int longest = DayPart.EVENING.untilMinute() - DayPart.EVENING.fromMinute();
      if (whole <= longest || wear > 0) {
        return List.of(new Job(place, 1, coats, whole, dries));
      }
    }
    List<Job> jobs = new ArrayList<>();
    for (int coat = 1; coat <= coats; coat++) {
      int minutes = COAT + (coat == 1 || between >= DAY / 2 ? MIX_AND_MASK : 0);
      jobs.add(new Job(place, coat, coat, minutes, coat == coats ? dries : between));
    }
    return jobs;
  }

  /** Minutes between coats of one step. */
  private static int betweenCoats(Medium medium) {
    return switch (medium) {
      case LACQUER -> 15;
      case ACRYLIC -> 30;
      case WATER -> 60;
      case ENAMEL, OIL -> (int) Math.round(60 * Wait.after(medium).leastHours());
    };
  }

  /** All jobs, each as early as it can be, in the order of time. */
  List<Placed> place() {
    List<Placed> placed = new ArrayList<>();
    while (true) {
      int best = -1;
      int earliest = Integer.MAX_VALUE;
      for (int i = 0; i < lines.size(); i++) {
        Line line = lines.get(i);
        if (line.next < line.jobs.size()) {
          int start = slot(Math.max(line.ready, free), line.jobs.get(line.next).minutes());
          if (start < earliest) {
            earliest = start;
            best = i;
          }
        }
      }
      if (best < 0) {
        return placed;
      }
      Line line = lines.get(best);
      Job job = line.jobs.get(line.next++);
      free = earliest + job.minutes();
      line.ready = free + job.dries();
      placed.add(new Placed(best, job.step(), job.firstCoat(), job.lastCoat(), earliest));
    }
  }

  /** The steps of an area that was added. */
  List<PlanStep> steps(int line) {
    return lines.get(line).steps;
  }

  /** The first time from then on at which there is time enough; long work begins with a part. */
  private int slot(int from, int minutes) {
    for (int day = from / DAY; ; day++) {
      for (DayPart part : DayPart.values()) {
        if (hours.include(firstDay.plus(day), part)) {
          int begin = day * DAY + part.fromMinute();
          int end = day * DAY + part.untilMinute();
          int start = Math.max(begin, from);
          if (start + minutes <= end || (start == begin && minutes > end - begin)) {
            return start;
          }
        }
      }
    }
  }

  /** The part of the day that a minute lies in. */
  static DayPart part(int minute) {
    int ofDay = minute % DAY;
    for (DayPart part : DayPart.values()) {
      if (ofDay < part.untilMinute()) {
        return part;
      }
    }
    return DayPart.EVENING;
  }

  static int day(int minute) {
    return minute / DAY;
  }

  static int minuteOfDay(int minute) {
    return minute % DAY;
  }
}
