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

  private static final double ROUNDING = 1e-9;

  private final PotAims aims;
  private final Cup cup;
  private final @Nullable PotTrial before;
  private final int rung;
  private final double step;
  private final int bottles;
  private final int letDown;
  private final double guessedUnevenness;
  private final boolean allowed;
  private final double knownCost;
  private double costSoFar = Double.NaN;

  private PotTrial(PotAims aims, Cup cup, @Nullable PotTrial before) {
    this.aims = aims;
    this.cup = cup;
    this.before = before;
    this.rung = before == null ? 0 : before.rung + 1;
    this.step = before == null ? 0 : Ciede2000.deltaE(before.lab(), lab());
    this.bottles = cup.bottles() | (before == null ? 0 : before.bottles);
    this.letDown = cup.letDown() + (before == null ? 0 : before.letDown);
    this.allowed = keepsToTheRules();
    this.guessedUnevenness = allowed ? guessUnevenness() : 0;
    this.knownCost =
        allowed ? ownCost() + (before == null ? 0 : before.costSoFar()) : Double.POSITIVE_INFINITY;
  }

  /** The first rung. */
  static PotTrial first(PotAims aims, Cup cup) {
    return new PotTrial(aims, cup, null);
  }

  /** The first rung, of whole drops. */
  static PotTrial first(PotAims aims, PotPaints paints, int[] added) {
    return first(aims, Cup.of(paints, added));
  }

  /** This, with another rung from a clean pot. */
  PotTrial then(Cup clean) {
    return new PotTrial(aims, clean, this);
  }

  /** This, with another rung mixed of some kept drops and some added ones. */
  PotTrial then(int kept, int[] more) {
    return new PotTrial(aims, cup.then(kept, more), this);
  }

  private double ownCost() {
    boolean separate = aims.rule().separate();
    double cost = LadderCost.paint(cup.poured(), before == null || separate);
    cost += LadderCost.openings(cup.sources());
    int known = before == null ? 0 : Integer.bitCount(before.bottles);
    cost += LadderCost.bottles(Integer.bitCount(bottles) - known);
    if (letDown > 0 && (before == null || before.letDown == 0)) {
      cost += LadderCost.letDown(paints().letDown().orElseThrow());
    }
    if (before != null && cup.keep() == 0 && !separate) {
      cost += LadderCost.freshStart();
    }
    cost += leadingBack() + surplus();
    cost += LadderCost.end(aims.missedEnd(rung, lab()));
    return cost + LadderCost.astray(aims.astray(rung, lab()));
  }

  /**
   * What is mixed for nothing: in the pot before, now that it is known what is kept, and in this.
   */
  private double surplus() {
    boolean separate = aims.rule().separate();
    double cost = 0;
    if (before != null && !separate) {
      double kept = before.cup.drops() - aims.paintDrops(rung - 1) - cup.keep();
      double above = before.cup.drops() - aims.smallestPot(rung - 1);
      cost += LadderCost.surplus(Math.floor(Math.min(kept, above) + ROUNDING));
    }
    if (separate || rung == aims.rungs() - 1) {
      cost += LadderCost.surplus(Math.floor(cup.drops() - aims.smallestPot(rung) + ROUNDING));
    }
    return cost;
  }

  private double leadingBack() {
    double cost = 0;
    if (before != null && cup.keep() > 0) {
      int[] added = cup.added();
      for (int i = 0; i < added.length; i++) {
        if (added[i] > 0) {
          double ahead = paints().lightness(i) - before.lab().l();
          cost += LadderCost.leadingBack(ahead * aims.direction());
        }
      }
    }
    return cost;
  }

  /** Whether the pot is of a size that the rules allow, and the shade goes on as it must. */
  boolean isAllowed() {
    return allowed;
  }

  private boolean keepsToTheRules() {
    return cup.drops() <= aims.rule().mostDrops() + ROUNDING
        && cup.drops() >= aims.smallestPot(rung) - ROUNDING
        && aims.mayHold(rung, bottles)
        && (letDown == 0 || letDown <= paints().letDown().orElseThrow().count())
        && (before == null || (cup.keep() <= before.spare() && goesOn()));
  }

  private boolean goesOn() {
    return before != null
        && (lab().l() - before.lab().l()) * aims.direction() >= LEAST_LIGHTNESS_STEP
        && step >= Math.max(LadderCost.TOLD_APART, LadderCost.LEAST_STEP * aims.step());
  }

  /** Whole drops that are left when this rung is painted. */
  int spare() {
    return aims.rule().separate()
        ? 0
        : (int) Math.floor(cup.drops() - aims.paintDrops(rung) + ROUNDING);
  }

  /** The rungs before this one, null at the first. */
  @Nullable PotTrial before() {
    return before;
  }

  int rung() {
    return rung;
  }

  Cup cup() {
    return cup;
  }

  Lab lab() {
    return cup.lab();
  }

  PotAims aims() {
    return aims;
  }

  PotPaints paints() {
    return cup.paints();
  }

  /** What this costs for certain, however it goes on, without how its last rung scatters. */
  double knownCost() {
    return knownCost;
  }

  /** What this costs for certain, however it goes on. */
  double costSoFar() {
    if (Double.isNaN(costSoFar)) {
      costSoFar = knownCost + LadderCost.frail(frailty()) + LadderCost.unsure(certainty());
    }
    return costSoFar;
  }

  /** What the whole ladder costs; of its beginning, what the steps cost is guessed. */
  double cost() {
    return costSoFar() + LadderCost.uneven(guessedUnevenness);
  }

  /** Like {@link #cost()}, without how the last rung scatters: quicker. */
  double roughCost() {
    return knownCost + LadderCost.uneven(guessedUnevenness);
  }

  /** How far one drop moves the last rung, its scatter included, in even steps. */
  double frailty() {
    return cup.oneDropScattered() / aims.step();
  }

  /** How far L* goes on to this rung, in sd of what scattering drops make of it. */
  private double certainty() {
    if (before == null) {
      return Double.POSITIVE_INFINITY;
    }
    return Math.abs(lab().l() - before.lab().l()) / cup.scatterOfStep(before.cup);
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
    return worst(sum() / Math.max(1, rung));
  }

  /**
   * The same of the whole ladder when the rungs to come go evenly to the last aim, by a way that is
   * as curved as the path.
   */
  private double guessUnevenness() {
    int toCome = aims.rungs() - 1 - rung;
    if (toCome == 0) {
      return unevenness();
    }
    double left = aims.left(rung, lab());
    double mean = (sum() + left) / (aims.rungs() - 1);
    return Math.max(worst(mean), Math.abs(left / toCome / mean - 1));
  }

  private double sum() {
    double sum = 0;
    for (PotTrial trial = this; trial.before != null; trial = trial.before) {
      sum += trial.step;
    }
    return sum;
  }

  private double worst(double mean) {
    double worst = 0;
    for (PotTrial trial = this; trial.before != null; trial = trial.before) {
      worst = Math.max(worst, Math.abs(trial.step / mean - 1));
    }
    return worst;
  }
}
