package io.github.swatchwright.paint;

import io.github.swatchwright.argument.BadArgumentException;
import io.github.swatchwright.argument.Printable;
import io.github.swatchwright.argument.Require;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;

/**
 * A bottle on the shelf and what is known about it.
 *
 * @param name what the painter calls it, 1 to 200 characters without line breaks
 * @param medium what binds it
 * @param finish how its dry surface shines
 * @param make single pigment, ready mixed, or not stated
 * @param masstone its colour at full hiding; empty when a drawdown or test cards carry it
 * @param hiding how well it hides, when known
 * @param drawdown one stroke of it over black and over white, which tells masstone and hiding
 * @param dropMillilitres the volume of one drop, 0.001 to 1 ml
 * @param swatchError the error of its masstone and of its drawdown's colours as sd of L*, a* and
 *     b*, when stated: above 0 to 50
 * @param effect a look that keeps it out of computed mixes
 * @param notes free text
 * @param optics what test cards have taught about it
 * @param bottle what is left of it, and what it costs
 * @param use what the bottle is for
 * @param thinned whether it comes ready to use, so that it isn't thinned again
 */
public record Paint(
    String name,
    Medium medium,
    Finish finish,
    Make make,
    Optional<Swatch> masstone,
    Optional<Hiding> hiding,
    Optional<Drawdown> drawdown,
    double dropMillilitres,
    OptionalDouble swatchError,
    Optional<Effect> effect,
    String notes,
    Optional<FittedOptics> optics,
    Bottle bottle,
    Use use,
    boolean thinned) {

  /** A drop from a hobby dropper bottle (common practice: 18 to 35 drops to the millilitre). */
  public static final double USUAL_DROP_MILLILITRES = 0.04;

  /** The longest name. */
  public static final int LONGEST_NAME = 200;

  /** Refuses an empty or overlong name, line breaks in it, and numbers out of range. */
  public Paint {
    if (name.isBlank() || name.length() > LONGEST_NAME) {
      throw new BadArgumentException(
          "name",
          "has "
              + name.length()
              + " characters, must have 1 to "
              + LONGEST_NAME
              + " and not be blank");
    }
    if (name.chars().anyMatch(Character::isISOControl)) {
      throw new BadArgumentException("name", "holds a line break or another control character");
    }
    Require.within("dropMillilitres", dropMillilitres, 0.001, 1);
    if (swatchError.isPresent()) {
      Require.positive("swatchError", swatchError.getAsDouble());
      Require.within("swatchError", swatchError.getAsDouble(), 0, 50);
    }
  }

  /** A matt body colour of which nothing else is known; test cards may carry its colour. */
  public static Paint of(String name, Medium medium) {
    return new Paint(
        name,
        medium,
        Finish.MATT,
        Make.UNSTATED,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        USUAL_DROP_MILLILITRES,
        OptionalDouble.empty(),
        Optional.empty(),
        "",
        Optional.empty(),
        Bottle.UNSTATED,
        Use.PAINT,
        false);
  }

  /** A matt body colour with a masstone and nothing else known. */
  public static Paint of(String name, Medium medium, Swatch masstone) {
    return of(name, medium).withMasstone(masstone);
  }

  /** This paint by another name. */
  public Paint withName(String newName) {
    return changed(draft -> draft.name = newName);
  }

  /** This paint of another medium. */
  public Paint withMedium(Medium newMedium) {
    return changed(draft -> draft.medium = newMedium);
  }

  /** This paint with another finish. */
  public Paint withFinish(Finish newFinish) {
    return changed(draft -> draft.finish = newFinish);
  }

  /** This paint, known to be made in the stated way. */
  public Paint withMake(Make newMake) {
    return changed(draft -> draft.make = newMake);
  }

  /** This paint with another colour at full hiding. */
  public Paint withMasstone(Swatch newMasstone) {
    return changed(draft -> draft.masstone = Optional.of(newMasstone));
  }

  /** This paint with a hiding figure. */
  public Paint withHiding(Hiding newHiding) {
    return changed(draft -> draft.hiding = Optional.of(newHiding));
  }

  /** This paint with a stroke over black and over white. */
  public Paint withDrawdown(Drawdown newDrawdown) {
    return changed(draft -> draft.drawdown = Optional.of(newDrawdown));
  }

  /** This paint with drops of another volume, in ml. */
  public Paint withDropMillilitres(double newDropMillilitres) {
    return changed(draft -> draft.dropMillilitres = newDropMillilitres);
  }

  /** This paint with the error of its masstone stated, as sd of L*, a* and b*. */
  public Paint withSwatchError(double sd) {
    return changed(draft -> draft.swatchError = OptionalDouble.of(sd));
  }

  /** This paint with a look that keeps it out of computed mixes. */
  public Paint withEffect(Effect newEffect) {
    return changed(draft -> draft.effect = Optional.of(newEffect));
  }

  /** This paint with other notes. */
  public Paint withNotes(String newNotes) {
    return changed(draft -> draft.notes = newNotes);
  }

  /** This paint with what test cards have taught about it. */
  public Paint withOptics(FittedOptics fitted) {
    return changed(draft -> draft.optics = Optional.of(fitted));
  }

  /** This paint with something written down about its bottle. */
  public Paint withBottle(Bottle newBottle) {
    return changed(draft -> draft.bottle = newBottle);
  }

  /** This paint for another use. */
  public Paint withUse(Use newUse) {
    return changed(draft -> draft.use = newUse);
  }

  /** This paint, ready to use or not. */
  public Paint withThinned(boolean newThinned) {
    return changed(draft -> draft.thinned = newThinned);
  }

  /** A copy of this paint with one thing changed. */
  private Paint changed(Consumer<PaintDraft> change) {
    PaintDraft draft = new PaintDraft(this);
    change.accept(draft);
    return draft.paint();
  }

  /** A swatch to show it by: its masstone, or else its stroke over white; empty without both. */
  public Optional<Swatch> look() {
    return masstone.or(() -> drawdown.map(stroke -> stroke.white().measured()));
  }

  /** Why the model can't compute with this paint; empty when it can. */
  public Optional<String> whyNotComputable() {
    if (effect.isPresent()) {
      return Optional.of("is " + effect.get().word() + ", which the model doesn't hold for");
    }
    if (use == Use.VARNISH || use == Use.THINNER) {
      return Optional.of("is a " + use.word() + ", which has no colour");
    }
    return masstone.isPresent() || drawdown.isPresent() || optics.isPresent()
        ? Optional.empty()
        : Optional.of("has no masstone");
  }

  /** The same as a sentence that names it. */
  public Optional<String> notComputable() {
    return whyNotComputable().map(why -> Printable.quoted(name) + " " + why);
  }

  /** The whole drops that are left of it; a great many when nothing is written down. */
  public int dropsLeft() {
    return bottle.leftMillilitres().isPresent()
        ? (int) (bottle.leftMillilitres().getAsDouble() / dropMillilitres * (1 + 1e-12))
        : Integer.MAX_VALUE;
  }
}
