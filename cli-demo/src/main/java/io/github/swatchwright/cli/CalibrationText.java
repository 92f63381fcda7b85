package io.github.swatchwright.cli;

import io.github.swatchwright.calibrate.Calibration;
import io.github.swatchwright.estimate.BatchStrength;
import io.github.swatchwright.estimate.DayStrength;

/**
 * Prints what test cards have taught.
 *
 * @param output where to print
 */
record CalibrationText(Output output) {
  /** A twentieth more or less paint changes a tint by about ΔE00 0.5: nobody sees less. */
  private static final double NOTICEABLE = 0.05;

  /**
   * Prints a calibration.
   *
   * @param calibration what was learned
   * @param surface whether the surface was fitted too
   */
  void print(Calibration calibration, boolean surface) {
    output.line("How far the cards lie from what was expected of them (mean ΔE00):");
    calibration.paints().forEach(this::print);
    output.line("  %5.2f before, %5.2f now  all cards", calibration.before(), calibration.after());
    calibration.contradictions().forEach(this::printContradiction);
    calibration.unexpected().forEach(this::printUnexpected);
    calibration.days().stream().filter(CalibrationText::isWorthSaying).forEach(this::print);
    calibration.batches().forEach(this::print);
    if (surface) {
      calibration
          .shelf()
          .surface()
          .ifPresent(found -> output.line("Surface: k1 %.3f, k2 %.2f.", found.k1(), found.k2()));
    }
  }

  private void print(Calibration.CalibratedPaint paint) {
    output.line(
        "  %5.2f before, %5.2f now  %s (%d %s)",
        paint.before(),
        paint.after(),
        paint.name(),
        paint.cards(),
        paint.cards() == 1 ? "card" : "cards");
  }

  private void printContradiction(Calibration.DifferingCard card) {
    output.line(
        "Card %d contradicts the other cards and statements and was left out: it is %s, but they"
            + " say %s (ΔE00 %.1f).",
        card.card(), card.measured().toText(), card.expected().toText(), card.deltaE00());
  }

  private void printUnexpected(Calibration.DifferingCard card) {
    output.line(
        "Card %d is unexpected, and was used: it is %s instead of %s (ΔE00 %.1f). Is its label"
            + " right?",
        card.card(), card.measured().toText(), card.expected().toText(), card.deltaE00());
  }

  /** A strength that has changed by more than one sees, and than its error. */
  private static boolean isWorthSaying(DayStrength found) {
    double change = Math.abs(Math.log(found.strength()));
    return change > NOTICEABLE && change > found.sd();
  }

  private void print(DayStrength found) {
    output.line(
        "%s is %.2f times as strong as %s (sd %.0f %%).",
        found.paint(),
        found.strength(),
        found
            .since()
            .map(day -> "on " + day)
            .orElse("when the cards were painted that don't say their day"),
        100 * found.sd());
  }

  private void print(BatchStrength found) {
    output.line(
        "%s of batch '%s' is %.2f times as strong as the shelf's (sd %.0f %%).",
        found.paint(), found.batch(), found.strength(), 100 * found.sd());
  }
}
