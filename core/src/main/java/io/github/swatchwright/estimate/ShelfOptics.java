package io.github.swatchwright.estimate;

import io.github.swatchwright.argument.Printable;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.optics.OpticalConstants;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.optics.Viewing;
import io.github.swatchwright.paint.FittedOptics;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.Bands;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * A shelf's optical constants: one estimate from all the evidence on it. Immutable; made once and
 * used for any number of questions, from any thread.
 */
public final class ShelfOptics {
  private final Shelf shelf;
  private final Saunderson surface;
  private final Map<String, PaintOptics> byName;
  private final Optional<Saunderson> otherSurface;
  private final Map<String, OpticalConstants> underOtherSurface = new ConcurrentHashMap<>();
  private final EvidenceRows rows;
  private final LowerTriangle factor;
  private boolean knowsLeastSpread;
  private Optional<LeastSpread> leastSpread = Optional.empty();

  private ShelfOptics(Shelf shelf, Saunderson surface, Map<String, PaintOptics> byName) {
    this.shelf = shelf;
    this.surface = surface;
    this.byName = byName;
    this.otherSurface = ShelfSurface.other(shelf, surface);
    this.rows = rowsOf(byName);
    this.factor = rows.factor();
  }

  private static EvidenceRows rowsOf(Map<String, PaintOptics> byName) {
    Map<String, GaussianBelief> beliefs = new LinkedHashMap<>();
    int size = 0;
    for (PaintOptics optics : byName.values()) {
      beliefs.put(optics.paint().name(), optics.likely());
      for (FittedOptics.Row row : fittedRows(optics.paint())) {
        size = Math.max(size, row.number() + 1);
      }
    }
    EvidenceRows rows = new EvidenceRows(size, beliefs);
    byName.values().forEach(optics -> RememberedDays.add(optics.paint(), beliefs, rows));
    return rows;
  }

  EvidenceRows rows() {
    return rows;
  }

  private static List<FittedOptics.Row> fittedRows(Paint paint) {
    return paint.optics().map(FittedOptics::rows).orElse(List.of());
  }

  /**
   * Estimates all paints of the shelf that the model holds for; the others are left out, see {@link
   * Paint#whyNotComputable}.
   */
  public static ShelfOptics estimate(Shelf shelf) {
    Recoveries recoveries = new Recoveries();
    Saunderson surface = ShelfSurface.of(shelf, recoveries);
    Saunderson fittedUnder = shelf.surface().orElse(surface);
    Map<String, PaintOptics> byName = new LinkedHashMap<>();
    for (Paint paint : shelf.paints()) {
      if (paint.whyNotComputable().isEmpty()) {
        byName.put(paint.name(), PaintOptics.estimate(paint, surface, fittedUnder, recoveries));
      }
    }
    return new ShelfOptics(shelf, surface, byName);
  }

  /** The shelf that was estimated. */
  public Shelf shelf() {
    return shelf;
  }

  /** The surface correction that all of it shares. */
  public Saunderson surface() {
    return surface;
  }

  /**
   * Another surface that the shelf may have, one sd away; empty when the shelf states its own. What
   * a prediction would be under it tells how much the prediction owes to the surface.
   */
  public Optional<Saunderson> otherSurface() {
    return otherSurface;
  }

  /**
   * A paint's K(λ) and S(λ) if its swatch had been seen through {@link #otherSurface}.
   *
   * @throws IllegalArgumentException when the paint can't be computed with
   * @throws java.util.NoSuchElementException when the shelf states its surface
   */
  public OpticalConstants underOtherSurface(String name) {
    Saunderson other = otherSurface.orElseThrow();
    Paint paint = of(name).paint();
    return underOtherSurface.computeIfAbsent(
        paint.name(),
        any -> PaintOptics.estimate(paint, other, surface, new Recoveries()).constants());
  }

  /**
   * The covariance of values that depend on several paints: J·C·Jᵀ, with all that swatches and test
   * cards say of the paints together.
   *
   * @param jacobians for each paint by its name, a row for each value; columns are the derivatives
   *     by z in all bands, then by u
   * @return as many rows and columns as the Jacobians have rows
   */
  public double[][] covarianceOf(Map<String, double[][]> jacobians) {
    return rows.covarianceOf(jacobians, factor);
  }

  /**
   * A lower bound of these covariances that takes less time; empty when test cards tie so many
   * paints together that it would take more. It is worked out the first time it is asked for.
   */
  public Optional<LeastSpread> leastSpread() {
    synchronized (rows) {
      if (!knowsLeastSpread) {
        leastSpread = LeastSpread.of(paints(), rows);
        knowsLeastSpread = true;
      }
      return leastSpread;
    }
  }

  /** The same as values, which can be set against other values and against planned patches. */
  public Dependence dependence(Map<String, double[][]> jacobians) {
    return Dependence.of(jacobians, rows, factor);
  }

  /**
   * A patch that is still to be painted.
   *
   * @param patch what will go into it, of the shelf's own batches, and how it will be measured; its
   *     colour only says where the errors are taken, so the one that is expected will do
   */
  public PlannedPatch planned(PaintedPatch patch) {
    PatchModel model = new PatchModel(patch, surface);
    PatchModel.Linear at = model.linearise(states(patch));
    Map<String, double[][]> jacobians = new LinkedHashMap<>();
    for (int p = 0; p < model.paints().size(); p++) {
      jacobians.put(model.paints().get(p), at.jacobians().get(p));
    }
    return new PlannedPatch(dependence(jacobians), at.noise());
  }

  /**
   * The constants of paint that is expected to have some and was measured: the masstone moves
   * smoothly until it has the measured colour, scattering stays.
   *
   * @param expected what its parts say
   * @param measured its colour at full hiding
   * @param sd error of the measured colour, above 0
   */
  public OpticalConstants asMeasured(OpticalConstants expected, Swatch measured, double sd) {
    double[] internal = expected.opaque();
    double[] state = new double[OpticsState.SIZE];
    for (int band = 0; band < Bands.COUNT; band++) {
      state[band] = Math.log(internal[band] / (1 - internal[band]));
      state[Bands.COUNT + band] = Math.log(expected.s(band));
    }
    return OpticsState.constants(
        OpticsPrior.unseen().about(state).after(SwatchEvidence.of(measured, sd, surface)).mean());
  }

  /** The colour to be expected of a painted patch, under D65. */
  public Lab lab(PaintedPatch patch) {
    return new PatchModel(patch, surface).lab(states(patch));
  }

  private Map<String, double[]> states(PaintedPatch patch) {
    Map<String, double[]> states = new LinkedHashMap<>();
    patch
        .amounts()
        .forEach(
            (name, amount) -> {
              states.put(name, of(name).belief().mean());
              amount
                  .batch()
                  .ifPresent(
                      label ->
                          states.put(
                              new PaintBatch(name, label).key(), PaintBatch.unseen().mean()));
            });
    return states;
  }

  /**
   * A paint's colour at full hiding: as stated, or as it follows from a drawdown or from test
   * cards.
   *
   * @throws IllegalArgumentException when the shelf doesn't hold it, or nothing tells its colour
   */
  public Swatch colour(String name) {
    Paint paint = shelf.paint(name);
    PaintOptics optics = byName.get(paint.name());
    if (paint.masstone().isPresent()) {
      return paint.masstone().get();
    }
    if (optics == null) {
      throw new IllegalArgumentException(
          "the paint " + Printable.quoted(paint.name()) + " has no masstone to take for a colour");
    }
    return new Swatch.OfLab(
        new Viewing(TristimulusWeights.D65, surface).lab(optics.constants().opaque()));
  }

  /** The paints that can be computed with, in the shelf's order. */
  public List<PaintOptics> paints() {
    return List.copyOf(byName.values());
  }

  /**
   * One paint's optics.
   *
   * @throws IllegalArgumentException when the shelf doesn't hold it, or the model doesn't hold for
   *     it
   */
  public PaintOptics of(String name) {
    Paint paint = shelf.paint(name);
    PaintOptics optics = byName.get(paint.name());
    if (optics == null) {
      throw new IllegalArgumentException(
          paint.notComputable().orElseThrow() + ", so it can't be computed with");
    }
    return optics;
  }
}
