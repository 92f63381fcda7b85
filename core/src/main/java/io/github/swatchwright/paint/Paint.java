package io.github.swatchwright.paint;

import io.github.swatchwright.argument.Require;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A bottle on the shelf and what is known about it.
 *
 * @param name what the painter calls it, 1 to 200 characters without line breaks
 * @param medium what binds it
 * @param finish how its dry surface shines
 * @param make single pigment, ready mixed, or not stated
 * @param masstone its colour at full hiding; empty when only test cards carry it
 * @param hiding how well it hides, when known
 * @param dropMillilitres the volume of one drop, 0.001 to 1 ml
 * @param swatchError the masstone's error as sd of L*, a* and b*, when stated: above 0 to 50
 * @param effect a look that keeps it out of computed mixes
 * @param notes free text
 * @param optics what test cards have taught about it
 * @param bottle what is left of it, and what it costs
 */
public record Paint(
    String name,
    Medium medium,
    Finish finish,
    Make make,
    Optional<Swatch> masstone,
    Optional<Hiding> hiding,
    double dropMillilitres,
    OptionalDouble swatchError,
    Optional<Effect> effect,
    String notes,
    Optional<FittedOptics> optics,
    Bottle bottle) {

  /** A drop from a hobby dropper bottle (common practice: 18 to 35 drops to the millilitre). */
  public static final double USUAL_DROP_MILLILITRES = 0.04;

  /** The longest name. */
  public static final int LONGEST_NAME = 200;

  /** Refuses an empty or overlong name, line breaks in it, and numbers out of range. */
  public Paint {
    if (name.isBlank() || name.length() > LONGEST_NAME) {
      throw new IllegalArgumentException(
          "name has "
              + name.length()
              + " characters, must have 1 to "
              + LONGEST_NAME
              + " and not be blank");
    }
    if (name.chars().anyMatch(Character::isISOControl)) {
      throw new IllegalArgumentException("name holds a line break or another control character");
    }
    Require.within("dropMillilitres", dropMillilitres, 0.001, 1);
    if (swatchError.isPresent()) {
      Require.positive("swatchError", swatchError.getAsDouble());
      Require.within("swatchError", swatchError.getAsDouble(), 0, 50);
    }
  }

  /** A matt paint with a masstone and nothing else known. */
  public static Paint of(String name, Medium medium, Swatch masstone) {
    return new Paint(
        name,
        medium,
        Finish.MATT,
        Make.UNSTATED,
        Optional.of(masstone),
        Optional.empty(),
        USUAL_DROP_MILLILITRES,
        OptionalDouble.empty(),
        Optional.empty(),
        "");
  }

  /** A paint that no test card has touched. */
  public Paint(
      String name,
      Medium medium,
      Finish finish,
      Make make,
      Optional<Swatch> masstone,
      Optional<Hiding> hiding,
      double dropMillilitres,
      OptionalDouble swatchError,
      Optional<Effect> effect,
      String notes) {
    this(
        name,
        medium,
        finish,
        make,
        masstone,
        hiding,
        dropMillilitres,
        swatchError,
        effect,
        notes,
        Optional.empty());
  }

  /** A paint without anything written down about its bottle. */
  public Paint(
      String name,
      Medium medium,
      Finish finish,
      Make make,
      Optional<Swatch> masstone,
      Optional<Hiding> hiding,
      double dropMillilitres,
      OptionalDouble swatchError,
      Optional<Effect> effect,
      String notes,
      Optional<FittedOptics> optics) {
    this(
        name,
        medium,
        finish,
        make,
        masstone,
        hiding,
        dropMillilitres,
        swatchError,
        effect,
        notes,
        optics,
        Bottle.UNSTATED);
  }

  /** This paint with what test cards have taught about it. */
  public Paint withOptics(FittedOptics fitted) {
    return with(make, hiding, swatchError, Optional.of(fitted), bottle);
  }

  /** This paint, known to be made in the stated way. */
  public Paint withMake(Make newMake) {
    return with(newMake, hiding, swatchError, optics, bottle);
  }

  /** This paint with a hiding figure. */
  public Paint withHiding(Hiding newHiding) {
    return with(make, Optional.of(newHiding), swatchError, optics, bottle);
  }

  /** This paint with the error of its masstone stated. */
  public Paint withSwatchError(double sd) {
    return with(make, hiding, OptionalDouble.of(sd), optics, bottle);
  }

  /** This paint with something written down about its bottle. */
  public Paint withBottle(Bottle newBottle) {
    return with(make, hiding, swatchError, optics, newBottle);
  }

  private Paint with(
      Make newMake,
      Optional<Hiding> newHiding,
      OptionalDouble newSwatchError,
      Optional<FittedOptics> newOptics,
      Bottle newBottle) {
    return new Paint(
        name,
        medium,
        finish,
        newMake,
        masstone,
        newHiding,
        dropMillilitres,
        newSwatchError,
        effect,
        notes,
        newOptics,
        newBottle);
  }

  /** Why the model can't compute with this paint; empty when it can. */
  public Optional<String> whyNotComputable() {
    if (effect.isPresent()) {
      return Optional.of("is " + effect.get().word() + ", which the model doesn't hold for");
    }
    return masstone.isPresent() || optics.isPresent()
        ? Optional.empty()
        : Optional.of("has no masstone");
  }

  /** The same as a sentence that names it. */
  public Optional<String> notComputable() {
    return whyNotComputable().map(why -> "'" + name + "' " + why);
  }

  /** The whole drops that are left of it; a great many when nothing is written down. */
  public int dropsLeft() {
    return bottle.leftMillilitres().isPresent()
        ? (int) (bottle.leftMillilitres().getAsDouble() / dropMillilitres * (1 + 1e-12))
        : Integer.MAX_VALUE;
  }
}
