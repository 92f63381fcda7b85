package io.github.swatchwright.estimate;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.paint.FittedOptics;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;

/**
 * One estimate of all paints that painted patches touch, all patches together: the most probable
 * state by damped Gauss–Newton steps in as many dimensions as there are measured values, and the
 * evidence that its covariance follows from.
 *
 * <p>Errors of amounts and of film thickness are unknowns of each patch with a prior of their own;
 * they are integrated out to first order, and so add to the patch's error.
 */
public final class ShelfFit {
  private static final int MOST_STEPS = 25;
  private static final int MOST_HALVINGS = 12;
  private static final double SETTLED = 1e-6;

  /** More rows than this are thinned: of each reflectance the directions that tell least go. */
  private static final int MOST_ROWS = 3600;

  private final ShelfOptics prior;
  private final List<PatchModel> models;
  private final Map<String, GaussianBelief> beliefs = new LinkedHashMap<>();
  private final int earlierRows;
  private final int rowsPerPatch;
  private Map<String, double[]> states = new LinkedHashMap<>();
  private Map<String, double[]> duals = new LinkedHashMap<>();
  private Linear linear;

  private ShelfFit(ShelfOptics prior, List<PaintedPatch> patches, Optional<ShelfFit> start) {
    this.prior = prior;
    models = patches.stream().map(patch -> new PatchModel(patch, prior.surface())).toList();
    for (PaintOptics paint : prior.paints()) {
      String name = paint.paint().name();
      beliefs.put(name, paint.belief());
      states.put(name, paint.belief().mean());
    }
    models.forEach(this::know);
    beliefs.forEach((name, belief) -> duals.put(name, new double[belief.size()]));
    start.ifPresent(
        near -> {
          states.putAll(near.states);
          duals.putAll(near.duals);
        });
    earlierRows = prior.rows().size();
    rowsPerPatch = Math.max(3, (MOST_ROWS - earlierRows) / Math.max(1, models.size()));
    linear = new Linear();
    for (int step = 0; step < MOST_STEPS && improve(); step++) {
      linear = new Linear();
    }
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
   * Fits a shelf to patches.
   *
   * @param prior what is known of the paints, from swatches or from earlier patches
   * @param patches painted patches whose paints it knows
   */
  public static ShelfFit of(ShelfOptics prior, List<PaintedPatch> patches) {
    return new ShelfFit(prior, patches, Optional.empty());
  }

  /** The same shelf fitted to other patches of the same paints, from this fit on. */
  public ShelfFit refit(List<PaintedPatch> patches) {
    return new ShelfFit(prior, patches, Optional.of(this));
  }

  /** One damped step; false when there is nothing left to gain. */
  private boolean improve() {
    double before = objective(states, duals);
    double share = 1;
    for (int halving = 0; halving < MOST_HALVINGS; halving++) {
      Map<String, double[]> trialDuals = new LinkedHashMap<>();
      Map<String, double[]> trialStates = new LinkedHashMap<>();
      for (Map.Entry<String, GaussianBelief> entry : beliefs.entrySet()) {
        String name = entry.getKey();
        double[] from = Objects.requireNonNull(duals.get(name));
        double[] to = linear.rows.pull(name, linear.alpha);
        double[] dual = new double[from.length];
        for (int i = 0; i < dual.length; i++) {
          dual[i] = from[i] + share * (to[i] - from[i]);
        }
        double[] state = entry.getValue().spreadAlong(dual);
        double[] mean = entry.getValue().mean();
        for (int i = 0; i < state.length; i++) {
          state[i] += mean[i];
        }
        trialDuals.put(name, dual);
        trialStates.put(name, state);
      }
      double reached = objective(trialStates, trialDuals);
      if (reached <= before) {
        states = trialStates;
        duals = trialDuals;
        return before - reached > SETTLED * (1 + before);
      }
      share /= 2;
    }
    return false;
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
    double[] earlier = prior.rows().along(shifts);
    value += LowerTriangle.dot(earlier, earlier);
    for (int i = 0; i < models.size(); i++) {
      double[] residual = linear.whiteners.get(i).apply(models.get(i).residual(at));
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

  /** All evidence linearised at the present state. */
  private final class Linear {
    private final List<Whitener> whiteners = new ArrayList<>();
    private final List<Integer> firstRows = new ArrayList<>();
    private final EvidenceRows rows;
    private final LowerTriangle factor;
    private final double[] alpha;

    private Linear() {
      List<List<double[][]>> slopes = new ArrayList<>();
      int size = earlierRows;
      for (PatchModel model : models) {
        PatchModel.Linear at = model.linearise(states);
        Whitener whitener = Whitener.of(at, model.unknowns(), beliefs, rowsPerPatch);
        whiteners.add(whitener);
        slopes.add(at.jacobians().stream().map(whitener::apply).toList());
        firstRows.add(size);
        size += whitener.size();
      }
      firstRows.add(size);
      rows = new EvidenceRows(size, beliefs);
      prior.rows().copyTo(rows);
      double[] innovation = new double[size];
      for (int i = 0; i < models.size(); i++) {
        addPatch(i, slopes.get(i), innovation);
      }
      factor = rows.factor();
      alpha = factor.solve(innovation);
    }

    private void addPatch(int patch, List<double[][]> slopes, double[] innovation) {
      PatchModel model = models.get(patch);
      int first = firstRows.get(patch);
      double[] residual = whiteners.get(patch).apply(model.residual(states));
      for (int row = 0; row < residual.length; row++) {
        innovation[first + row] = residual[row];
        for (int p = 0; p < slopes.size(); p++) {
          String name = model.unknowns().get(p);
          double[] slope = slopes.get(p)[row];
          rows.add(name, first + row, slope);
          innovation[first + row] +=
              LowerTriangle.dot(
                  slope, minus(Objects.requireNonNull(states.get(name)), belief(name).mean()));
        }
      }
    }
  }

  private GaussianBelief belief(String name) {
    return Objects.requireNonNull(beliefs.get(name));
  }

  /**
   * How far a fitted patch lies from what all the others say, in its own and their errors, as a
   * share of what a sound patch exceeds with that probability: above 1 when it contradicts them.
   *
   * @param patch its place among the patches
   * @param chance above 0 to below 1
   */
  public double surprise(int patch, double chance) {
    int first = linear.firstRows.get(patch);
    int end = linear.firstRows.get(patch + 1);
    double[][] block = linear.factor.inverseBlock(first, end);
    double[][] lower = new double[block.length][];
    for (int i = 0; i < lower.length; i++) {
      lower[i] = Arrays.copyOf(block[i], i + 1);
    }
    double[] pull =
        LowerTriangle.factor(lower).forward(Arrays.copyOfRange(linear.alpha, first, end));
    return LowerTriangle.dot(pull, pull) / usual(pull.length, chance);
  }

  /**
   * How far a patch that was not fitted lies from what the others say, as a share of what a sound
   * patch exceeds with that probability.
   *
   * @param patch a patch of paints that were fitted
   * @param chance above 0 to below 1
   */
  public double surprise(PaintedPatch patch, double chance) {
    PatchModel model = new PatchModel(patch, prior.surface());
    know(model);
    PatchModel.Linear at = model.linearise(states);
    Map<String, double[][]> jacobians = new LinkedHashMap<>();
    for (int p = 0; p < model.unknowns().size(); p++) {
      jacobians.put(model.unknowns().get(p), at.jacobians().get(p));
    }
    double[][] spread = linear.rows.covarianceOf(jacobians, linear.factor);
    double[][] lower = new double[spread.length][];
    for (int i = 0; i < lower.length; i++) {
      lower[i] = Arrays.copyOf(spread[i], i + 1);
      for (int j = 0; j <= i; j++) {
        lower[i][j] += at.noise()[i][j];
      }
    }
    double[] pull = LowerTriangle.factor(lower).forward(model.residual(states));
    return LowerTriangle.dot(pull, pull) / usual(pull.length, chance);
  }

  /** What χ² with so many degrees of freedom exceeds with that probability. */
  private static double usual(int values, double chance) {
    return new ChiSquaredDistribution(values).inverseCumulativeProbability(1 - chance);
  }

  /**
   * ln of how probable the patches were, by Laplace's approximation, but for a constant of the
   * measurements' errors. Amounts that err widen a patch's own error, and count.
   */
  double logEvidence() {
    double value = objective(states, duals) + linear.factor.logDeterminant();
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
    PatchModel model = new PatchModel(patch, prior.surface());
    know(model);
    return model.lab(states);
  }

  /** How strong the batches are that the patches name, in the order in which they name them. */
  public List<BatchStrength> batches() {
    return batchesOfPatches().stream()
        .map(
            batch -> {
              double log = Objects.requireNonNull(states.get(batch.key()))[0];
              double variance =
                  linear
                      .rows
                      .covarianceOf(Map.of(batch.key(), new double[][] {{1}}), linear.factor)[0][0];
              return new BatchStrength(batch, Math.exp(log), Math.sqrt(variance));
            })
        .toList();
  }

  private Set<PaintBatch> batchesOfPatches() {
    Set<PaintBatch> batches = new LinkedHashSet<>();
    models.forEach(model -> batches.addAll(model.batches()));
    return batches;
  }

  /** The shelf with what the patches have taught written into its paints, ready to be stored. */
  public Shelf shelf() {
    Map<String, List<Double>> residuals = new LinkedHashMap<>();
    for (int i = 0; i < models.size(); i++) {
      double deltaE = models.get(i).deltaE00(states);
      for (String name : models.get(i).paints()) {
        residuals.computeIfAbsent(name, paint -> new ArrayList<>()).add(deltaE);
      }
    }
    Set<String> batches =
        batchesOfPatches().stream().map(PaintBatch::key).collect(Collectors.toSet());
    EvidenceRows all = batches.isEmpty() ? linear.rows : linear.rows.integrated(batches);
    List<Paint> paints = new ArrayList<>();
    for (Paint paint : prior.shelf().paints()) {
      List<FittedOptics.Row> rows =
          beliefs.containsKey(paint.name()) ? all.of(paint.name()) : List.of();
      paints.add(
          rows.isEmpty()
              ? paint
              : fitted(paint, rows, residuals.getOrDefault(paint.name(), List.of())));
    }
    return new Shelf(prior.shelf().name(), paints, Optional.of(prior.surface()));
  }

  private Paint fitted(Paint paint, List<FittedOptics.Row> rows, List<Double> residuals) {
    double[] state = Objects.requireNonNull(states.get(paint.name()));
    int before = paint.optics().map(FittedOptics::cards).orElse(0);
    double sum = paint.optics().map(FittedOptics::residualDeltaE00).orElse(0.0) * before;
    int cards = before + residuals.size();
    for (double residual : residuals) {
      sum += residual;
    }
    return paint.withOptics(
        new FittedOptics(
            Arrays.copyOf(state, state.length / 2),
            Arrays.copyOfRange(state, state.length / 2, state.length),
            cards,
            cards == 0 ? 0 : sum / cards,
            rows));
  }
}
