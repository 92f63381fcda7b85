package io.github.swatchwright.estimate;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.paint.Swatch;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A painted patch with a known recipe and a measured colour, as the estimate takes it.
 *
 * @param amounts so much of each paint, by its name
 * @param measured the dry patch
 * @param colourError error of the measured colour, as sd of L*, a* and b*, above 0
 * @param over the bare base of a film; empty for a patch at full hiding
 * @param coats the film's coats, above 0 to 100; needed with a base
 */
public record PaintedPatch(
    Map<String, Amount> amounts,
    Swatch measured,
    double colourError,
    Optional<Swatch> over,
    OptionalDouble coats) {

  /**
   * So much of a paint.
   *
   * @param volume above 0, in any unit that the patch's amounts share
   * @param error its relative error, as sd, 0 to 1
   * @param batch which batch of the paint it was; empty for the one that the shelf describes
   */
  public record Amount(double volume, double error, Optional<String> batch) {
    /** Refuses numbers out of range. */
    public Amount {
      Require.positive("volume", volume);
      Require.within("amountError", error, 0, 1);
    }
  }

  /** Copies the map; refuses numbers out of range, and a base without coats. */
  public PaintedPatch {
    amounts = Collections.unmodifiableMap(new LinkedHashMap<>(amounts));
    Require.within("number of paints", amounts.size(), 1, 100);
    Require.positive("colourError", colourError);
    if (coats.isPresent()) {
      Require.positive("coats", coats.getAsDouble());
      Require.within("coats", coats.getAsDouble(), 0, 100);
    }
    if (over.isPresent() && coats.isEmpty()) {
      throw new IllegalArgumentException("a film over a base needs its coats stated");
    }
  }

  /** A patch whose volumes all have the same relative error, of the shelf's own batches. */
  public PaintedPatch(
      Map<String, Double> volumes,
      double amountError,
      Swatch measured,
      double colourError,
      Optional<Swatch> over,
      OptionalDouble coats) {
    this(amounts(volumes, amountError), measured, colourError, over, coats);
  }

  private static Map<String, Amount> amounts(Map<String, Double> volumes, double error) {
    Map<String, Amount> amounts = new LinkedHashMap<>();
    volumes.forEach(
        (paint, volume) -> amounts.put(paint, new Amount(volume, error, Optional.empty())));
    return amounts;
  }
}
