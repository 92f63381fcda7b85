package io.github.swatchwright.cli;

/** The error of a colour that was read from a photo, as a shelf or a test card states it. */
final class StatedError {
  /** A photo tells no colour more exactly. */
  private static final double LEAST = 0.3;

  /** A colour that is further off than this tells next to nothing. */
  private static final double MOST = 20;

  private StatedError() {}

  /**
   * The error to state, with two decimals.
   *
   * @param sd what was found, as sd of L*, a* and b*
   */
  static double of(double sd) {
    return Math.max(LEAST, Math.min(MOST, Math.rint(100 * sd) / 100));
  }
}
