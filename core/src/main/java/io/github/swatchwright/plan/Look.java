package io.github.swatchwright.plan;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.mix.Prediction;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How an area looks after a step, from a distance.
 *
 * @param prediction what to expect, and how well it is known
 * @param wanted the colour it is to have; empty when any will do
 * @param measured the colour it has, when the step is done and was measured
 */
public record Look(Prediction prediction, Optional<Lab> wanted, Optional<Lab> measured) {
  /** ΔE00 of what is there, or of what to expect, from what is wanted. */
  public OptionalDouble offBy() {
    return wanted.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(Ciede2000.deltaE(wanted.get(), measured.orElse(prediction.lab())));
  }
}
