package io.github.swatchwright.ladder;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Small changes to a whole ladder, as long as they make it cheaper: a drop more or less of what is
 * kept or added on one rung, one paint for another, and, where none of these helps, two drops at
 * once on any rungs.
 */
final class PotMending {
  private static final double LEAST_GAIN = 1e-9;

  private final PotPaints paints;
  private final PotAims aims;
  private final List<Move> moves = new ArrayList<>();
  private PotTrial best;

  private PotMending(PotTrial found) {
    this.paints = found.paints();
    this.aims = found.aims();
    this.best = found;
    for (int rung = 0; rung < aims.rungs(); rung++) {
      for (int part = keepOr0(rung); part < paints.ingredients(); part++) {
        moves.add(new Move(rung, part, 1));
        moves.add(new Move(rung, part, -1));
      }
    }
  }

  /**
   * A drop more or less.
   *
   * @param rung where
   * @param part of which ingredient, or {@link #KEPT} of what is kept
   * @param change 1 or −1
   */
  private record Move(int rung, int part, int change) {}

  /** Stands for the drops that are kept, in place of an ingredient. */
  private static final int KEPT = -1;

  private int keepOr0(int rung) {
    return rung > 0 && !aims.rule().separate() ? KEPT : 0;
  }

  /** Changes on one rung, until none helps. */
  static PotTrial byDrops(PotTrial found) {
    PotMending mending = new PotMending(found);
    while (mending.oneRung()) {}
    return mending.best;
  }

  /** The same, and changes by any two drops, until none helps. */
  static PotTrial byPairs(PotTrial found) {
    PotMending mending = new PotMending(found);
    while (mending.oneRung() || mending.twoDrops()) {}
    return mending.best;
  }

  private boolean oneRung() {
    boolean helped = false;
    for (Move first : moves) {
      helped |= takeIfBetter(first);
      for (Move second : moves) {
        if (second.rung == first.rung && second.change < first.change) {
          helped |= takeIfBetter(first, second);
        }
      }
      helped |= first.part != KEPT && first.change > 0 && oneForAnother(first.rung, first.part);
    }
    return helped;
  }

  /** All drops of an ingredient on a rung from another bottle. */
  private boolean oneForAnother(int rung, int part) {
    boolean helped = false;
    for (int other = 0; other < paints.ingredients(); other++) {
      int[][] plan = plan();
      if (other != part && plan[rung][part + 1] > 0) {
        plan[rung][other + 1] += plan[rung][part + 1];
        plan[rung][part + 1] = 0;
        helped |= takeIfBetter(plan);
      }
    }
    return helped;
  }

  private boolean twoDrops() {
    boolean helped = false;
    for (int i = 0; i < moves.size(); i++) {
      for (int j = i; j < moves.size(); j++) {
        helped |= takeIfBetter(moves.get(i), moves.get(j));
      }
    }
    return helped;
  }

  /** For each rung the drops kept, and after them the drops added. */
  private int[][] plan() {
    List<PotTrial> all = best.all();
    int[][] plan = new int[all.size()][paints.ingredients() + 1];
    for (int rung = 0; rung < plan.length; rung++) {
      PotTrial trial = all.get(rung);
      plan[rung][0] = trial.cup().keep();
      System.arraycopy(trial.cup().added(), 0, plan[rung], 1, paints.ingredients());
    }
    return plan;
  }

  private boolean takeIfBetter(Move... some) {
    int[][] plan = plan();
    for (Move move : some) {
      plan[move.rung][move.part + 1] += move.change;
    }
    for (Move move : some) {
      if (plan[move.rung][move.part + 1] < 0) {
        return false;
      }
    }
    return takeIfBetter(plan);
  }

  private boolean takeIfBetter(int[][] plan) {
    List<PotTrial> known = best.all();
    PotTrial trial = null;
    for (int rung = 0; rung < plan.length; rung++) {
      trial = rung(trial, known.get(rung), plan[rung]);
      if (trial == null || !trial.isAllowed() || trial.knownCost() >= best.cost() - LEAST_GAIN) {
        return false;
      }
    }
    if (trial == null || trial.cost() >= best.cost() - LEAST_GAIN) {
      return false;
    }
    best = trial;
    return true;
  }

  /**
   * The next rung by a plan, as far as possible out of what is known; null for an empty pot.
   *
   * @param before what is planned up to there, null at the first rung
   * @param known the rung as it is planned so far
   */
  private @Nullable PotTrial rung(@Nullable PotTrial before, PotTrial known, int[] drops) {
    boolean same = isPoured(known.cup(), drops);
    if (same && known.before() == before) {
      return known;
    }
    if (Arrays.stream(drops).sum() == 0) {
      return null;
    }
    if (same && drops[0] == 0) {
      return before == null ? PotTrial.first(aims, known.cup()) : before.then(known.cup());
    }
    int[] added = Arrays.copyOfRange(drops, 1, drops.length);
    return before == null ? PotTrial.first(aims, paints, added) : before.then(drops[0], added);
  }

  private static boolean isPoured(Cup cup, int[] drops) {
    return cup.keep() == drops[0]
        && Arrays.equals(cup.added(), 0, cup.added().length, drops, 1, drops.length);
  }
}
