package io.github.swatchwright.cli;

import io.github.swatchwright.mix.Prediction;
import java.util.Locale;

/** A prediction in words. */
final class PredictionText {
  /** The least that is told: 0.0 would promise the very same colour. */
  private static final double LEAST = 0.1;

  private PredictionText() {}

  /** The colour. */
  static String colour(Output output, Prediction prediction) {
    return output.block(prediction.lab()) + Output.notation(prediction.lab());
  }

  /** How well it is known. */
  static String interval(Prediction prediction) {
    return String.format(
        Locale.ROOT,
        "In %.0f of 100 tries, your paint will be within ΔE00 %.1f of this.",
        100 * Prediction.INTERVAL_PROBABILITY,
        Math.max(LEAST, prediction.intervalDeltaE00()));
  }
}
