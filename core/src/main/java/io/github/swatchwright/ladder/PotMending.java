package io.github.swatchwright.ladder;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Small changes to a whole ladder, as long as they help: a drop more or less on one rung, a drop of
 * one paint for a drop of another, and when none of these helps, two drops at once on any rungs.
 */
final class PotMending {
  private final PotPaints paints;
  private final PotAims aims;
  private PotTrial best;

  private PotMending(PotPaints paints, PotAims aims, PotTrial found) {
    this.paints = paints;
    this.aims = aims;
    this.best = found;
  }

  /** Changes by one drop on one rung, or one for another, until none helps. */
  static PotTrial byDrops(PotPaints paints, PotAims aims, PotTrial found) {
    PotMending mending = new PotMending(paints, aims, found);
    while (mending.oneRung()) {}
    return mending.best;
  }

  /** The same, and changes by any two drops, until none helps. */
  static PotTrial byPairs(PotPaints paints, PotAims aims, PotTrial found) {
    PotMending mending = new PotMending(paints, aims, found);
    while (mending.oneRung() || mending.twoDrops()) {}
    return mending.best;
  }

  /**
   * A drop more or less.
   *
   * @param rung where
   * @param paint of which
   * @param change 1 or −1
   */
  private record Move(int rung, int paint, int change) {}

  private List<Move> moves() {
    List<Move> moves = new ArrayList<>();
    for (int rung = 0; rung < aims.rungs(); rung++) {
      for (int paint = 0; paint < paints.count(); paint++) {
        moves.add(new Move(rung, paint, 1));
        moves.add(new Move(rung, paint, -1));
      }
    }
    return moves;
  }

  private boolean oneRung() {
    boolean helped = false;
    List<Move> moves = moves();
    for (Move first : moves) {
      helped |= takeIfBetter(first);
      for (Move second : moves) {
        if (second.rung == first.rung && second.change < first.change) {
          helped |= takeIfBetter(first, second);
        }
      }
    }
    return helped;
  }

  private boolean twoDrops() {
    boolean helped = false;
    List<Move> moves = moves();
    for (int i = 0; i < moves.size(); i++) {
      for (int j = i; j < moves.size(); j++) {
        helped |= takeIfBetter(moves.get(i), moves.get(j));
      }
    }
    return helped;
  }

  private boolean takeIfBetter(Move... moves) {
    int[][] added = best.all().stream().map(trial -> trial.added().clone()).toArray(int[][]::new);
    for (Move move : moves) {
      added[move.rung][move.paint] += move.change;
    }
    for (Move move : moves) {
      if (added[move.rung][move.paint] < 0) {
        return false;
      }
    }
    PotTrial trial = null;
    for (int[] drops : added) {
      boolean fromNothing = trial == null || aims.rule().isSeparate();
      if (fromNothing && Arrays.stream(drops).sum() == 0) {
        return false;
      }
      trial = trial == null ? PotTrial.first(aims, paints, drops) : trial.then(paints, drops);
      if (!trial.isAllowed() || trial.objective() >= best.objective() - 1e-12) {
        return false;
      }
    }
    if (trial != null) {
      best = trial;
    }
    return true;
  }
}
