package io.github.swatchwright.estimate;

/**
 * What a statement about hiding says of ln S: a weighted mean of it over the bands lies between two
 * levels, which are the same for a figure and apart for a range.
 *
 * <p>A figure is met: it sets the level, however far from what was expected, and its error goes
 * into the spread. Within a range what was expected speaks: the level is the mean of the expected
 * normal distribution cut to the range.
 */
final class HidingStatement {
  private static final int GRID = 200;
  private static final double GRID_SDS = 7;

  private final double lowest;
  private final double highest;
  private final double sd;
  private final double[] weights;

  /**
   * A statement.
   *
   * @param lowest the lowest level; −∞ when there is none
   * @param highest the highest level, at least the lowest; ∞ when there is none
   * @param sd error of the level, or of the range's ends
   * @param weights how much each band's ln S counts, sum 1; kept
   */
  HidingStatement(double lowest, double highest, double sd, double[] weights) {
    this.lowest = lowest;
    this.highest = highest;
    this.sd = sd;
    this.weights = weights;
  }

  /**
   * What is believed of the level after the statement.
   *
   * @param mean its mean
   * @param variance its variance
   * @param logEvidence ln of how probable the statement was
   */
  record Level(double mean, double variance, double logEvidence) {}

  /** Whether it says both how strong the paint is at least and how strong at most. */
  boolean isBounded() {
    return !Double.isInfinite(lowest) && !Double.isInfinite(highest);
  }

  /** How much each band's ln S counts, sum 1. */
  double[] weights() {
    return weights;
  }

  /** The level after the statement when it was expected with this mean and variance. */
  Level after(double mean, double variance) {
    return lowest == highest ? figure(mean, variance) : range(mean, variance);
  }

  private Level figure(double mean, double variance) {
    double error = sd * sd;
    double off = lowest - mean;
    return new Level(
        lowest,
        error * variance / (error + variance),
        -0.5 * (off * off / (error + variance) + Math.log(2 * Math.PI * (error + variance))));
  }

  /** Sums over the part of the range that holds nearly all of the cut distribution. */
  private Level range(double mean, double variance) {
    double scale = Math.sqrt(variance);
    double nearest = Math.max(lowest, Math.min(highest, mean));
    double off = Math.abs(nearest - mean) / scale;
    double reach = GRID_SDS * scale / Math.max(1, off);
    double from = Math.max(lowest, nearest - reach);
    double step = (Math.min(highest, nearest + reach) - from) / GRID;
    double sum = 0;
    double first = 0;
    double second = 0;
    for (int i = 0; i < GRID; i++) {
      double away = from + (i + 0.5) * step - mean;
      double weight = Math.exp((off * off - away * away / variance) / 2);
      sum += weight;
      first += weight * away;
      second += weight * away * away;
    }
    double middle = first / sum;
    double within = Math.max(0, second / sum - middle * middle);
    return new Level(
        mean + middle,
        Math.min(variance, within + sd * sd),
        -off * off / 2 + Math.log(sum * step / (scale * Math.sqrt(2 * Math.PI))));
  }

  /** How far the expected level lies from what was stated, in its sd; above 0 when it is lower. */
  double surprise(double mean, double variance) {
    double off = Math.max(lowest, Math.min(highest, mean)) - mean;
    return off / Math.sqrt(variance + (lowest == highest ? sd * sd : 0));
  }
}
