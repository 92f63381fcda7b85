package io.github.swatchwright.estimate;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * How much ln strength changes from one painting day to the next: Student's t with {@value
 * #FREEDOM} degrees of freedom, so that most steps are small and a bottle that settled to a third
 * is still believed. Its width is learned from the steps, with a prior worth {@value #PRIOR_STEPS}
 * of them.
 *
 * <p>A t is a Gaussian whose variance is unknown: each step has one, set by what was found (Lange,
 * Little, Taylor 1989, the EM algorithm for t).
 */
final class StepSpread {
  /** Sd of ln strength from day to day before any card: 0.15 to 0.2 on measured paint. */
  static final double USUAL_SD = 0.17;

  private static final double FREEDOM = 4;
  private static final double PRIOR_STEPS = 10;

  /** Four fifths of a t with four degrees of freedom lie within 1.533, of a normal in 1.282. */
  private static final double LIKE_NORMAL = 1.533 / 1.282;

  private final double width;
  private final Map<String, Double> variances;

  private StepSpread(double width, Map<String, Double> variances) {
    this.width = width;
    this.variances = variances;
  }

  /** What is believed before any card. */
  static StepSpread usual() {
    return new StepSpread(USUAL_SD * USUAL_SD, Map.of());
  }

  /**
   * Sd of a step that no card speaks of, as of the normal distribution that four fifths of the t
   * lie as near to: intervals are to hold four times out of five.
   */
  double sd() {
    return LIKE_NORMAL * Math.sqrt(width);
  }

  /** Sd of one step, by its key. */
  double sd(String key) {
    return Math.sqrt(variances.getOrDefault(key, width));
  }

  /**
   * The spread by what was found.
   *
   * @param squares expected square of each step, by its key
   */
  StepSpread learned(Map<String, Double> squares) {
    double sum = PRIOR_STEPS * USUAL_SD * USUAL_SD;
    for (double square : squares.values()) {
      sum += square * (FREEDOM + 1) / (FREEDOM + square / width);
    }
    double newWidth = sum / (PRIOR_STEPS + squares.size());
    Map<String, Double> found = new LinkedHashMap<>();
    squares.forEach((key, square) -> found.put(key, (FREEDOM * newWidth + square) / (FREEDOM + 1)));
    return new StepSpread(newWidth, found);
  }
}
