package io.github.swatchwright.estimate;

import io.github.swatchwright.paint.FittedOptics;
import io.github.swatchwright.paint.Paint;
import java.util.Map;

/**
 * The rows that cards have taught about a paint, as they depend on it today: a row of an earlier
 * day also depends on how the strength changed since, the last day's on the change until today.
 */
final class RememberedDays {
  private RememberedDays() {}

  /** Adds a paint's rows, and what is believed of the changes of its strength. */
  static void add(Paint paint, Map<String, GaussianBelief> beliefs, EvidenceRows rows) {
    paint.optics().ifPresent(fit -> add(paint.name(), fit, beliefs, rows));
  }

  private static void add(
      String name, FittedOptics fit, Map<String, GaussianBelief> beliefs, EvidenceRows rows) {
    for (FittedOptics.Row row : fit.rows()) {
      rows.add(name, row.number(), row.byState());
    }
    for (int day = 0; day < fit.days().size(); day++) {
      FittedOptics.Day of = fit.days().get(day);
      String key = new DayStep(name, of.painted()).key();
      beliefs.put(key, DayStep.belief(of.logStrength(), of.sd()));
      for (FittedOptics.Row row : fit.rows()) {
        if (row.byDay(day) != 0) {
          rows.add(key, row.number(), new double[] {row.byDay(day)});
        }
      }
    }
  }
}
