package io.github.swatchwright.estimate;

import io.github.swatchwright.paint.FittedOptics;
import io.github.swatchwright.paint.Paint;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * Stores the findings of a fit in its paints.
 *
 * @param prior the shelf as it was
 * @param days the paints' painting days
 * @param found what the fit has found
 * @param rows the evidence, without labelled batches
 * @param widthScale how wide errors turned out to be, as a share of what was expected
 */
record FittedPaints(
    ShelfOptics prior, PaintingDays days, JointSearch found, EvidenceRows rows, double widthScale) {

  /**
   * A paint with its fit, or as it was when no card has touched it.
   *
   * @param residuals ΔE00 of each new card of the paint
   */
  Paint of(Paint paint, List<Double> residuals) {
    Map<Integer, double[]> slopes = rows.of(paint.name());
    if (slopes.isEmpty()) {
      return paint;
    }
    Optional<FittedOptics> before = paint.optics();
    int cardsBefore = before.map(FittedOptics::cards).orElse(0);
    int cards = cardsBefore + residuals.size();
    double sum = before.map(FittedOptics::residualDeltaE00).orElse(0.0) * cardsBefore;
    for (double residual : residuals) {
      sum += residual;
    }
    List<FittedOptics.Day> learned = days(paint.name());
    double[] state = found.state(paint.name());
    return paint.withOptics(
        new FittedOptics(
            Arrays.copyOf(state, state.length / 2),
            Arrays.copyOfRange(state, state.length / 2, state.length),
            cards,
            cards == 0 ? 0 : sum / cards,
            before.map(FittedOptics::widthScale).orElse(1.0) * widthScale,
            learned,
            fittedRows(paint.name(), slopes, !learned.isEmpty())));
  }

  /** The paint's days; none when nobody wrote down any. */
  private List<FittedOptics.Day> days(String paint) {
    List<Optional<LocalDate>> of = days.of(paint);
    if (of.stream().allMatch(Optional::isEmpty)) {
      return List.of();
    }
    List<FittedOptics.Day> learned = new ArrayList<>();
    for (DayStep step : days.since(paint, Optional.empty())) {
      double log = found.state(step.key())[0];
      GaussianBelief belief = Objects.requireNonNull(found.beliefs().get(step.key()));
      double sd = Math.sqrt(belief.covarianceOf(new double[][] {{1}})[0][0]);
      learned.add(new FittedOptics.Day(step.from(), log, widthScale * sd));
    }
    learned.add(new FittedOptics.Day(of.get(of.size() - 1), 0, found.stepSpread().sd()));
    return learned;
  }

  private List<FittedOptics.Row> fittedRows(
      String paint, Map<Integer, double[]> slopes, boolean hasDays) {
    List<Map<Integer, double[]>> bySteps = new ArrayList<>();
    if (hasDays) {
      days.since(paint, Optional.empty()).forEach(step -> bySteps.add(rows.of(step.key())));
    }
    List<FittedOptics.Row> fitted = new ArrayList<>();
    slopes.forEach(
        (number, slope) -> {
          double[] all = Arrays.copyOf(slope, slope.length + (hasDays ? bySteps.size() + 1 : 0));
          for (int step = 0; step < bySteps.size(); step++) {
            all[slope.length + step] = bySteps.get(step).getOrDefault(number, new double[1])[0];
          }
          if (hasDays) {
            all[all.length - 1] = Arrays.stream(slope, slope.length / 2, slope.length).sum();
          }
          fitted.add(new FittedOptics.Row(number, floats(all)));
        });
    return fitted;
  }

  private float[] floats(double[] values) {
    float[] narrow = new float[values.length];
    for (int i = 0; i < narrow.length; i++) {
      narrow[i] = (float) (values[i] / widthScale);
    }
    return narrow;
  }
}
