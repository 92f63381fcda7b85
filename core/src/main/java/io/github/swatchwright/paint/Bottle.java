package io.github.swatchwright.paint;

import io.github.swatchwright.argument.Require;
import java.util.OptionalDouble;

/**
 * What is written down about a paint's bottle.
 *
 * @param leftMillilitres what is left in it, 0 to 10,000 ml; empty for enough
 * @param pricePerMillilitre what a millilitre costs, 0 to a million, in any currency that the whole
 *     shelf shares; empty when it isn't known
 */
public record Bottle(OptionalDouble leftMillilitres, OptionalDouble pricePerMillilitre) {

  /** Nothing is written down. */
  public static final Bottle UNSTATED = new Bottle(OptionalDouble.empty(), OptionalDouble.empty());

  /** Refuses numbers out of range. */
  public Bottle {
    leftMillilitres.ifPresent(left -> Require.within("leftMillilitres", left, 0, 10_000));
    pricePerMillilitre.ifPresent(price -> Require.within("pricePerMillilitre", price, 0, 1e6));
  }
}
