package io.github.swatchwright.estimate;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.paint.Swatch;
import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A painted patch with a known recipe and a measured colour, as the estimate takes it.
 *
 * @param amounts how much of each paint went into it, by the paint's name
 * @param measured the dry patch
 * @param colourError error of the measured colour, as sd of L*, a* and b*, above 0
 * @param over the bare base of a film; empty for a patch at full hiding
 * @param coats the film's coats, above 0 to 100; needed with a base
 * @param painted the day on which it was painted; empty for a day that nobody wrote down
 * @param modelError how far real mixes stray from the model, as mean ΔE00, 0 to 10
 */
public record PaintedPatch(
    Map<String, Amount> amounts,
    Swatch measured,
    double colourError,
    Optional<Swatch> over,
    OptionalDouble coats,
    Optional<LocalDate> painted,
    double modelError) {

  /** How far real mixes stray from the model, as mean ΔE00: the middle of 0.3 to 0.5. */
  public static final double USUAL_MODEL_ERROR = 0.4;

  /**
   * How much of a paint went into the patch.
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
    Require.within("modelError", modelError, 0, 10);
    if (coats.isPresent()) {
      Require.positive("coats", coats.getAsDouble());
      Require.within("coats", coats.getAsDouble(), 0, 100);
    }
    if (over.isPresent() && coats.isEmpty()) {
      throw new IllegalArgumentException("a film over a base needs its coats stated");
    }
  }

  /** A patch with the usual model error, whose painting day nobody wrote down. */
  public PaintedPatch(
      Map<String, Amount> amounts,
      Swatch measured,
      double colourError,
      Optional<Swatch> over,
      OptionalDouble coats) {
    this(amounts, measured, colourError, over, coats, Optional.empty(), USUAL_MODEL_ERROR);
  }

  /** This patch, painted on that day. */
  PaintedPatch on(LocalDate day) {
    return new PaintedPatch(
        amounts, measured, colourError, over, coats, Optional.of(day), modelError);
  }

  /** This patch, where mixes stray that far from the model: mean ΔE00, 0 to 10. */
  public PaintedPatch withModelError(double deltaE00) {
    return new PaintedPatch(amounts, measured, colourError, over, coats, painted, deltaE00);
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
