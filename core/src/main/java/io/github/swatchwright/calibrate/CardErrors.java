package io.github.swatchwright.calibrate;

import io.github.swatchwright.argument.Require;
import java.util.OptionalDouble;

/**
 * How well test cards are made and measured.
 *
 * @param amount relative error of each paint's amount, as sd, 0 to 1
 * @param colour error of a measured colour as sd of L*, a* and b*; empty for the usual one of its
 *     form
 */
public record CardErrors(double amount, OptionalDouble colour) {

  /** Drops or a syringe: 5 %. */
  public static final CardErrors USUAL = new CardErrors(0.05, OptionalDouble.empty());

  /** Refuses errors out of range. */
  public CardErrors {
    Require.within("amount error", amount, 0, 1);
    if (colour.isPresent()) {
      Require.positive("colour error", colour.getAsDouble());
    }
  }
}
