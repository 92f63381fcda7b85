package io.github.swatchwright.ladder;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.mix.Application;
import io.github.swatchwright.mix.PaintAmount;

/**
 * How the rungs are mixed: in one pot or each by itself, and how much paint of each.
 *
 * @param separate whether every rung has a recipe of its own; otherwise some drops of each pot are
 *     kept and become the start of the next
 * @param use share of the paint mixed for a pass that reaches the model, above 0 to 1; the rest
 *     stays in brush and cup
 * @param leastDrops the fewest drops in any pot, so that drops can be counted, 1 to {@value
 *     #LARGEST_POT}
 * @param mostDrops the most drops that a pot may hold, 4 to {@value #LARGEST_POT}
 * @param millilitresForAll paint that would cover all of the area once, ml: a pass takes its
 *     coverage of that
 */
public record PotRule(
    boolean separate, double use, int leastDrops, int mostDrops, double millilitresForAll) {

  /** The usual share of the mixed paint that reaches the model (common practice, weak). */
  public static final double USUAL_USE = 0.9;

  /** The usual fewest drops in a pot: one drop too many of six is a sixth (common practice). */
  public static final int USUAL_LEAST_DROPS = 6;

  /** The usual most drops in a pot: about 2 ml, what a small mixing cup takes. */
  public static final int USUAL_MOST_DROPS = 40;

  /** The usual paint for all of the area, ml: 8 or 9 drops. */
  public static final double USUAL_MILLILITRES = 0.4;

  /** The largest pot that may be asked for. */
  public static final int LARGEST_POT = 1000;

  /** Refuses numbers out of range. */
  public PotRule {
    Require.positive("use", use);
    Require.within("use", use, 0, 1);
    Require.within("drops of the largest pot", mostDrops, 4, LARGEST_POT);
    Require.within("min-drops", leastDrops, 1, mostDrops);
    Require.positive("paint for all of the area in ml", millilitresForAll);
  }

  /** One pot, some of which is kept from rung to rung. */
  public static PotRule onePot() {
    return new PotRule(false, USUAL_USE, USUAL_LEAST_DROPS, USUAL_MOST_DROPS, USUAL_MILLILITRES);
  }

  /** A recipe for each rung. */
  public static PotRule recipes() {
    return new PotRule(true, USUAL_USE, USUAL_LEAST_DROPS, USUAL_MOST_DROPS, USUAL_MILLILITRES);
  }

  /** The same with a recipe for each rung. */
  public PotRule withSeparate() {
    return new PotRule(true, use, leastDrops, mostDrops, millilitresForAll);
  }

  /** The same with another share of the paint that reaches the model. */
  public PotRule withUse(double share) {
    return new PotRule(separate, share, leastDrops, mostDrops, millilitresForAll);
  }

  /** The same with another smallest pot. */
  public PotRule withLeastDrops(int drops) {
    return new PotRule(separate, use, drops, mostDrops, millilitresForAll);
  }

  /** The same with another largest pot; the smallest is lowered with it where it has to be. */
  public PotRule withMostDrops(int drops) {
    return new PotRule(separate, use, Math.min(leastDrops, drops), drops, millilitresForAll);
  }

  /** The same with another amount of paint to cover all of the area once, ml. */
  public PotRule withMillilitresForAll(double millilitres) {
    return new PotRule(separate, use, leastDrops, mostDrops, millilitres);
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
