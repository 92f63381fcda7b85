package io.github.swatchwright.ladder;

import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.mix.Control;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.Optional;

/**
 * Plans ladders from one shelf under one light: the recipes of the ends, the shades between them in
 * whole drops from rung to rung, and the coverage of each pass. Immutable.
 */
public final class LadderPlanner {
  /** Ends nearer than that, in ΔE00, are one shade to the eye. */
  public static final double NEAREST_ENDS = 1;

  private final ShelfOptics optics;
  private final TristimulusWeights light;

  private LadderPlanner(ShelfOptics optics, TristimulusWeights light) {
    this.optics = optics;
    this.light = light;
  }

  /** A planner for one shelf under one light. */
  public static LadderPlanner of(ShelfOptics optics, TristimulusWeights light) {
    return new LadderPlanner(optics, light);
  }

  /**
   * Plans the ladder that a painter would mix: the one that costs least by the prices of {@code
   * core/docs/ladders.md}.
   *
   * @throws NoLadderException when no ladder gets steadily lighter or darker in visible steps; it
   *     holds the requests that would do instead, where any does
   * @throws IllegalArgumentException when the ends are one shade or as light as each other, a paint
   *     isn't on the shelf or can't be computed with, or the largest pot isn't enough for a pass
   */
  public Ladder plan(LadderRequest request) {
    return planned(request, Control.PLAIN);
  }

  /**
   * The same, stopped and watched by a control.
   *
   * @throws java.util.concurrent.CancellationException when it was stopped
   */
  public Ladder plan(LadderRequest request, Control control) {
    return control.onOwnThreads(own -> planned(request, own));
  }

  private Ladder planned(LadderRequest request, Control control) {
    LadderPlanning planning = new LadderPlanning(request, optics, light, control);
    Optional<PlannedPots> found = planning.cheapest();
    if (found.isEmpty()) {
      throw new LadderRefusal(request, optics, light, control).of(planning);
    }
    Ladder ladder = new LadderWriter(request, optics, light, found.get()).ladder();
    control.progress().reached(1);
    return ladder;
  }
}
