package io.github.swatchwright.ladder;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Rungs mixed so far, and what they cost by {@link LadderCost}. Not changed once it is made, but
 * for figures that are worked out when they are first asked for; for one thread.
 */
final class PotTrial {
  /** Lightness must move at least so far each time, so that printed figures are monotone too. */
  static final double LEAST_LIGHTNESS_STEP = 0.05;

  /** Relative scatter of a drop's volume, as sd (common practice). */
  private static final double DROP_SCATTER = 0.08;

  private static final double ROUNDING = 1e-9;

  private final PotAims aims;
  private final PotPaints paints;
  private final @Nullable PotTrial before;
  private final int rung;
  private final int keep;
  private final int[] added;
  private final double[] contents;
  private final double drops;
  private final Lab lab;
  private final double step;
  private final int bottles;
  private final boolean letDown;
  private final double farthestStep;
  private final boolean allowed;
  private final double knownCost;
  private double oneDrop = Double.NaN;
  private double costSoFar = Double.NaN;

  private PotTrial(
      PotAims aims, PotPaints paints, @Nullable PotTrial before, int keep, int[] added) {
    this.aims = aims;
    this.paints = paints;
    this.before = before;
    this.rung = before == null ? 0 : before.rung + 1;
    this.keep = keep;
    this.added = added;
    this.contents = mixed(keep, added);
    this.drops = sum(contents);
    this.lab = paints.lab(contents);
    this.step = before == null ? 0 : Ciede2000.deltaE(before.lab, lab);
    int opened = before == null ? 0 : before.bottles;
    for (int i = 0; i < added.length; i++) {
      opened |= added[i] > 0 ? paints.bottles(i) : 0;
    }
    this.bottles = opened;
    this.letDown = (before != null && before.letDown) || takesLetDown();
    this.farthestStep =
        before == null ? 0 : Math.max(before.farthestStep, Math.abs(step / aims.step() - 1));
    this.allowed = keepsToTheRules();
    this.knownCost =
        allowed ? ownCost() + (before == null ? 0 : before.costSoFar()) : Double.POSITIVE_INFINITY;
  }

  private static double sum(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum;
  }

  /** The first rung. */
  static PotTrial first(PotAims aims, PotPaints paints, int[] added) {
    return new PotTrial(aims, paints, null, 0, added);
  }

  /** This, with another rung mixed of some kept drops and some added ones. */
  PotTrial then(int kept, int[] more) {
    return new PotTrial(aims, paints, this, kept, more);
  }

  private double[] mixed(double kept, int[] more) {
    double[] mixed = new double[paints.count()];
    if (before != null && kept > 0) {
      for (int i = 0; i < mixed.length; i++) {
        mixed[i] = before.contents[i] * kept / before.drops;
      }
    }
    for (int i = 0; i < more.length; i++) {
      if (more[i] > 0) {
        paints.pour(mixed, i, more[i]);
      }
    }
    return mixed;
  }

  private boolean takesLetDown() {
    return added.length > paints.count() && added[paints.count()] > 0;
  }

  private double ownCost() {
    int poured = 0;
    int openings = 0;
    for (int count : added) {
      poured += count;
      openings += count > 0 ? 1 : 0;
    }
    double cost = LadderCost.paint(poured, before == null || aims.rule().separate());
    cost += LadderCost.openings(openings);
    int known = before == null ? 0 : Integer.bitCount(before.bottles);
    cost += LadderCost.bottles(Integer.bitCount(bottles) - known);
    if (letDown && (before == null || !before.letDown)) {
      cost += LadderCost.letDown(paints.letDown().orElseThrow());
    }
    if (before != null && keep == 0 && !aims.rule().separate()) {
      cost += LadderCost.freshStart();
    }
    cost += LadderCost.end(aims.missedEnd(rung, lab));
    if (rung > 0 && rung < aims.rungs() - 1) {
      cost += LadderCost.astray(Ciede2000.deltaE(lab, aims.lab(rung)) / aims.step());
    }
    return cost;
  }

  /** Whether the pot is of a size that the rules allow, and the shade goes on as it must. */
  boolean isAllowed() {
    return allowed;
  }

  private boolean keepsToTheRules() {
    return drops <= aims.rule().mostDrops() + ROUNDING
        && drops >= aims.smallestPot(rung) - ROUNDING
        && aims.mayHold(rung, bottles)
        && takesLetDownOnlyWhereItIsEnough()
        && (before == null || (keep <= before.spare() && goesOn()));
  }

  private boolean goesOn() {
    return before != null
        && (lab.l() - before.lab.l()) * aims.direction() >= LEAST_LIGHTNESS_STEP
        && step >= Math.max(LadderCost.TOLD_APART, LadderCost.LEAST_STEP * aims.step());
  }

  private boolean takesLetDownOnlyWhereItIsEnough() {
    if (!takesLetDown()) {
      return true;
    }
    int taken = 0;
    for (PotTrial trial = this; trial != null; trial = trial.before) {
      taken += trial.added[paints.count()];
    }
    return taken <= paints.letDown().orElseThrow().count();
  }

  /** Whole drops that are left when this rung is painted. */
  int spare() {
    return aims.rule().separate() ? 0 : (int) Math.floor(drops - aims.paintDrops(rung) + ROUNDING);
  }

  int rung() {
    return rung;
  }

  int keep() {
    return keep;
  }

  int[] added() {
    return added;
  }

  double[] contents() {
    return contents;
  }

  double potDrops() {
    return drops;
  }

  Lab lab() {
    return lab;
  }

  PotAims aims() {
    return aims;
  }

  PotPaints paints() {
    return paints;
  }

  /** What this costs for certain, however it goes on, without how frail its last rung is. */
  double knownCost() {
    return knownCost;
  }

  /** What this costs for certain, however it goes on. */
  double costSoFar() {
    if (Double.isNaN(costSoFar)) {
      costSoFar = knownCost + LadderCost.frail(frailty());
    }
    return costSoFar;
  }

  /** What the whole ladder costs; of its beginning, what the steps so far cost is guessed. */
  double cost() {
    return costSoFar() + LadderCost.uneven(rung == aims.rungs() - 1 ? unevenness() : farthestStep);
  }

  /** Like {@link #cost()}, without how frail the last rung is: quicker. */
  double roughCost() {
    return knownCost + LadderCost.uneven(farthestStep);
  }

  /** How far one drop moves the last rung, its scatter included, in even steps. */
  double frailty() {
    int most = keep;
    for (int count : added) {
      most = Math.max(most, count);
    }
    return oneDrop() * (1 + DROP_SCATTER * Math.sqrt(most)) / aims.step();
  }

  /** The largest ΔE00 that one drop more or less makes, of what is kept or added. */
  double oneDrop() {
    if (Double.isNaN(oneDrop)) {
      double largest = 0;
      for (int change = -1; change <= 1; change += 2) {
        if (keep > 0) {
          largest = Math.max(largest, moved(mixed(keep + (double) change, added)));
        }
        for (int i = 0; i < added.length; i++) {
          if (added[i] > 0) {
            double[] other = contents.clone();
            paints.pour(other, i, change);
            largest = Math.max(largest, moved(other));
          }
        }
      }
      oneDrop = largest;
    }
    return oneDrop;
  }

  private double moved(double[] other) {
    return sum(other) < 0.5 ? 0 : Ciede2000.deltaE(lab, paints.lab(other));
  }

  /** The first rung and all up to this one. */
  List<PotTrial> all() {
    Deque<PotTrial> all = new ArrayDeque<>();
    for (PotTrial trial = this; trial != null; trial = trial.before) {
      all.addFirst(trial);
    }
    return List.copyOf(all);
  }

  /** The largest difference of a step from the mean of all, as a share of it. */
  double unevenness() {
    double sum = 0;
    for (PotTrial trial = this; trial.before != null; trial = trial.before) {
      sum += trial.step;
    }
    double mean = sum / Math.max(1, rung);
    double worst = 0;
    for (PotTrial trial = this; trial.before != null; trial = trial.before) {
      worst = Math.max(worst, Math.abs(trial.step / mean - 1));
    }
    return worst;
  }
}
