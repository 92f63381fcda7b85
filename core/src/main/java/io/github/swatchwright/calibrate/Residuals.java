package io.github.swatchwright.calibrate;

import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.PaintedPatch;
import io.github.swatchwright.paint.ShelfOptics;
import java.util.List;
import java.util.function.Predicate;

/**
 * How far cards lie from what is expected of them, before and after.
 *
 * @param prior the shelf before
 * @param posterior the shelf after
 * @param patches the cards that were used
 */
record Residuals(ShelfOptics prior, ShelfOptics posterior, List<PaintedPatch> patches) {

  double before() {
    return mean(prior, this::wasExpected);
  }

  double after() {
    return mean(posterior, patch -> true);
  }

  List<Calibration.CalibratedPaint> paints() {
    return posterior.shelf().paints().stream()
        .map(Paint::name)
        .filter(name -> patches.stream().anyMatch(patch -> touches(patch, name)))
        .map(
            name ->
                new Calibration.CalibratedPaint(
                    name,
                    (int) patches.stream().filter(patch -> touches(patch, name)).count(),
                    mean(prior, patch -> touches(patch, name) && wasExpected(patch)),
                    mean(posterior, patch -> touches(patch, name))))
        .toList();
  }

  private static boolean touches(PaintedPatch patch, String name) {
    return patch.volumes().containsKey(name);
  }

  private boolean wasExpected(PaintedPatch patch) {
    return patch.volumes().keySet().stream()
        .allMatch(name -> prior.shelf().paint(name).whyNotComputable().isEmpty());
  }

  private double mean(ShelfOptics optics, Predicate<PaintedPatch> counts) {
    return patches.stream()
        .filter(counts)
        .mapToDouble(patch -> Ciede2000.deltaE(optics.lab(patch), patch.measured().lab()))
        .average()
        .orElse(0);
  }
}
