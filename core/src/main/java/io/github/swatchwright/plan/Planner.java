package io.github.swatchwright.plan;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.calibrate.CardAdvisor;
import io.github.swatchwright.calibrate.CardErrors;
import io.github.swatchwright.calibrate.NextCards;
import io.github.swatchwright.coat.CoatPredictor;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.match.Matcher;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Plans projects from one shelf under one light. Immutable. */
public final class Planner {
  private final ShelfOptics optics;
  private final TristimulusWeights light;
  private final Matcher matcher;
  private final int testCards;

  private Planner(ShelfOptics optics, TristimulusWeights light, Matcher matcher, int testCards) {
    this.optics = optics;
    this.light = light;
    this.matcher = matcher;
    this.testCards = testCards;
  }

  /** A planner that names no test cards. */
  public static Planner of(ShelfOptics optics, TristimulusWeights light) {
    return new Planner(optics, light, Matcher.of(optics, light), 0);
  }

  /** This planner with a limit for the test cards that it may suggest painting first: 0 to 10. */
  public Planner withTestCards(int most) {
    return new Planner(
        optics, light, matcher, Require.within("cards", most, 0, CardAdvisor.MOST_CARDS));
  }

  /**
   * Plans a project.
   *
   * @throws IllegalArgumentException when no order harms nothing, or a step can't be done; the
   *     message names the area and the step
   */
  public Plan plan(Project project) {
    return plan(project, List.of());
  }

  /**
   * Plans what is left of a project. What was measured replaces what was expected: later steps are
   * worked out again, so that they still end where the plan promised.
   *
   * @param project what is wanted
   * @param progress how far it has been carried out, the earliest first; each by the numbers of the
   *     plan that follows from those before it
   * @throws IllegalArgumentException as {@link #plan(Project)} does, and when a step isn't there or
   *     comes before one that is done
   */
  public Plan plan(Project project, List<Done> progress) {
    Tools tools =
        new Tools(optics, light, CoatPredictor.of(optics, light), matcher, project.application());
    Progress now = Progress.first(tools, project);
    for (Done done : progress) {
      now = now.after(done);
    }
    List<PlanStep> steps = now.steps();
    return new Plan(
        light.illuminant(),
        project,
        steps,
        new NeedsCount(tools.clearCoats()).of(steps),
        now.calendar(),
        testCards == 0 ? Optional.empty() : cards(project, steps));
  }

  private Optional<NextCards> cards(Project project, List<PlanStep> steps) {
    List<Swatch> targets = new ArrayList<>();
    for (PlanStep step : steps) {
      if (!step.done() && step.kind() == StepKind.BASE && step.task().isPresent()) {
        Aim aim = project.area(step.area()).tasks().get(step.task().getAsInt()).aim();
        Lab expected = step.look().prediction().lab();
        targets.add(aim instanceof Aim.OfColour some ? some.swatch() : Tools.asSwatch(expected));
      }
    }
    if (targets.isEmpty()) {
      return Optional.empty();
    }
    NextCards found = CardAdvisor.of(optics, CardErrors.USUAL).forTargets(targets, testCards);
    return found.cards().isEmpty() ? Optional.empty() : Optional.of(found);
  }
}
