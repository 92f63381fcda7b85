package io.github.swatchwright.estimate;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;

/**
 * One estimate of all paints that painted patches touch, from all patches together: the most
 * probable state by damped Gauss–Newton steps in as many dimensions as there are measured values,
 * and the evidence that its covariance follows from.
 *
 * <p>Errors of amounts and of film thickness are unknowns of each patch with a prior of their own;
 * they are integrated out to first order, and so add to the patch's error. Each paint has a
 * strength for each painting day, see {@link PaintingDays}. A patch may count for less than it
 * says, see {@link #refit}.
 */
public final class ShelfFit {
  private static final int MOST_STEPS = 20;
  private static final int MOST_HALVINGS = 12;
  private static final double SETTLED = 1e-3;
  private static final double NEARLY_SETTLED = 0.03;
  private static final int ROUNDS = 3;

  /** With more values than this, neighbouring bands of reflectances are taken together. */
  private static final int MOST_ROWS = 700;

  /** So many bands, 40 nm, are taken together at most, and at the start. */
  private static final int WIDEST = 4;

  /** Cards that are less likely to be wrong than this aren't looked at twice. */
  private static final double WORTH_A_LOOK = 0.2;

  /** How far ln strength may lie from what is usual, as sd, where hiding isn't stated. */
  private static final double UNKNOWN_STRENGTH = 2;

  /** The same where it is: statements of hiding err, too. */
  private static final double STATED_STRENGTH = 0.5;

  /** How rarely a right card is further off than what is called unexpected. */
  private static final double RARELY = 0.005;

  /** So many cards that agree as well as expected are what is believed of widths at first. */
  private static final double PRIOR_CARDS = 10;

  /**
   * What χ²/3 of three values exceeds once in a hundred times: one card tells no more of widths.
   */
  private static final double MOST_OF_A_CARD = 3.8;

  private final ShelfOptics prior;
  private final List<PaintedPatch> patches;
  private final double[] weights;
  private final BooleanSupplier cancelled;
  private final int width;
  private final PaintingDays days;
  private final List<PatchModel> models;
  private final Map<String, GaussianBelief> beliefs = new LinkedHashMap<>();
  private final EvidenceRows earlier;
  private StepSpread stepSpread;
  private Map<String, double[]> states = new LinkedHashMap<>();
  private Map<String, double[]> duals = new LinkedHashMap<>();
  private List<Whitener> whiteners;
  private FitRows linear;

  private ShelfFit(
      ShelfOptics prior,
      List<PaintedPatch> patches,
      double[] weights,
      Optional<ShelfFit> start,
      BooleanSupplier cancelled,
      int width) {
    this.prior = prior;
    this.width = width;
    this.patches = patches;
    this.weights = weights;
    this.cancelled = cancelled;
    days = PaintingDays.of(prior, patches);
    models =
        patches.stream().map(patch -> new PatchModel(patch, prior.surface(), days, width)).toList();
    for (PaintOptics paint : prior.paints()) {
      know(paint.paint().name(), paint.belief());
    }
    stepSpread = start.map(near -> near.stepSpread).orElseGet(StepSpread::usual);
    days.steps().forEach(step -> know(step.key(), step.belief(prior, stepSpread)));
    models.forEach(this::know);
    beliefs.forEach((name, belief) -> duals.put(name, new double[belief.size()]));
    start.ifPresent(this::startFrom);
    earlier = days.earlierRows(prior, beliefs);
    whiteners = whitened();
    linear = linearised();
    settle();
  }

  private List<Whitener> whitened() {
    return models.stream().map(model -> Whitener.of(model.linearise(states))).toList();
  }

  private List<Whitener> whitenedTelling() {
    return models.stream()
        .map(model -> Whitener.telling(model.linearise(states), model.unknowns(), beliefs))
        .toList();
  }

  /** Takes over how far another fit has come. */
  private void startFrom(ShelfFit near) {
    near.duals.forEach(
        (name, dual) -> {
          if (beliefs.containsKey(name)) {
            duals.put(name, dual);
            states.put(name, moved(belief(name), dual));
          }
        });
  }

  /** The mean, and C times the dual further on. */
  private static double[] moved(GaussianBelief belief, double[] dual) {
    double[] state = belief.spreadAlong(dual);
    double[] mean = belief.mean();
    for (int i = 0; i < state.length; i++) {
      state[i] += mean[i];
    }
    return state;
  }

  /** Takes up what a patch depends on: batches, and paints without a masstone. */
  private void know(PatchModel model) {
    for (PaintBatch batch : model.batches()) {
      know(batch.key(), PaintBatch.unseen());
    }
    for (String name : model.paints()) {
      if (!beliefs.containsKey(name)) {
        Paint paint = prior.shelf().paint(name);
        if (paint.effect().isPresent()) {
          prior.of(name);
        }
        know(paint.name(), OpticsPrior.unseen());
      }
    }
  }

  private void know(String name, GaussianBelief belief) {
    beliefs.putIfAbsent(name, belief);
    states.putIfAbsent(name, belief.mean());
  }

  /**
   * Fits a shelf to patches, each of which counts in full.
   *
   * @param prior what is known of the paints, from swatches or from earlier patches
   * @param patches painted patches whose paints it knows
   */
  public static ShelfFit of(ShelfOptics prior, List<PaintedPatch> patches) {
    return of(prior, patches, () -> false);
  }

  /**
   * The same, unless it is cancelled.
   *
   * @param cancelled asked every now and then; true ends the fit
   * @throws CancellationException when it was cancelled
   */
  public static ShelfFit of(
      ShelfOptics prior, List<PaintedPatch> patches, BooleanSupplier cancelled) {
    double[] full = new double[patches.size()];
    Arrays.fill(full, 1);
    int width = 1;
    while (values(patches) / width > MOST_ROWS && width < WIDEST) {
      width *= 2;
    }
    ShelfFit fit = new ShelfFit(prior, patches, full, Optional.empty(), cancelled, WIDEST);
    return hasReflectances(patches)
        ? new ShelfFit(prior, patches, full, Optional.of(fit), cancelled, width)
        : fit;
  }

  private static boolean hasReflectances(List<PaintedPatch> patches) {
    return patches.stream().anyMatch(patch -> patch.measured() instanceof Swatch.OfReflectance);
  }

  /** How many values of reflectances were measured. */
  private static int values(List<PaintedPatch> patches) {
    return patches.stream()
        .mapToInt(
            patch ->
                patch.measured() instanceof Swatch.OfReflectance measured
                    ? measured.values().length
                    : 0)
        .sum();
  }

  /**
   * The same patches with other weights, from this fit on.
   *
   * @param newWeights how much each patch counts, above 0 to 1: its error variance is divided by it
   */
  public ShelfFit refit(double... newWeights) {
    return new ShelfFit(prior, patches, newWeights.clone(), Optional.of(this), cancelled, width);
  }

  /** Only some of the patches, with their weights, from this fit on. */
  public ShelfFit refit(List<Integer> kept) {
    return new ShelfFit(
        prior,
        kept.stream().map(patches::get).toList(),
        kept.stream().mapToDouble(place -> weights[place]).toArray(),
        Optional.of(this),
        cancelled,
        width);
  }

  /** The same patches under another surface, from this fit on. */
  ShelfFit under(ShelfOptics otherSurface) {
    return new ShelfFit(otherSurface, patches, weights, Optional.of(this), cancelled, width);
  }

  private FitRows linearised() {
    if (cancelled.getAsBoolean()) {
      throw new CancellationException("the fit was cancelled");
    }
    return FitRows.of(models, weights, beliefs, states, earlier, whiteners);
  }

  /**
   * Finds the most probable state. The errors are taken where it has come to (an error of the
   * amounts shifts a colour by as much as the colour depends on them), until little is left to
   * gain; from then on they stay. In between, learns how strengths spread from day to day.
   */
  private void settle() {
    boolean hasSteps = !days.steps().isEmpty();
    for (int round = 0; round < (hasSteps ? ROUNDS : 1); round++) {
      if (round > 0) {
        respread();
      }
      double gain = 1;
      for (int step = 0; step < MOST_STEPS && gain > SETTLED; step++) {
        if (step > 0 || round > 0) {
          whiteners = gain > NEARLY_SETTLED && round == 0 ? whitened() : whitenedTelling();
          linear = linearised();
        }
        gain = improve();
      }
    }
    whiteners = whitenedTelling();
    linear = linearised();
  }

  /** Sets the spread of steps by what was found. */
  private void respread() {
    Map<String, Double> squares = new LinkedHashMap<>();
    for (DayStep step : days.steps()) {
      double log = Objects.requireNonNull(states.get(step.key()))[0];
      squares.put(step.key(), log * log + variance(step.key()));
    }
    stepSpread = stepSpread.learned(squares);
    days.steps().forEach(step -> beliefs.put(step.key(), step.belief(prior, stepSpread)));
    for (DayStep step : days.steps()) {
      double log = Objects.requireNonNull(states.get(step.key()))[0];
      double variance = belief(step.key()).covarianceOf(new double[][] {{1}})[0][0];
      duals.put(step.key(), new double[] {(log - belief(step.key()).mean()[0]) / variance});
    }
  }

  /** One damped step; returns what share of the objective it has gained, 0 when nothing. */
  private double improve() {
    double before = objective(states, duals);
    double share = 1;
    for (int halving = 0; halving < MOST_HALVINGS; halving++) {
      Map<String, double[]> trialDuals = new LinkedHashMap<>();
      Map<String, double[]> trialStates = new LinkedHashMap<>();
      for (Map.Entry<String, GaussianBelief> entry : beliefs.entrySet()) {
        String name = entry.getKey();
        double[] from = Objects.requireNonNull(duals.get(name));
        double[] to = linear.wantedDual(name);
        double[] dual = new double[from.length];
        for (int i = 0; i < dual.length; i++) {
          dual[i] = from[i] + share * (to[i] - from[i]);
        }
        trialDuals.put(name, dual);
        trialStates.put(name, moved(entry.getValue(), dual));
      }
      double reached = objective(trialStates, trialDuals);
      if (reached <= before) {
        states = trialStates;
        duals = trialDuals;
        return (before - reached) / (1 + before);
      }
      share /= 2;
    }
    return 0;
  }

  /** Twice the negative log posterior, with the errors as linearised last. */
  private double objective(Map<String, double[]> at, Map<String, double[]> dualsAt) {
    double value = 0;
    Map<String, double[]> shifts = new LinkedHashMap<>();
    for (Map.Entry<String, GaussianBelief> entry : beliefs.entrySet()) {
      double[] shift =
          minus(Objects.requireNonNull(at.get(entry.getKey())), entry.getValue().mean());
      value += LowerTriangle.dot(Objects.requireNonNull(dualsAt.get(entry.getKey())), shift);
      shifts.put(entry.getKey(), shift);
    }
    double[] before = earlier.along(shifts);
    value += LowerTriangle.dot(before, before);
    for (int i = 0; i < weights.length; i++) {
      double[] residual = linear.misfit(i, at);
      value += LowerTriangle.dot(residual, residual);
    }
    return Double.isNaN(value) ? Double.POSITIVE_INFINITY : value;
  }

  static double[] minus(double[] a, double[] b) {
    double[] difference = a.clone();
    for (int i = 0; i < difference.length; i++) {
      difference[i] -= b[i];
    }
    return difference;
  }

  private GaussianBelief belief(String name) {
    return Objects.requireNonNull(beliefs.get(name));
  }

  private double variance(String strength) {
    return linear.rows()
        .covarianceOf(Map.of(strength, new double[][] {{1}}), linear.factor())[0][0];
  }

  /** How many patches there are. */
  public int size() {
    return weights.length;
  }

  /** The patches, in their order. */
  public List<PaintedPatch> patches() {
    return patches;
  }

  /**
   * How little a patch agrees with all the others and the statements.
   *
   * @param patch its place among the patches
   */
  public Suspicion suspicion(int patch) {
    LeftOut left = linear.leftOut(patch);
    if (left.outlierChance() < WORTH_A_LOOK) {
      return new Suspicion(left.logOdds(), left.outlierChance());
    }
    Map<String, Double> sd = new LinkedHashMap<>();
    for (String name : models.get(patch).paints()) {
      boolean hasHiding = prior.shelf().paint(name).hiding().isPresent();
      sd.put(name, hasHiding ? STATED_STRENGTH : UNKNOWN_STRENGTH);
    }
    double byOthers = linear.leftOutUnexpectant(patch, sd).outlierChance();
    return new Suspicion(left.logOdds(), Math.min(left.outlierChance(), byOthers));
  }

  /**
   * How far a patch lies from what the shelf foretold before any of these patches, as a share of
   * what a right patch exceeds once in two hundred times: above 1 when it is unexpected.
   *
   * @param patch its place among the patches
   */
  public double surprise(int patch) {
    PatchModel model = models.get(patch);
    Map<String, double[]> before = new LinkedHashMap<>();
    beliefs.forEach((name, belief) -> before.put(name, belief.mean()));
    PatchModel.Linear at = model.linearise(before);
    Map<String, double[][]> jacobians = new LinkedHashMap<>();
    for (int p = 0; p < model.unknowns().size(); p++) {
      jacobians.put(model.unknowns().get(p), at.jacobians().get(p));
    }
    double[][] spread = earlier.covarianceOf(jacobians, earlier.factor());
    double[][] lower = new double[spread.length][];
    for (int i = 0; i < lower.length; i++) {
      lower[i] = Arrays.copyOf(spread[i], i + 1);
      for (int j = 0; j <= i; j++) {
        lower[i][j] += at.noise()[i][j];
      }
    }
    double[] pull = LowerTriangle.factor(lower).forward(model.residual(before));
    return LowerTriangle.dot(pull, pull)
        / new ChiSquaredDistribution(pull.length).inverseCumulativeProbability(1 - RARELY);
  }

  /**
   * How wide errors turned out to be, as a share of what was expected: from how far each patch lies
   * from what the others foretell, with a prior worth ten cards.
   */
  public double widthScale() {
    double squares = PRIOR_CARDS;
    double cards = PRIOR_CARDS;
    for (int i = 0; i < weights.length; i++) {
      LeftOut left = linear.leftOut(i);
      double square = left.squaredDistance() / left.size();
      squares += Math.min(square, MOST_OF_A_CARD) * weights[i];
      cards += weights[i];
    }
    return Math.sqrt(squares / cards);
  }

  /**
   * ln of how probable the patches were, by Laplace's approximation, but for a constant of the
   * measurements' errors. Amounts that err widen a patch's own error, and count.
   */
  double logEvidence() {
    double value = objective(states, duals) + linear.factor().logDeterminant();
    for (PatchModel model : models) {
      double[][] noise = model.linearise(states).noise();
      for (int i = 0; i < noise.length; i++) {
        value -= Math.log(model.variances()[i]);
      }
      value += LowerTriangle.factor(noise).logDeterminant();
    }
    return -0.5 * value;
  }

  /** The colour that the fit expects of a patch, under D65. */
  public Lab lab(PaintedPatch patch) {
    PatchModel model = new PatchModel(patch, prior.surface(), days, width);
    know(model);
    return model.lab(states);
  }

  /** How strong the batches are that the patches name, in the order in which they name them. */
  public List<BatchStrength> batches() {
    return batchesOfPatches().stream()
        .map(
            batch ->
                new BatchStrength(
                    batch,
                    Math.exp(Objects.requireNonNull(states.get(batch.key()))[0]),
                    Math.sqrt(variance(batch.key()))))
        .toList();
  }

  /** How strong each paint is on its latest day, compared with each of the days before. */
  public List<DayStrength> dayStrengths() {
    List<DayStrength> strengths = new ArrayList<>();
    for (PaintOptics paint : prior.paints()) {
      String name = paint.paint().name();
      for (Optional<LocalDate> day : days.of(name)) {
        List<DayStep> steps = days.since(name, day);
        if (!steps.isEmpty()) {
          strengths.add(strength(name, day, steps));
        }
      }
    }
    return strengths;
  }

  private DayStrength strength(String paint, Optional<LocalDate> day, List<DayStep> steps) {
    double log = 0;
    Map<String, double[][]> jacobians = new LinkedHashMap<>();
    for (DayStep step : steps) {
      log -= Objects.requireNonNull(states.get(step.key()))[0];
      jacobians.put(step.key(), new double[][] {{1}});
    }
    double variance = linear.rows().covarianceOf(jacobians, linear.factor())[0][0];
    Optional<LocalDate> latest = days.of(paint).get(days.of(paint).size() - 1);
    return new DayStrength(paint, day, latest, Math.exp(log), Math.sqrt(variance));
  }

  private Set<PaintBatch> batchesOfPatches() {
    Set<PaintBatch> batches = new LinkedHashSet<>();
    models.forEach(model -> batches.addAll(model.batches()));
    return batches;
  }

  /** The shelf with what the patches have taught written into its paints, ready to be stored. */
  public Shelf shelf() {
    Map<String, List<Double>> residuals = new LinkedHashMap<>();
    for (PatchModel model : models) {
      double deltaE = model.deltaE00(states);
      for (String name : model.paints()) {
        residuals.computeIfAbsent(name, paint -> new ArrayList<>()).add(deltaE);
      }
    }
    Set<String> batches =
        batchesOfPatches().stream().map(PaintBatch::key).collect(Collectors.toSet());
    EvidenceRows all = batches.isEmpty() ? linear.rows() : linear.rows().integrated(batches);
    FittedPaints fitted =
        new FittedPaints(prior, days, beliefs, states, stepSpread, all, widthScale());
    List<Paint> paints =
        prior.shelf().paints().stream()
            .map(paint -> fitted.of(paint, residuals.getOrDefault(paint.name(), List.of())))
            .toList();
    return new Shelf(prior.shelf().name(), paints, Optional.of(prior.surface()));
  }
}
