package io.github.swatchwright.estimate;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.spectrum.RecoveredReflectance;
import io.github.swatchwright.spectrum.ReflectanceRecovery;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.HashMap;
import java.util.Map;

/**
 * The smoothest reflectances of stated colours, each recovered once: the choice of a shelf's
 * surface asks for them first, and the estimate of each paint again. For one thread.
 */
final class Recoveries {
  private final Map<Saunderson, ReflectanceRecovery> under = new HashMap<>();
  private final Map<Seen, RecoveredReflectance> known = new HashMap<>();

  /**
   * A colour seen through a surface.
   *
   * @param colour under D65
   * @param surface between paint and air
   */
  private record Seen(Lab colour, Saunderson surface) {}

  /** The smoothest reflectance that has a colour under D65 through the surface. */
  RecoveredReflectance of(Lab colour, Saunderson surface) {
    return known.computeIfAbsent(new Seen(colour, surface), this::recover);
  }

  private RecoveredReflectance recover(Seen seen) {
    return under
        .computeIfAbsent(
            seen.surface, surface -> new ReflectanceRecovery(TristimulusWeights.D65, surface))
        .recover(seen.colour);
  }
}
