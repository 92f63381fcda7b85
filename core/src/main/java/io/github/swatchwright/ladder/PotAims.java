package io.github.swatchwright.ladder;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import java.util.Arrays;
import java.util.List;

/**
 * Where the rungs of a pot should lie: on the path from end to end, evenly spaced. Immutable.
 *
 * <p>The ends themselves are the wanted colours; the path's ends are mixes that come near them.
 */
final class PotAims {
  private final LadderPath path;
  private final double[] places;
  private final PotRule rule;
  private final double[] needs;
  private final List<Lab> labs;
  private final List<Lab> family;
  private final double step;
  private final Lab from;
  private final Lab to;
  private final int firstBottles;

  /**
   * Aims along a path.
   *
   * @param path the way
   * @param rule how the pot is used
   * @param needs drops that each rung's pass takes, as many as rungs
   * @param from the wanted colour of the first end
   * @param to the wanted colour of the last end
   * @param straight whether the shades between should lie on the straight way from colour to
   *     colour; otherwise on the path, where the mixes that were stated lead
   * @param firstBottles the paints that the first pot may hold, one bit each: those of a mix that
   *     was stated, so that the painter gets what was asked for
   */
  PotAims(
      LadderPath path,
      PotRule rule,
      double[] needs,
      Lab from,
      Lab to,
      boolean straight,
      int firstBottles) {
    this.path = path;
    this.places = path.evenPlaces(needs.length, 1);
    this.rule = rule;
    this.needs = needs.clone();
    this.from = from;
    this.to = to;
    this.firstBottles = firstBottles;
    this.labs = Arrays.stream(places).mapToObj(path::lab).toList();
    this.family = straight ? StraightWay.evenly(from, to, needs.length) : labs;
    double sum = 0;
    for (int i = 1; i < needs.length; i++) {
      sum += Ciede2000.deltaE(labs.get(i - 1), labs.get(i));
    }
    this.step = sum / (needs.length - 1);
  }

  int rungs() {
    return needs.length;
  }

  PotRule rule() {
    return rule;
  }

  /** Drops to mix for a rung's pass: what it takes, and what stays in brush and cup. */
  double paintDrops(int rung) {
    return needs[rung] / rule.use();
  }

  /** The fewest drops that a rung's pot may hold. */
  double smallestPot(int rung) {
    return Math.max(rule.leastDrops(), paintDrops(rung));
  }

  Lab lab(int rung) {
    return labs.get(rung);
  }

  /** How far a colour is from where a rung should lie, in steps; 0 for the ends. */
  double astray(int rung, Lab lab) {
    boolean end = rung == 0 || rung == rungs() - 1;
    return end ? 0 : Ciede2000.deltaE(lab, family.get(rung)) / step;
  }

  /** Whether a rung may hold these paints, one bit each. */
  boolean mayHold(int rung, int bottles) {
    return rung > 0 || (bottles & ~firstBottles) == 0;
  }

  /** How far a colour is from the wanted last end, ΔE00. */
  double missedEnd(Lab lab) {
    return Ciede2000.deltaE(lab, to);
  }

  /** How far the steps to come go in all when a rung has a colour, ΔE00, last rung excepted. */
  double left(int rung, Lab lab) {
    int last = rungs() - 1;
    double chord = Math.max(LadderCost.TOLD_APART, Ciede2000.deltaE(lab(rung), lab(last)));
    return step * (last - rung) * Ciede2000.deltaE(lab, lab(last)) / chord;
  }

  /** How far the path's own end is from the wanted last end, ΔE00. */
  double nearestEnd() {
    return missedEnd(lab(rungs() - 1));
  }

  /** How far a colour is from the wanted end, ΔE00; 0 for rungs between the ends. */
  double missedEnd(int rung, Lab lab) {
    if (rung == 0) {
      return Ciede2000.deltaE(lab, from);
    }
    return rung == rungs() - 1 ? missedEnd(lab) : 0;
  }

  /** Proportions of the paints, some share of a step before or behind the rung's own place. */
  double[] proportions(int rung, double shift) {
    double place = places[rung];
    int neighbour = rung + (shift < 0 ? -1 : 1);
    double towards =
        neighbour < 0 || neighbour >= rungs()
            ? 2 * place - places[2 * rung - neighbour]
            : places[neighbour];
    return path.at(place + Math.abs(shift) * (towards - place));
  }

  /** The mean ΔE00 between neighbouring aims. */
  double step() {
    return step;
  }

  /** 1 when the ladder gets lighter, −1 when it gets darker. */
  double direction() {
    return Math.signum(lab(rungs() - 1).l() - lab(0).l());
  }
}
