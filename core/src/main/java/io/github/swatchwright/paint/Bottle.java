package io.github.swatchwright.paint;

import io.github.swatchwright.argument.BadArgumentException;
import io.github.swatchwright.argument.Require;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is written down about a paint's bottle.
 *
 * @param leftMillilitres what is left in it, 0 to 10,000 ml; empty for enough
 * @param pricePerMillilitre what a millilitre costs, 0 to a million, in any currency that the whole
 *     shelf shares; empty when it isn't known
 * @param densityGramsPerMillilitre what a millilitre weighs, 0.5 to 5 g; empty when it isn't known
 * @param thinner what thins it, 1 to {@value #LONGEST_THINNER} characters on one line; empty for
 *     what usually thins its medium
 */
public record Bottle(
    OptionalDouble leftMillilitres,
    OptionalDouble pricePerMillilitre,
    OptionalDouble densityGramsPerMillilitre,
    Optional<String> thinner) {

  /** The longest name of a thinner. */
  public static final int LONGEST_THINNER = 60;

  /** A bottle with less than this runs short, ml: some forty drops. */
  private static final double RUNS_SHORT = 2;

  /** Nothing is written down. */
  public static final Bottle UNSTATED = new Bottle(OptionalDouble.empty(), OptionalDouble.empty());

  /** Refuses numbers out of range, and a thinner without a name. */
  public Bottle {
    leftMillilitres.ifPresent(left -> Require.within("leftMillilitres", left, 0, 10_000));
    pricePerMillilitre.ifPresent(price -> Require.within("pricePerMillilitre", price, 0, 1e6));
    densityGramsPerMillilitre.ifPresent(
        density -> Require.within("densityGramsPerMillilitre", density, 0.5, 5));
    thinner.ifPresent(Bottle::checkThinner);
  }

  private static void checkThinner(String name) {
    boolean unprintable = name.chars().anyMatch(Character::isISOControl);
    if (name.isBlank() || name.length() > LONGEST_THINNER || unprintable) {
      throw new BadArgumentException(
          "thinner",
          "has "
              + name.length()
              + " characters, must have 1 to "
              + LONGEST_THINNER
              + " on one line and not be blank");
    }
  }

  /** A bottle that wasn't weighed. */
  public Bottle(OptionalDouble leftMillilitres, OptionalDouble pricePerMillilitre) {
    this(leftMillilitres, pricePerMillilitre, OptionalDouble.empty(), Optional.empty());
  }

  /** Whether it is soon empty: what is left is known, and less than 2 ml. */
  public boolean runsShort() {
    return leftMillilitres.orElse(RUNS_SHORT) < RUNS_SHORT;
  }

  /**
   * This bottle after some paint was taken out, ml; a bottle of unknown contents stays as it is.
   *
   * @param millilitres how much is taken, at least 0
   * @throws IllegalArgumentException when there isn't so much in it
   */
  Bottle taking(double millilitres) {
    Require.nonNegative("millilitres", millilitres);
    if (leftMillilitres.isEmpty()) {
      return this;
    }
    double left = leftMillilitres.getAsDouble();
    if (millilitres > left) {
      throw new IllegalArgumentException(
          String.format(Locale.ROOT, "holds %.2f ml, and %.2f ml are needed", left, millilitres));
    }
    return new Bottle(
        OptionalDouble.of(left - millilitres),
        pricePerMillilitre,
        densityGramsPerMillilitre,
        thinner);
  }

  /** This bottle with the density of its paint, 0.5 to 5 g/ml. */
  public Bottle withDensity(double gramsPerMillilitre) {
    return new Bottle(
        leftMillilitres, pricePerMillilitre, OptionalDouble.of(gramsPerMillilitre), thinner);
  }

  /** This bottle with a thinner of its own. */
  public Bottle withThinner(String name) {
    return new Bottle(
        leftMillilitres, pricePerMillilitre, densityGramsPerMillilitre, Optional.of(name));
  }
}
