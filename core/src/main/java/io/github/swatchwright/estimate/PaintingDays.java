package io.github.swatchwright.estimate;

import io.github.swatchwright.paint.FittedOptics;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * The days on which each paint was painted with, earliest first. Cards of one day share one state
 * of the bottle; a paint's K and S are those of its latest day.
 */
final class PaintingDays {
  /** No card says anything about days. */
  static final PaintingDays NONE = new PaintingDays(Map.of());

  private static final Comparator<Optional<LocalDate>> EARLIEST_FIRST =
      Comparator.comparing(day -> day.orElse(LocalDate.MIN));

  private final Map<String, List<Optional<LocalDate>>> byPaint;

  private PaintingDays(Map<String, List<Optional<LocalDate>>> byPaint) {
    this.byPaint = byPaint;
  }

  /** The days that a shelf remembers, and those of new patches. */
  static PaintingDays of(ShelfOptics prior, List<PaintedPatch> patches) {
    Map<String, SortedSet<Optional<LocalDate>>> days = new LinkedHashMap<>();
    for (PaintOptics paint : prior.paints()) {
      paint.paint().optics().ifPresent(fit -> add(days, paint.paint().name(), fit));
    }
    for (PaintedPatch patch : patches) {
      patch
          .amounts()
          .forEach(
              (paint, amount) -> {
                if (amount.batch().isEmpty()) {
                  days.computeIfAbsent(paint, any -> new TreeSet<>(EARLIEST_FIRST))
                      .add(patch.painted());
                }
              });
    }
    Map<String, List<Optional<LocalDate>>> sorted = new LinkedHashMap<>();
    days.forEach((paint, of) -> sorted.put(paint, List.copyOf(of)));
    return new PaintingDays(sorted);
  }

  private static void add(
      Map<String, SortedSet<Optional<LocalDate>>> days, String paint, FittedOptics fit) {
    SortedSet<Optional<LocalDate>> of =
        days.computeIfAbsent(paint, any -> new TreeSet<>(EARLIEST_FIRST));
    if (fit.days().isEmpty() && fit.cards() > 0) {
      of.add(Optional.empty());
    }
    fit.days().forEach(day -> of.add(day.painted()));
  }

  /** The paint's days, earliest first. */
  List<Optional<LocalDate>> of(String paint) {
    return byPaint.getOrDefault(paint, List.of());
  }

  /** The steps between a day and the paint's latest: together they are ln(strength then ÷ now). */
  List<DayStep> since(String paint, Optional<LocalDate> day) {
    List<Optional<LocalDate>> days = of(paint);
    List<DayStep> steps = new ArrayList<>();
    for (int i = 0; i < days.size() - 1; i++) {
      if (EARLIEST_FIRST.compare(days.get(i), day) >= 0) {
        steps.add(new DayStep(paint, days.get(i)));
      }
    }
    return steps;
  }

  /** All steps of all paints. */
  List<DayStep> steps() {
    List<DayStep> steps = new ArrayList<>();
    byPaint.forEach(
        (paint, days) ->
            days.subList(0, days.size() - 1).forEach(day -> steps.add(new DayStep(paint, day))));
    return steps;
  }

  /**
   * The rows that a shelf has learned from earlier cards, as they depend on the paints and on the
   * steps to what is now each paint's latest day.
   *
   * @param prior the shelf
   * @param beliefs what is believed of its paints and of the steps
   */
  EvidenceRows earlierRows(ShelfOptics prior, Map<String, GaussianBelief> beliefs) {
    EvidenceRows rows = new EvidenceRows(prior.rows().size(), beliefs);
    for (PaintOptics paint : prior.paints()) {
      String name = paint.paint().name();
      List<DayStep> steps = since(name, Optional.empty());
      paint
          .paint()
          .optics()
          .ifPresent(
              fit ->
                  fit.rows()
                      .forEach(
                          row -> {
                            rows.add(name, row.number(), row.byState());
                            steps.forEach(step -> addStep(rows, row, step, fit));
                          }));
    }
    return rows;
  }

  /** A row of an earlier card depends on a step as on the last of its days before it. */
  private static void addStep(
      EvidenceRows rows, FittedOptics.Row row, DayStep step, FittedOptics fit) {
    double slope = fit.days().isEmpty() ? row.byStrength() : 0;
    for (int day = 0; day < fit.days().size(); day++) {
      if (EARLIEST_FIRST.compare(fit.days().get(day).painted(), step.from()) <= 0) {
        slope = row.byDay(day);
      }
    }
    if (slope != 0) {
      rows.add(step.key(), row.number(), new double[] {slope});
    }
  }

  /** What the strengths of a patch's paint depend on: its batch, or the steps since its day. */
  List<String> strengths(PaintedPatch patch, String paint, PaintedPatch.Amount amount) {
    return amount
        .batch()
        .map(label -> List.of(new PaintBatch(paint, label).key()))
        .orElseGet(() -> since(paint, patch.painted()).stream().map(DayStep::key).toList());
  }
}
