package io.github.swatchwright.ladder;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.mix.Application;
import io.github.swatchwright.mix.PaintAmount;

/**
 * How the rungs are mixed.
 *
 * @param use share of the pot that is painted before more is added, above 0 to 1; at 1 nothing is
 *     left, so that every rung has a recipe of its own
 * @param mostDrops the most drops that the pot may hold, 4 to {@value #LARGEST_POT}
 * @param millilitresForAll paint that would cover all of the area once, ml: a rung has enough when
 *     what is used of its pot is at least its coverage of that
 */
public record PotRule(double use, int mostDrops, double millilitresForAll) {

  /** The share that is used of a pot when none is stated. */
  public static final double USUAL_USE = 0.4;

  /** The most drops in a pot when none are stated: 3 to 4 ml. */
  public static final int USUAL_MOST_DROPS = 80;

  /** Paint for all of the area when nothing else is stated, ml: 8 or 9 drops. */
  public static final double USUAL_MILLILITRES = 0.4;

  /** The largest pot that may be asked for. */
  public static final int LARGEST_POT = 1000;

  /** Refuses numbers out of range. */
  public PotRule {
    Require.positive("use", use);
    Require.within("use", use, 0, 1);
    Require.within("max-drops", mostDrops, 4, LARGEST_POT);
    Require.positive("paint for all of the area in ml", millilitresForAll);
  }

  /** One pot, of which the usual share is used for each rung. */
  public static PotRule onePot() {
    return new PotRule(USUAL_USE, USUAL_MOST_DROPS, USUAL_MILLILITRES);
  }

  /** A recipe for each rung. */
  public static PotRule separate() {
    return new PotRule(1, 40, USUAL_MILLILITRES);
  }

  /** Whether every rung has a recipe of its own. */
  public boolean isSeparate() {
    return use == 1;
  }

  /** The same with another use of the pot. */
  public PotRule withUse(double share) {
    return new PotRule(share, mostDrops, millilitresForAll);
  }

  /** The same with another largest pot. */
  public PotRule withMostDrops(int drops) {
    return new PotRule(use, drops, millilitresForAll);
  }

  /** The same with so many millilitres of paint to cover all of the area once. */
  public PotRule withMillilitresForAll(double millilitres) {
    return new PotRule(use, mostDrops, millilitres);
  }

  /**
   * The same with one coat of the usual thickness for an area.
   *
   * @param squareCentimetres the area, above 0
   * @param application film, solids and transfer
   */
  public PotRule forArea(double squareCentimetres, Application application) {
    Require.positive("area", squareCentimetres);
    return withMillilitresForAll(
        PaintAmount.of(squareCentimetres, 1, 0, application).paintMillilitres());
  }
}
