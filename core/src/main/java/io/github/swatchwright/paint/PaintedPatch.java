package io.github.swatchwright.paint;

import io.github.swatchwright.argument.Require;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A painted patch with a known recipe and a measured colour, as the estimate takes it.
 *
 * @param volumes the volume of each paint by its name, above 0, in any unit
 * @param amountError relative error of each volume, as sd, 0 to 1
 * @param measured the dry patch
 * @param colourError error of the measured colour, as sd of L*, a* and b*, above 0
 * @param over the bare base of a film; empty for a patch at full hiding
 * @param coats the film's coats, above 0 to 100; needed with a base
 */
public record PaintedPatch(
    Map<String, Double> volumes,
    double amountError,
    Swatch measured,
    double colourError,
    Optional<Swatch> over,
    OptionalDouble coats) {

  /** Copies the map; refuses numbers out of range, and a base without coats. */
  public PaintedPatch {
    volumes = Collections.unmodifiableMap(new LinkedHashMap<>(volumes));
    Require.within("number of paints", volumes.size(), 1, 100);
    volumes.forEach((paint, volume) -> Require.positive("volume of '" + paint + "'", volume));
    Require.within("amountError", amountError, 0, 1);
    Require.positive("colourError", colourError);
    if (coats.isPresent()) {
      Require.positive("coats", coats.getAsDouble());
      Require.within("coats", coats.getAsDouble(), 0, 100);
    }
    if (over.isPresent() && coats.isEmpty()) {
      throw new IllegalArgumentException("a film over a base needs its coats stated");
    }
  }
}
