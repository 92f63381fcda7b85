package io.github.swatchwright.estimate;

import io.github.swatchwright.argument.Printable;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.math3.optim.InitialGuess;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.SimpleBounds;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.nonlinear.scalar.ObjectiveFunction;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.BOBYQAOptimizer;

/**
 * The surface that swatches and painted patches are most probable under: the maximum of their
 * evidence over k1 and k2, by Laplace's approximation, with a wide prior about the usual values.
 */
public final class SurfaceFit {
  private static final double USUAL_K1 = 0.04;
  private static final double K1_SD = 0.015;
  private static final double USUAL_K2 = 0.4;
  private static final double K2_SD = 0.15;

  private static final double MOST_K1 = 0.08;
  private static final double MOST_K2 = 0.7;

  /** k1 stays below what was measured: nothing is darker than its surface. */
  private static final double BELOW_DARKEST = 0.98;

  private static final int MOST_TRIALS = 60;
  private static final double FIRST_STEP = 0.15;
  private static final double LAST_STEP = 0.005;

  private final Shelf shelf;
  private final double mostK1;
  private ShelfFit last;

  private SurfaceFit(Shelf shelf, ShelfFit first) {
    this.shelf = shelf;
    last = first;
    double darkest =
        Stream.concat(
                shelf.paints().stream().map(Paint::masstone).flatMap(Optional::stream),
                first.patches().stream().map(PaintedPatch::measured))
            .mapToDouble(ShelfSurface::darkestChannel)
            .min()
            .orElse(1);
    mostK1 = Math.max(1e-3, Math.min(MOST_K1, BELOW_DARKEST * darkest));
  }

  /**
   * Fits the surface of a shelf.
   *
   * @param shelf its paints, none of them fitted to patches yet
   * @param first a fit to what was painted with them, under any surface: each trial starts from the
   *     one before
   * @throws IllegalArgumentException when a paint was fitted already: that took a surface for
   *     granted
   */
  public static Saunderson of(Shelf shelf, ShelfFit first) {
    for (Paint paint : shelf.paints()) {
      if (paint.optics().isPresent()) {
        throw new IllegalArgumentException(
            Printable.quoted(paint.name())
                + " has learned from cards under a surface already; fit the surface to the shelf"
                + " as it was before, with all cards");
      }
    }
    return new SurfaceFit(shelf, first).best();
  }

  private Saunderson best() {
    double startK1 = Math.min(USUAL_K1, 0.9 * mostK1);
    double[] found =
        new BOBYQAOptimizer(5, FIRST_STEP, LAST_STEP)
            .optimize(
                new MaxEval(MOST_TRIALS),
                GoalType.MAXIMIZE,
                new ObjectiveFunction(at -> logEvidence(surface(at))),
                new InitialGuess(new double[] {startK1 / mostK1, USUAL_K2 / MOST_K2}),
                new SimpleBounds(new double[] {0, 0}, new double[] {1, 1}))
            .getPoint();
    return surface(found);
  }

  private Saunderson surface(double[] shares) {
    return new Saunderson(shares[0] * mostK1, shares[1] * MOST_K2);
  }

  private double logEvidence(Saunderson surface) {
    Shelf under = new Shelf(shelf.name(), shelf.paints(), Optional.of(surface));
    double t1 = (surface.k1() - USUAL_K1) / K1_SD;
    double t2 = (surface.k2() - USUAL_K2) / K2_SD;
    last = last.under(ShelfOptics.estimate(under));
    return -0.5 * (t1 * t1 + t2 * t2) + swatches(surface) + last.logEvidence();
  }

  private double swatches(Saunderson surface) {
    GaussianBelief masstone = OpticsPrior.unseenMasstone();
    return shelf.paints().stream()
        .filter(paint -> paint.whyNotComputable().isEmpty() && paint.masstone().isPresent())
        .mapToDouble(
            paint ->
                masstone.logEvidence(
                    SwatchEvidence.of(paint, paint.masstone().orElseThrow(), surface)))
        .sum();
  }
}
