package io.github.swatchwright.estimate;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

/**
 * The most probable state of everything that patches depend on: paints, batches, and the steps of
 * strength from day to day. Found by {@link DampedSearch}, with d laid out one unknown after the
 * other.
 *
 * <p>Errors are taken where the search has come to (an error of the amounts shifts a colour by as
 * much as the colour depends on them). A first search takes all measured values, a second one only
 * those that tell something, which can only be said near the end. In between, it is learned how
 * strengths spread from day to day.
 */
final class JointSearch implements DampedSearch.Problem {
  private static final int MOST_STEPS = 20;
  private static final DampedSearch FIRST = new DampedSearch(MOST_STEPS, 0.03);
  private static final DampedSearch LAST = new DampedSearch(MOST_STEPS, 1e-3);
  private static final int ROUNDS = 3;

  private final ShelfOptics prior;
  private final PaintingDays days;
  private final List<PatchModel> models;
  private final double[] weights;
  private final BooleanSupplier cancelled;
  private final EvidenceRows earlier;
  private final Map<String, GaussianBelief> beliefs;
  private final Map<String, Integer> starts = new LinkedHashMap<>();
  private final double[] start;
  private StepSpread stepSpread;
  private boolean isNearlySettled;
  private Map<String, double[]> states;
  private FitRows linear;

  /**
   * Searches from the means, or from where another search has ended.
   *
   * @param beliefs what is believed of all that the patches depend on, but for the steps
   * @param weights how much each patch counts, above 0 to 1
   * @param near another search, of whatever patches
   * @param cancelled asked before each step; true ends the search
   * @throws CancellationException when it was cancelled
   */
  JointSearch(
      ShelfOptics prior,
      PaintingDays days,
      Map<String, GaussianBelief> beliefs,
      List<PatchModel> models,
      double[] weights,
      Optional<JointSearch> near,
      BooleanSupplier cancelled) {
    this.prior = prior;
    this.days = days;
    this.models = models;
    this.weights = weights;
    this.cancelled = cancelled;
    this.beliefs = new LinkedHashMap<>(beliefs);
    stepSpread = near.map(other -> other.stepSpread).orElseGet(StepSpread::usual);
    believeSteps();
    int size = 0;
    for (Map.Entry<String, GaussianBelief> entry : this.beliefs.entrySet()) {
      starts.put(entry.getKey(), size);
      size += entry.getValue().size();
    }
    earlier = days.earlierRows(prior, this.beliefs);
    start = new double[size];
    near.ifPresent(this::takeOver);
    states = states(start);
    linear = settled();
  }

  private void believeSteps() {
    days.steps().forEach(step -> beliefs.put(step.key(), step.belief(prior, stepSpread)));
  }

  private void takeOver(JointSearch near) {
    starts.forEach(
        (name, from) -> {
          Integer there = near.starts.get(name);
          if (there != null) {
            System.arraycopy(near.start, there, start, from, belief(name).size());
          }
        });
  }

  /** Searches, and gives the evidence linearised where the search has ended. */
  private FitRows settled() {
    moveTo(FIRST.from(start.clone(), this).d());
    isNearlySettled = true;
    moveTo(LAST.from(start.clone(), this).d());
    for (int round = 1; round < (days.steps().isEmpty() ? 1 : ROUNDS); round++) {
      respread();
      moveTo(LAST.from(start.clone(), this).d());
    }
    return linearised();
  }

  private void moveTo(double[] d) {
    System.arraycopy(d, 0, start, 0, start.length);
    states = states(start);
  }

  /** Sets the spread of steps by what was found, and d so that the steps stay where they are. */
  private void respread() {
    Map<String, Double> squares = new LinkedHashMap<>();
    for (DayStep step : days.steps()) {
      double log = state(step.key())[0];
      squares.put(step.key(), log * log + variance(step.key()));
    }
    stepSpread = stepSpread.learned(squares);
    believeSteps();
    for (DayStep step : days.steps()) {
      GaussianBelief belief = belief(step.key());
      double variance = belief.covarianceOf(new double[][] {{1}})[0][0];
      start[start(step.key())] = (state(step.key())[0] - belief.mean()[0]) / variance;
    }
  }

  private FitRows linearised() {
    if (cancelled.getAsBoolean()) {
      throw new CancellationException("stopped before it was complete");
    }
    return FitRows.of(models, weights, beliefs, states, earlier, isNearlySettled);
  }

  @Override
  public double[] target(double[] d) {
    states = states(d);
    linear = linearised();
    double[] target = new double[d.length];
    starts.forEach(
        (name, from) -> {
          double[] wanted = linear.wantedDual(name);
          System.arraycopy(wanted, 0, target, from, wanted.length);
        });
    return target;
  }

  @Override
  public double objective(double[] d) {
    Map<String, double[]> at = states(d);
    Map<String, double[]> shifts = new LinkedHashMap<>();
    double value = 0;
    for (Map.Entry<String, GaussianBelief> entry : beliefs.entrySet()) {
      double[] state = Objects.requireNonNull(at.get(entry.getKey()));
      double[] shift = ShelfFit.minus(state, entry.getValue().mean());
      value += LowerTriangle.dot(dual(entry.getKey(), d), shift);
      shifts.put(entry.getKey(), shift);
    }
    double[] before = earlier.along(shifts);
    value += LowerTriangle.dot(before, before);
    for (int i = 0; i < weights.length; i++) {
      double[] residual = linear.misfit(i, at);
      value += LowerTriangle.dot(residual, residual);
    }
    return value;
  }

  /** The mean of each unknown, and C times its part of d further on. */
  private Map<String, double[]> states(double[] d) {
    Map<String, double[]> at = new LinkedHashMap<>();
    beliefs.forEach(
        (name, belief) -> {
          double[] state = belief.spreadAlong(dual(name, d));
          double[] mean = belief.mean();
          for (int i = 0; i < state.length; i++) {
            state[i] += mean[i];
          }
          at.put(name, state);
        });
    return at;
  }

  private double[] dual(String name, double[] d) {
    int from = start(name);
    return Arrays.copyOfRange(d, from, from + belief(name).size());
  }

  private int start(String name) {
    return Objects.requireNonNull(starts.get(name));
  }

  private GaussianBelief belief(String name) {
    return Objects.requireNonNull(beliefs.get(name));
  }

  /** Twice the negative log posterior where the search has ended. */
  double objective() {
    return objective(start);
  }

  /** What was found of everything, by its name. */
  Map<String, double[]> states() {
    return states;
  }

  /** What was found of one paint, batch or step. */
  double[] state(String name) {
    return Objects.requireNonNull(states.get(name));
  }

  /** What was believed of everything before the patches, by its name. */
  Map<String, GaussianBelief> beliefs() {
    return beliefs;
  }

  /** How strengths turned out to spread from day to day. */
  StepSpread stepSpread() {
    return stepSpread;
  }

  /** All evidence, linearised where the search has ended. */
  FitRows linear() {
    return linear;
  }

  /** The evidence of earlier patches. */
  EvidenceRows earlier() {
    return earlier;
  }

  /** The variance of a batch's or a step's ln strength. */
  double variance(String strength) {
    return linear.rows()
        .covarianceOf(Map.of(strength, new double[][] {{1}}), linear.factor())[0][0];
  }
}
