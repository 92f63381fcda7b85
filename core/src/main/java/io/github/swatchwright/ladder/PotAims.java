package io.github.swatchwright.ladder;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import java.util.Arrays;
import java.util.List;

/**
 * Where the rungs of a pot should lie: on the path, evenly spaced, as far as a pot gets that must
 * not grow too large. Immutable.
 */
final class PotAims {
  private static final int HALVINGS = 10;

  /** Whole drops need some room: the smooth plan fills the pot no more than that. */
  private static final double FULL = 0.9;

  private final LadderPath path;
  private final double[] places;
  private final PotRule rule;
  private final double[] needs;
  private final double[][] proportions;
  private final List<Lab> labs;
  private final double step;

  private PotAims(LadderPath path, double end, PotRule rule, double[] needs) {
    this.path = path;
    this.places = path.evenPlaces(needs.length, end);
    this.rule = rule;
    this.needs = needs;
    this.labs = Arrays.stream(places).mapToObj(path::lab).toList();
    this.proportions = Arrays.stream(places).mapToObj(path::at).toArray(double[][]::new);
    double sum = 0;
    for (int i = 1; i < needs.length; i++) {
      sum += Ciede2000.deltaE(labs.get(i - 1), labs.get(i));
    }
    this.step = sum / (needs.length - 1);
  }

  /**
   * The aims that reach furthest.
   *
   * @param path the way
   * @param rule how the pot is used
   * @param needs drops that each rung's pass uses up, as many as rungs
   */
  static PotAims of(LadderPath path, PotRule rule, double[] needs) {
    PotAims whole = new PotAims(path, 1, rule, needs);
    if (whole.fits()) {
      return whole;
    }
    double reached = 0;
    double missed = 1;
    for (int i = 0; i < HALVINGS; i++) {
      double end = (reached + missed) / 2;
      if (new PotAims(path, end, rule, needs).fits()) {
        reached = end;
      } else {
        missed = end;
      }
    }
    return new PotAims(path, Math.max(reached, 1e-3), rule, needs);
  }

  int rungs() {
    return needs.length;
  }

  PotRule rule() {
    return rule;
  }

  /** Drops that a rung's pass uses up. */
  double need(int rung) {
    return needs[rung];
  }

  Lab lab(int rung) {
    return labs.get(rung);
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

  /**
   * The largest pot that meeting the aims takes, in drops: each rung's pot is as small as its need
   * and what is left of each paint allow, as a smaller one leaves less to be outweighed.
   *
   * @param left drops of each paint before the first of them is mixed
   * @param from the first of them
   */
  double largestPot(double[] left, int from) {
    double largest = 0;
    double[] rest = left.clone();
    for (int rung = from; rung < rungs() && largest < Double.POSITIVE_INFINITY; rung++) {
      double[] wanted = proportions[rung];
      double pot = needs[rung] / rule.use();
      for (int i = 0; i < rest.length; i++) {
        if (rest[i] > 0) {
          pot = Math.max(pot, rest[i] / wanted[i]);
        }
      }
      largest = Math.max(largest, pot);
      for (int i = 0; i < rest.length; i++) {
        rest[i] = (1 - rule.use()) * pot * wanted[i];
      }
    }
    return largest;
  }

  private boolean fits() {
    double[] nothing = new double[proportions[0].length];
    return largestPot(nothing, 0) <= FULL * rule.mostDrops();
  }
}
