package io.github.swatchwright.plan;

import io.github.swatchwright.coat.Coat;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.paint.Medium;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A step of a plan.
 *
 * @param number its place in the order of work, from 1
 * @param area the name of its area
 * @param task the place of the task that it comes from in the area's list, from 0; empty for a step
 *     that the plan put in
 * @param kind what it does
 * @param work what is painted
 * @param look how the area looks then
 * @param done whether it is done
 * @param advice why it stands here, and what to mind, in sentences
 */
public record PlanStep(
    int number,
    String area,
    OptionalInt task,
    StepKind kind,
    Work work,
    Look look,
    boolean done,
    List<String> advice) {
  /** Copies the list. */
  public PlanStep {
    advice = List.copyOf(advice);
  }

  PlanStep withNumber(int place) {
    return new PlanStep(place, area, task, kind, work, look, done, advice);
  }

  PlanStep asDone(Optional<Lab> measured) {
    Look seen = new Look(look.prediction(), look.wanted(), measured.or(look::measured));
    return new PlanStep(number, area, task, kind, work, seen, true, advice);
  }

  /** The coat on top, when it isn't left out. */
  Optional<Coat> top() {
    List<Coat> coats = work.coats();
    return coats.isEmpty() ? Optional.empty() : Optional.of(coats.get(coats.size() - 1));
  }

  /** What is painted with, when anything is. */
  public Optional<Medium> medium() {
    return top().map(Coat::medium);
  }
}
