package io.github.swatchwright.calibrate;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.estimate.PaintedPatch;
import io.github.swatchwright.estimate.ShelfFit;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.paint.Paint;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * How far cards lie from what is expected of them, before and after.
 *
 * @param prior the shelf before
 * @param fit the shelf after
 * @param patches the cards that were used
 */
record Residuals(ShelfOptics prior, ShelfFit fit, List<PaintedPatch> patches) {

  double before() {
    return mean(prior::lab, this::wasExpected);
  }

  double after() {
    return mean(fit::lab, patch -> true);
  }

  List<Calibration.CalibratedPaint> paints() {
    return prior.shelf().paints().stream()
        .map(Paint::name)
        .filter(name -> patches.stream().anyMatch(patch -> touches(patch, name)))
        .map(
            name ->
                new Calibration.CalibratedPaint(
                    name,
                    (int) patches.stream().filter(patch -> touches(patch, name)).count(),
                    mean(prior::lab, patch -> touches(patch, name) && wasExpected(patch)),
                    mean(fit::lab, patch -> touches(patch, name))))
        .toList();
  }

  private static boolean touches(PaintedPatch patch, String name) {
    return patch.amounts().containsKey(name);
  }

  private boolean wasExpected(PaintedPatch patch) {
    return patch.amounts().keySet().stream()
        .allMatch(name -> prior.shelf().paint(name).whyNotComputable().isEmpty());
  }

  private double mean(Function<PaintedPatch, Lab> expected, Predicate<PaintedPatch> counts) {
    return patches.stream()
        .filter(counts)
        .mapToDouble(patch -> Ciede2000.deltaE(expected.apply(patch), patch.measured().lab()))
        .average()
        .orElse(0);
  }
}
