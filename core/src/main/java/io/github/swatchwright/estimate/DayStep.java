package io.github.swatchwright.estimate;

import io.github.swatchwright.paint.FittedOptics;
import java.time.LocalDate;
import java.util.Optional;

/**
 * How a paint's strength changed from one painting day to the next on which it was used: an unknown
 * s = ln(strength then ÷ strength on the later day).
 *
 * <p>A bottle that has settled, dried in or been stirred better gives paint whose K and S are both
 * larger or smaller by one factor. Without cards of that day the factor is unknown.
 *
 * @param paint the paint's name
 * @param from the earlier day; empty for a day that nobody wrote down, which counts as the earliest
 */
record DayStep(String paint, Optional<LocalDate> from) {
  /** Its name among the unknowns: no paint's name holds a line break, no batch's label is empty. */
  String key() {
    return paint + "\n\n" + from.map(LocalDate::toString).orElse("");
  }

  /** What is believed of it before new cards: as the shelf remembers it, else by the spread. */
  GaussianBelief belief(ShelfOptics prior, StepSpread spread) {
    return remembered(prior)
        .map(day -> belief(day.logStrength(), day.sd()))
        .orElseGet(() -> belief(0, spread.sd(key())));
  }

  /** A step with that mean and sd. */
  static GaussianBelief belief(double mean, double sd) {
    return GaussianBelief.of(new double[] {mean}, new double[][] {{sd * sd}});
  }

  /** What the shelf remembers of that day. */
  Optional<FittedOptics.Day> remembered(ShelfOptics prior) {
    return prior.shelf().paint(paint).optics().stream()
        .flatMap(fit -> fit.days().stream())
        .filter(day -> day.painted().equals(from))
        .findFirst();
  }
}
