package io.github.swatchwright.paint;

import io.github.swatchwright.argument.Require;
import java.util.OptionalDouble;

/**
 * What is written down about a paint's bottle.
 *
 * @param leftMillilitres what is left in it, 0 to 10,000 ml; empty for enough
 * @param pricePerMillilitre what a millilitre costs, 0 to a million, in any currency that the whole
 *     shelf shares; empty when it isn't known
 * @param densityGramsPerMillilitre what a millilitre weighs, 0.5 to 5 g; empty when it isn't known
 */
public record Bottle(
    OptionalDouble leftMillilitres,
    OptionalDouble pricePerMillilitre,
    OptionalDouble densityGramsPerMillilitre) {

  /** Nothing is written down. */
  public static final Bottle UNSTATED = new Bottle(OptionalDouble.empty(), OptionalDouble.empty());

  /** Refuses numbers out of range. */
  public Bottle {
    leftMillilitres.ifPresent(left -> Require.within("leftMillilitres", left, 0, 10_000));
    pricePerMillilitre.ifPresent(price -> Require.within("pricePerMillilitre", price, 0, 1e6));
    densityGramsPerMillilitre.ifPresent(
        density -> Require.within("densityGramsPerMillilitre", density, 0.5, 5));
  }

  /** A bottle that wasn't weighed. */
  public Bottle(OptionalDouble leftMillilitres, OptionalDouble pricePerMillilitre) {
    this(leftMillilitres, pricePerMillilitre, OptionalDouble.empty());
  }

  /** This bottle with the density of its paint, 0.5 to 5 g/ml. */
  public Bottle withDensity(double gramsPerMillilitre) {
    return new Bottle(leftMillilitres, pricePerMillilitre, OptionalDouble.of(gramsPerMillilitre));
  }
}
