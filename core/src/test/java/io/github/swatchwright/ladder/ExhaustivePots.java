package io.github.swatchwright.ladder;

import java.util.function.Consumer;

/**
 * Tries every number of drops to keep and to add on every rung, and finds the least cost that keeps
 * to the rules. What can't become the cheapest any more, as costs only grow, is not followed.
 */
final class ExhaustivePots {
  private final PotPaints paints;
  private final PotAims aims;
  private double best;

  private ExhaustivePots(PotPaints paints, PotAims aims, double known) {
    this.paints = paints;
    this.aims = aims;
    this.best = known;
  }

  /**
   * The least cost, if it is less than a known one, or else the known one.
   *
   * @param known what has been reached; infinite when nothing has
   */
  static double leastCost(PotPaints paints, PotAims aims, double known) {
    ExhaustivePots all = new ExhaustivePots(paints, aims, known);
    int most = aims.rule().mostDrops();
    all.each(
        new int[paints.ingredients()],
        0,
        most,
        start -> all.follow(PotTrial.first(aims, paints, start)));
    return all.best;
  }

  private void follow(PotTrial trial) {
    if (!trial.isAllowed() || trial.costSoFar() >= best) {
      return;
    }
    if (trial.rung() + 1 == aims.rungs()) {
      best = Math.min(best, trial.cost());
      return;
    }
    for (int keep = 0; keep <= trial.spare(); keep++) {
      int kept = keep;
      each(
          new int[paints.ingredients()],
          0,
          aims.rule().mostDrops() - keep,
          drops -> follow(trial.then(kept, drops)));
    }
  }

  /** Every non-empty addition that there is room for. */
  private void each(int[] drops, int ingredient, int room, Consumer<int[]> use) {
    if (ingredient == drops.length) {
      for (int count : drops) {
        if (count > 0) {
          use.accept(drops.clone());
          return;
        }
      }
      return;
    }
    for (int count = 0; count <= room; count++) {
      drops[ingredient] = count;
      each(drops, ingredient + 1, room - count, use);
    }
    drops[ingredient] = 0;
  }
}
