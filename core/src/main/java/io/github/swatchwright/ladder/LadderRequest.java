package io.github.swatchwright.ladder;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.coat.Base;
import io.github.swatchwright.coat.Coat;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.paint.PaintChoice;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.List;
import java.util.Optional;

/**
 * What ladder is asked for.
 *
 * @param shades the two ends, or a list of colours as from a photo: 2 to {@value #MOST_SHADES}
 * @param rungs how many rungs in all, washes among them: 2 to {@value #MOST_RUNGS}
 * @param order which end it starts at
 * @param subject what it is for; coverages may not rise then
 * @param pot how the rungs are mixed
 * @param coverage what decides how much each pass covers
 * @param base what lies below the first pass; without one, the first pass covers all
 * @param washes translucent coats as the last rungs; at least two rungs are left to the pot
 * @param choice the paints that recipes are looked for in
 * @param margin the L* that an end keeps from the darkest the surface can show and from 100, else
 *     there is a warning: 0 to 40; 0 for none
 */
public record LadderRequest(
    List<Shade> shades,
    int rungs,
    LadderOrder order,
    Optional<Subject> subject,
    PotRule pot,
    CoverageWish coverage,
    Optional<Base> base,
    List<Coat> washes,
    PaintChoice choice,
    double margin) {

  /** The most shades in a list. */
  public static final int MOST_SHADES = 16;

  /** The most rungs. */
  public static final int MOST_RUNGS = 12;

  /** The margin to pure black and white unless another is stated (common practice, weak). */
  public static final double USUAL_MARGIN = 10;

  /** Copies the lists; refuses numbers out of range and lists that don't fit each other. */
  public LadderRequest {
    shades = List.copyOf(shades);
    washes = List.copyOf(washes);
    Require.within("number of shades", shades.size(), 2, MOST_SHADES);
    Require.within("rungs", rungs, 2, MOST_RUNGS);
    Require.within("margin", margin, 0, 40);
    if (rungs - washes.size() < 2) {
      throw new IllegalArgumentException(
          "washes are "
              + washes.size()
              + " of "
              + rungs
              + " rungs, must leave at least 2 rungs to mix");
    }
    CoverageCheck.check(coverage, rungs, shades.size(), subject, base.isPresent());
  }

  /** A ladder between two ends in one pot, each shade to be seen on as much of the area. */
  public static LadderRequest between(Shade from, Shade to, int rungs) {
    return of(List.of(from, to), rungs);
  }

  /** A ladder along several shades in one pot, each rung to be seen on as much of the area. */
  public static LadderRequest of(List<Shade> shades, int rungs) {
    return new LadderRequest(
        shades,
        rungs,
        LadderOrder.AS_GIVEN,
        Optional.empty(),
        PotRule.onePot(),
        CoverageWish.EVEN,
        Optional.empty(),
        List.of(),
        PaintChoice.ALL,
        USUAL_MARGIN);
  }

  /** The same in another order. */
  public LadderRequest withOrder(LadderOrder other) {
    return new LadderRequest(
        shades, rungs, other, subject, pot, coverage, base, washes, choice, margin);
  }

  /** The same for a subject, in its order, with falling coverage unless one was stated. */
  public LadderRequest withSubject(Subject what) {
    return new LadderRequest(
        shades,
        rungs,
        order == LadderOrder.AS_GIVEN ? what.order() : order,
        Optional.of(what),
        pot,
        coverage instanceof EvenWish ? CoverageWish.FALLING : coverage,
        base,
        washes,
        choice,
        margin);
  }

  /** The same with another number of rungs. */
  public LadderRequest withRungs(int count) {
    return new LadderRequest(
        shades, count, order, subject, pot, coverage, base, washes, choice, margin);
  }

  /** Whether coverages that were stated leave the number of rungs open. */
  boolean canHaveRungs() {
    return !(coverage instanceof PassesWish) && !(coverage instanceof SharesWish);
  }

  /** The average colour that is wished for, if one is. */
  Optional<Lab> wantedLook(TristimulusWeights light) {
    return coverage instanceof LookWish wish
        ? Optional.of(wish.colour().labUnder(light))
        : Optional.empty();
  }

  /** The same mixed in another way. */
  public LadderRequest withPot(PotRule rule) {
    return new LadderRequest(
        shades, rungs, order, subject, rule, coverage, base, washes, choice, margin);
  }

  /** The same with other coverages. */
  public LadderRequest withCoverage(CoverageWish wish) {
    return new LadderRequest(
        shades, rungs, order, subject, pot, wish, base, washes, choice, margin);
  }

  /** The same over a base. */
  public LadderRequest withBase(Base below) {
    return new LadderRequest(
        shades, rungs, order, subject, pot, coverage, Optional.of(below), washes, choice, margin);
  }

  /** The same with translucent coats as its last rungs. */
  public LadderRequest withWashes(List<Coat> coats) {
    return new LadderRequest(
        shades, rungs, order, subject, pot, coverage, base, coats, choice, margin);
  }

  /** The same from other paints. */
  public LadderRequest withChoice(PaintChoice other) {
    return new LadderRequest(
        shades, rungs, order, subject, pot, coverage, base, washes, other, margin);
  }

  /** The same with another margin to black and white. */
  public LadderRequest withMargin(double lightness) {
    return new LadderRequest(
        shades, rungs, order, subject, pot, coverage, base, washes, choice, lightness);
  }
}
