package io.github.swatchwright.ladder;

import java.util.Arrays;

/**
 * Tries every whole number of drops of every paint on every rung, and finds the least objective
 * that keeps to the rules. What can't become the best any more, as the objective only grows, is not
 * followed further.
 */
final class ExhaustivePots {
  private final PotPaints paints;
  private final PotAims aims;
  private double best = Double.POSITIVE_INFINITY;

  private ExhaustivePots(PotPaints paints, PotAims aims) {
    this.paints = paints;
    this.aims = aims;
  }

  /**
   * The least objective, if it is less than a known one, or else the known one.
   *
   * @param known what has been reached; infinite when nothing has
   */
  static double leastObjective(PotPaints paints, PotAims aims, double known) {
    ExhaustivePots all = new ExhaustivePots(paints, aims);
    all.best = known;
    int[] start = new int[paints.count()];
    all.each(start, 0, aims.rule().mostDrops(), () -> all.follow(all.first(start)));
    return all.best;
  }

  private PotTrial first(int[] start) {
    return PotTrial.first(aims, paints, start.clone());
  }

  private void follow(PotTrial trial) {
    if (!trial.isAllowed() || trial.objective() >= best) {
      return;
    }
    if (trial.rung() + 1 == aims.rungs()) {
      best = trial.objective();
      return;
    }
    double left = Arrays.stream(trial.left()).sum();
    int[] drops = new int[paints.count()];
    int room = (int) Math.floor(aims.rule().mostDrops() - left + 1e-9);
    each(drops, 0, room, () -> follow(trial.then(paints, drops.clone())));
  }

  private void each(int[] drops, int paint, int room, Runnable use) {
    if (paint == drops.length) {
      if (Arrays.stream(drops).sum() > 0) {
        use.run();
      }
      return;
    }
    for (int count = 0; count <= room; count++) {
      drops[paint] = count;
      each(drops, paint + 1, room - count, use);
    }
    drops[paint] = 0;
  }
}
