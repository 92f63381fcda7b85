package io.github.swatchwright.ladder;

import io.github.swatchwright.argument.Require;

/**
 * How the rungs are mixed.
 *
 * @param use share of the pot that is painted before more is added, above 0 to 1; at 1 nothing is
 *     left, so that every rung has a recipe of its own
 * @param mostDrops the most drops that the pot may hold, 4 to {@value #LARGEST_POT}
 * @param dropsForAll drops that would cover all of the area once: a rung has enough when what is
 *     used of its pot is at least its coverage of them
 */
public record PotRule(double use, int mostDrops, double dropsForAll) {

  /** The share that is used of a pot when none is stated. */
  public static final double USUAL_USE = 0.4;

  /** The most drops in a pot when none are stated: 3 to 4 ml. */
  public static final int USUAL_MOST_DROPS = 80;

  /** The largest pot that may be asked for. */
  public static final int LARGEST_POT = 1000;

  /** Refuses numbers out of range, and an area that the largest pot isn't enough for. */
  public PotRule {
    Require.positive("use", use);
    Require.within("use", use, 0, 1);
    Require.within("max-drops", mostDrops, 4, LARGEST_POT);
    Require.positive("drops for all of the area", dropsForAll);
  }

  /** One pot, of which the usual share is used for each rung. */
  public static PotRule onePot() {
    return new PotRule(USUAL_USE, USUAL_MOST_DROPS, 8);
  }

  /** A recipe for each rung. */
  public static PotRule separate() {
    return new PotRule(1, 24, 8);
  }

  /** Whether every rung has a recipe of its own. */
  public boolean isSeparate() {
    return use == 1;
  }

  /** The same with another use of the pot. */
  public PotRule withUse(double share) {
    return new PotRule(share, mostDrops, dropsForAll);
  }

  /** The same with another largest pot. */
  public PotRule withMostDrops(int drops) {
    return new PotRule(use, drops, dropsForAll);
  }

  /** The same with another need. */
  public PotRule withDropsForAll(double drops) {
    return new PotRule(use, mostDrops, drops);
  }

  /** Drops of paint that a pass uses up. */
  double need(double coverage) {
    return coverage * dropsForAll;
  }
}
