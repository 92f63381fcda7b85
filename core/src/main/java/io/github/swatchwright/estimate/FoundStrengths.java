package io.github.swatchwright.estimate;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a fit has found of strengths: of labelled batches, and of each paint from day to day.
 *
 * @param found the most probable state
 * @param days the paints' painting days
 */
record FoundStrengths(JointSearch found, PaintingDays days) {

  /** How strong batches are, in their order. */
  List<BatchStrength> of(Collection<PaintBatch> batches) {
    return batches.stream()
        .map(
            batch ->
                new BatchStrength(
                    batch.paint(),
                    batch.label(),
                    Math.exp(found.state(batch.key())[0]),
                    Math.sqrt(found.variance(batch.key()))))
        .toList();
  }

  /** How strong each paint is on its latest day, compared with each of the days before. */
  List<DayStrength> onDays(List<String> paints) {
    List<DayStrength> strengths = new ArrayList<>();
    for (String name : paints) {
      for (Optional<LocalDate> day : days.of(name)) {
        List<DayStep> steps = days.since(name, day);
        if (!steps.isEmpty()) {
          strengths.add(strength(name, day, steps));
        }
      }
    }
    return strengths;
  }

  private DayStrength strength(String paint, Optional<LocalDate> day, List<DayStep> steps) {
    double log = 0;
    Map<String, double[][]> jacobians = new LinkedHashMap<>();
    for (DayStep step : steps) {
      log -= found.state(step.key())[0];
      jacobians.put(step.key(), new double[][] {{1}});
    }
    FitRows linear = found.linear();
    double variance = linear.rows().covarianceOf(jacobians, linear.factor())[0][0];
    Optional<LocalDate> latest = days.of(paint).get(days.of(paint).size() - 1);
    return new DayStrength(paint, day, latest, Math.exp(log), Math.sqrt(variance));
  }
}
