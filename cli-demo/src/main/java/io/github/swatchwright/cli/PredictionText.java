package io.github.swatchwright.cli;

import io.github.swatchwright.mix.Prediction;
import java.util.Locale;

/** A prediction in words. */
final class PredictionText {
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
        prediction.intervalDeltaE00());
  }
}
