package io.github.swatchwright.plan;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.colour.Lab;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A plan that is carried out step by step.
 *
 * @param tools what to work with
 * @param project what is wanted
 * @param done the steps that are done, with what was measured after each
 * @param open the steps that are left, in the order of work
 * @param calendar when they are painted
 */
record Progress(
    Tools tools,
    Project project,
    List<Finished> done,
    List<PlanStep> open,
    List<Sitting> calendar) {
  /**
   * A step that is done.
   *
   * @param step the step
   * @param measured the colour of its area then
   */
  record Finished(PlanStep step, Optional<Done.Measured> measured) {}

  /** The plan before anything is done. */
  static Progress first(Tools tools, Project project) {
    List<List<PlanStep>> areas = new ArrayList<>();
    for (ProjectArea area : project.areas()) {
      areas.add(new AreaPlanner(tools, area).plan(AreaStart.of(area), Wish.of(area)));
    }
    return timed(tools, project, List.of(), areas);
  }

  List<PlanStep> steps() {
    return Layers.joined(done.stream().map(Finished::step).toList(), open);
  }

  /** The plan for what is left, once more steps are done. */
  Progress after(Done more) {
    int now = more.step();
    Require.within("done", now, Math.max(1, done.size()), done.size() + open.size());
    List<Finished> finished = new ArrayList<>(done);
    for (PlanStep step : open.subList(0, now - done.size())) {
      finished.add(new Finished(step.asDone(Optional.empty()), Optional.empty()));
    }
    Finished last = finished.get(now - 1);
    Optional<Lab> seen = more.measured().map(some -> some.swatch().labUnder(tools.light()));
    finished.set(
        now - 1, new Finished(last.step().asDone(seen), more.measured().or(last::measured)));
    List<List<PlanStep>> areas = new ArrayList<>();
    for (ProjectArea area : project.areas()) {
      boolean news = more.measured().isPresent() && area.name().equals(last.step().area());
      areas.add(news ? replanned(area, finished) : left(area, now));
    }
    return timed(tools, project, finished, areas);
  }

  /** What is left of an area of which there is no news. */
  private List<PlanStep> left(ProjectArea area, int now) {
    return open.subList(now - done.size(), open.size()).stream()
        .filter(step -> step.area().equals(area.name()))
        .toList();
  }

  /** What is left of an area, worked out from the colour that it really has. */
  private List<PlanStep> replanned(ProjectArea area, List<Finished> finished) {
    List<Finished> own =
        finished.stream().filter(some -> some.step.area().equals(area.name())).toList();
    Finished last = own.get(own.size() - 1);
    AreaStart start =
        AreaStart.after(
            area,
            own.stream().map(Finished::step).toList(),
            own.stream().map(Finished::measured).toList());
    Optional<PlanStep> correction =
        last.measured.flatMap(seen -> new PotCorrection(tools, area).after(last.step, seen));
    List<PlanStep> steps = new ArrayList<>(correction.stream().toList());
    if (correction.isPresent()) {
      PlanStep again = correction.get();
      start =
          new AreaStart(
              start
                  .layers()
                  .with(again.work().coats())
                  .seenAs(Tools.asBase(again.look().prediction())),
              correction);
    }
    steps.addAll(new AreaPlanner(tools, area).plan(start, promised(area, finished.size())));
    return steps;
  }

  /** The tasks that are left of an area, each with the colour that the plan has promised. */
  private List<Wish> promised(ProjectArea area, int now) {
    List<Wish> wishes = new ArrayList<>();
    for (PlanStep step : left(area, now)) {
      if (step.task().isPresent()) {
        int index = step.task().getAsInt();
        Task task = area.tasks().get(index);
        Lab wanted = step.look().wanted().orElse(step.look().prediction().lab());
        boolean clear = task.kind().isClear();
        wishes.add(
            new Wish(
                index, task, clear ? Optional.empty() : Optional.of(wanted), Optional.empty()));
      }
    }
    return wishes;
  }

  private static Progress timed(
      Tools tools, Project project, List<Finished> done, List<List<PlanStep>> areas) {
    Timetable table = new Timetable(project);
    for (int i = 0; i < areas.size(); i++) {
      table.add(project.areas().get(i), areas.get(i));
    }
    List<PlanStep> open = new ArrayList<>();
    List<Sitting> calendar = new ArrayList<>();
    Map<String, Integer> numbers = new LinkedHashMap<>();
    for (Timetable.Placed job : table.place()) {
      String key = job.line() + ":" + job.step();
      PlanStep step = table.steps(job.line()).get(job.step());
      if (!numbers.containsKey(key)) {
        numbers.put(key, done.size() + open.size() + 1);
        open.add(step.withNumber(done.size() + open.size() + 1));
      }
      if (step.work().passes() > 0) {
        calendar.add(
            new Sitting(
                Timetable.day(job.minute()),
                Timetable.part(job.minute()),
                Timetable.minuteOfDay(job.minute()),
                numbers.get(key),
                job.firstCoat(),
                job.lastCoat(),
                step.work().passes()));
      }
    }
    return new Progress(tools, project, List.copyOf(done), List.copyOf(open), calendar);
  }
}
