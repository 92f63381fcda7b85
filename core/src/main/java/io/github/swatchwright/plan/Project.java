package io.github.swatchwright.plan;

import io.github.swatchwright.argument.Printable;
import io.github.swatchwright.argument.Require;
import io.github.swatchwright.mix.Application;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A model that is to be painted: its areas and what is wanted of each.
 *
 * @param name what the painter calls it, 1 to {@value #LONGEST_NAME} characters on one line
 * @param starts the first day at the bench; empty for a Saturday
 * @param hours when there is time for the bench
 * @param application how paint gets onto the model, for amounts
 * @param areas 1 to {@value #MOST_AREAS}, no two of the same name
 */
public record Project(
    String name,
    Optional<LocalDate> starts,
    BenchHours hours,
    Application application,
    List<ProjectArea> areas) {
  /** The longest name. */
  public static final int LONGEST_NAME = 120;

  /** The most areas. */
  public static final int MOST_AREAS = 20;

  /** Copies the list; refuses a name that isn't one, and areas of the same name. */
  public Project {
    areas = List.copyOf(areas);
    PlanName.check(name, LONGEST_NAME);
    Require.within("number of areas", areas.size(), 1, MOST_AREAS);
    Set<String> names = new HashSet<>();
    for (ProjectArea area : areas) {
      if (!names.add(area.name())) {
        throw new IllegalArgumentException("two areas are named " + Printable.quoted(area.name()));
      }
    }
  }

  /** A project with the usual bench hours and airbrush, that starts on a Saturday. */
  public static Project of(String name, List<ProjectArea> areas) {
    return new Project(name, Optional.empty(), BenchHours.USUAL, Application.USUAL, areas);
  }

  /** The same with another first day. */
  public Project withStarts(LocalDate day) {
    return new Project(name, Optional.of(day), hours, application, areas);
  }

  /** The area of that name. */
  ProjectArea area(String wanted) {
    return areas.stream().filter(area -> area.name().equals(wanted)).findFirst().orElseThrow();
  }
}
