package io.github.swatchwright.plan;

import io.github.swatchwright.calibrate.NextCards;
import io.github.swatchwright.coat.Caution;
import io.github.swatchwright.coat.Coat;
import io.github.swatchwright.coat.Thinner;
import io.github.swatchwright.spectrum.Illuminant;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A model's steps in order.
 *
 * @param light the light that colours are seen under
 * @param project what was wanted
 * @param steps in the order of work, those that are done first
 * @param needs what is needed from now on
 * @param calendar when each coat that isn't done is painted, in the order of time
 * @param cards test cards that are worth painting first; empty when none was asked for or helps
 */
public record Plan(
    Illuminant light,
    Project project,
    List<PlanStep> steps,
    Needs needs,
    List<Sitting> calendar,
    Optional<NextCards> cards) {
  /** With a wider interval than this a coat is worth a trial on scrap (a ΔE00 that anyone sees). */
  private static final double WIDE = 4;

  /** The coat itself is to blame when it widens the interval by more than this, ΔE00. */
  private static final double WIDER = 0.5;

  /** Copies the lists. */
  public Plan {
    steps = List.copyOf(steps);
    calendar = List.copyOf(calendar);
  }

  /** The steps of an area, in their order. */
  public List<PlanStep> stepsOf(String area) {
    return steps.stream().filter(step -> step.area().equals(area)).toList();
  }

  /** How an area looks in the end. */
  public Look lookOf(String area) {
    List<PlanStep> own = stepsOf(area);
    return own.get(own.size() - 1).look();
  }

  /** The steps that haven't been done yet. */
  public List<PlanStep> toDo() {
    return steps.stream().filter(step -> !step.done()).toList();
  }

  /** The cautions that concern the work that is left, each once. */
  public List<Caution> cautions() {
    List<Coat> coats = toDo().stream().flatMap(step -> step.work().coats().stream()).toList();
    Set<Caution> all = EnumSet.noneOf(Caution.class);
    Caution.forCoats(coats).forEach(all::addAll);
    if (!coats.isEmpty()) {
      all.add(Caution.DATA_SHEET);
    }
    return List.copyOf(all);
  }

  /**
   * The translucent steps whose colour is so uncertain that a strip of scrap plastic, painted like
   * the area and then with one, two, three coats, is worth more than any figure.
   */
  public List<PlanStep> trials() {
    return toDo().stream()
        .filter(step -> step.kind().isTranslucent() && !step.work().coats().isEmpty())
        .filter(step -> step.look().prediction().intervalDeltaE00() >= WIDE)
        .filter(step -> step.look().prediction().intervalDeltaE00() >= before(step) + WIDER)
        .toList();
  }

  /** The interval of the area before a step, 0 before the first. */
  private double before(PlanStep step) {
    return stepsOf(step.area()).stream()
        .filter(earlier -> earlier.number() < step.number())
        .reduce((first, second) -> second)
        .map(earlier -> earlier.look().prediction().intervalDeltaE00())
        .orElse(0.0);
  }

  /** The areas that are painted from bare plastic up without a primer. */
  public List<String> withoutPrimer() {
    return project.areas().stream()
        .filter(area -> area.tasks().stream().noneMatch(task -> task.kind() == StepKind.PRIMER))
        .map(ProjectArea::name)
        .filter(area -> stepsOf(area).stream().noneMatch(PlanStep::done))
        .toList();
  }

  /** What thins the paint of a step, by name; empty when it isn't thinned. */
  public static Optional<String> thinner(PlanStep step) {
    return step.work().amount().thinnerMillilitres() > 0
        ? step.top().map(coat -> Thinner.of(coat.mix()))
        : Optional.empty();
  }
}
