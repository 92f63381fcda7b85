package io.github.swatchwright.calibrate;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.estimate.PaintedPatch;
import java.util.OptionalDouble;

/**
 * How well test cards are made and measured.
 *
 * @param amount relative error of each paint's amount, as sd, 0 to 1
 * @param colour error of a measured colour as sd of L*, a* and b*; empty for the usual one of its
 *     form
 * @param model how far real mixes stray from the model, as mean ΔE00, 0 to 10
 */
public record CardErrors(double amount, OptionalDouble colour, double model) {

  /** Drops or a syringe: 5 %. */
  public static final CardErrors USUAL = new CardErrors(0.05, OptionalDouble.empty());

  /** Errors with the usual error of the model. */
  public CardErrors(double amount, OptionalDouble colour) {
    this(amount, colour, PaintedPatch.USUAL_MODEL_ERROR);
  }

  /** Refuses errors out of range. */
  public CardErrors {
    Require.within("amount error", amount, 0, 1);
    Require.within("model error", model, 0, 10);
    if (colour.isPresent()) {
      Require.positive("colour error", colour.getAsDouble());
    }
  }
}
