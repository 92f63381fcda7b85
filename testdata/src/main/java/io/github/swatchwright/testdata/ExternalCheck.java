package io.github.swatchwright.testdata;

import java.util.Locale;

/**
 * Compares results with figures from outside the project, and remembers how close they came for
 * {@link ExternalReport}.
 *
 * <p>Tests hold one per source and quantity. A failing comparison throws, like any assertion; the
 * error is remembered before it is judged, so that a report of a failing build shows it.
 */
public final class ExternalCheck {
  private final String source;
  private final String quantity;

  private ExternalCheck(String source, String quantity) {
    this.source = source;
    this.quantity = quantity;
  }

  /**
   * Checks against a source.
   *
   * @param source who published the figures: a standard, a paper with its table, a library with its
   *     version
   * @param quantity what is compared, with its unit where it has one
   */
  public static ExternalCheck against(String source, String quantity) {
    return new ExternalCheck(source, quantity);
  }

  /**
   * Demands that a result is within a tolerance of the published figure.
   *
   * @throws AssertionError when it isn't, or when either is not a number
   */
  public void near(double actual, double expected, double tolerance) {
    near(actual, expected, tolerance, quantity);
  }

  /** The same; the text says which figure it is, for the message of a failure. */
  public void near(double actual, double expected, double tolerance, String which) {
    double error = Math.abs(actual - expected);
    ExternalLog.add(source, quantity, tolerance, error);
    if (!(error <= tolerance)) {
      throw new AssertionError(
          String.format(
              Locale.ROOT,
              "%s: %s is %s, must be within %s of %s (%s)",
              source,
              which,
              actual,
              tolerance,
              expected,
              error));
    }
  }

  /**
   * Demands that a measure of disagreement, such as a colour difference, is at most a bound.
   *
   * @throws AssertionError when it isn't, or when it is not a number
   */
  public void atMost(double disagreement, double bound, String which) {
    near(disagreement, 0, bound, which);
  }
}
