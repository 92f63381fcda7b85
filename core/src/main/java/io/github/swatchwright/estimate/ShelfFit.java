package io.github.swatchwright.estimate;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;

/**
 * One estimate of all paints that painted patches touch, from all patches together: the most
 * probable state, searched in as many dimensions as there are measured values ({@link
 * DampedSearch}), and the evidence that its covariance follows from.
 *
 * <p>Errors of amounts and of film thickness are unknowns of each patch with a prior of their own;
 * they are integrated out to first order, and so add to the patch's error. Each paint has a
 * strength for each painting day, see {@link PaintingDays}. A patch may count for less than it
 * says, see {@link #refit}.
 */
public final class ShelfFit {
  /** With more values than this, neighbouring bands of reflectances are taken together. */
  private static final int MOST_ROWS = 700;

  /** So many bands, 40 nm, are taken together at most, and at the start. */
  private static final int WIDEST = 4;

  private final ShelfOptics prior;
  private final List<PaintedPatch> patches;
  private final double[] weights;
  private final BooleanSupplier cancelled;
  private final int width;
  private final PaintingDays days;
  private final List<PatchModel> models;
  private final JointSearch found;

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
    Map<String, GaussianBelief> beliefs = new LinkedHashMap<>();
    prior.paints().forEach(paint -> beliefs.put(paint.paint().name(), paint.belief()));
    models.forEach(model -> believe(model, beliefs));
    found =
        new JointSearch(
            prior, days, beliefs, models, weights, start.map(fit -> fit.found), cancelled);
  }

  /** Adds what is believed of a patch's batches, and of paints without a masstone. */
  private void believe(PatchModel model, Map<String, GaussianBelief> beliefs) {
    for (PaintBatch batch : model.batches()) {
      beliefs.putIfAbsent(batch.key(), PaintBatch.unseen());
    }
    for (String name : model.paints()) {
      if (!beliefs.containsKey(name)) {
        Paint paint = prior.shelf().paint(name);
        if (paint.effect().isPresent()) {
          prior.of(name);
        }
        beliefs.put(paint.name(), OpticsPrior.unseen());
      }
    }
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

  static double[] minus(double[] a, double[] b) {
    double[] difference = a.clone();
    for (int i = 0; i < difference.length; i++) {
      difference[i] -= b[i];
    }
    return difference;
  }

  /** How many patches there are. */
  public int size() {
    return weights.length;
  }

  /** The patches, in their order. */
  public List<PaintedPatch> patches() {
    return patches;
  }

  /** How little each patch agrees with all the others and the statements, in their order. */
  public List<Suspicion> suspicions() {
    return misfits().suspicions();
  }

  /**
   * How far a patch lies from what the shelf foretold before any of these patches, as a share of
   * what a right patch exceeds once in two hundred times: above 1 when it is unexpected.
   *
   * @param patch its place among the patches
   */
  public double surprise(int patch) {
    return misfits().surprise(models.get(patch));
  }

  /**
   * How wide errors turned out to be, as a share of what was expected: from how far each patch lies
   * from what the others foretell, with a prior worth ten cards.
   */
  public double widthScale() {
    return misfits().widthScale();
  }

  private Misfits misfits() {
    return new Misfits(prior, models, weights, found);
  }

  /**
   * ln of how probable the patches were, by Laplace's approximation, but for a constant of the
   * measurements' errors. Amounts that err widen a patch's own error, and count.
   */
  double logEvidence() {
    double value = found.objective() + found.linear().factor().logDeterminant();
    for (PatchModel model : models) {
      double[][] noise = model.linearise(found.states()).noise();
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
    Map<String, double[]> states = new LinkedHashMap<>(found.states());
    Map<String, GaussianBelief> unseen = new LinkedHashMap<>(found.beliefs());
    believe(model, unseen);
    unseen.forEach((name, belief) -> states.putIfAbsent(name, belief.mean()));
    return model.lab(states);
  }

  /** How strong the batches are that the patches name, in the order in which they name them. */
  public List<BatchStrength> batches() {
    return new FoundStrengths(found, days).of(batchesOfPatches());
  }

  /** How strong each paint is on its latest day, compared with each of the days before. */
  public List<DayStrength> dayStrengths() {
    return new FoundStrengths(found, days)
        .onDays(prior.paints().stream().map(paint -> paint.paint().name()).toList());
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
      double deltaE = model.deltaE00(found.states());
      for (String name : model.paints()) {
        residuals.computeIfAbsent(name, paint -> new ArrayList<>()).add(deltaE);
      }
    }
    Set<String> batches =
        batchesOfPatches().stream().map(PaintBatch::key).collect(Collectors.toSet());
    EvidenceRows rows = found.linear().rows();
    EvidenceRows all = batches.isEmpty() ? rows : rows.integrated(batches);
    FittedPaints fitted = new FittedPaints(prior, days, found, all, widthScale());
    List<Paint> paints =
        prior.shelf().paints().stream()
            .map(paint -> fitted.of(paint, residuals.getOrDefault(paint.name(), List.of())))
            .toList();
    return new Shelf(prior.shelf().name(), paints, Optional.of(prior.surface()));
  }
}
