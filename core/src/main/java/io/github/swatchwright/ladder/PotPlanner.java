package io.github.swatchwright.ladder;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Finds the whole drops to keep and to add from rung to rung: a beam search over pots, then small
 * changes to the best ladders as long as they help. The beam keeps some of the best pots for each
 * number of drops that they have to spare, as a cheap pot with nothing to spare may be a dear
 * start.
 */
final class PotPlanner {
  /** The fewest pots that are followed. */
  private static final int NARROWEST = 30;

  /** Where there are few ways to go on, as many pots are followed as make up that many trials. */
  private static final int TRIALS = 25_000;

  /** No number of drops to spare has more than that many times its equal share of the beam. */
  private static final int SHARES = 2;

  /** So many times as many are looked at closely. */
  private static final int CLOSER = 4;

  private static final int MENDED = 6;

  private final PotAims aims;
  private final PotPaints paints;

  PotPlanner(PotPaints paints, PotAims aims) {
    this.paints = paints;
    this.aims = aims;
  }

  /** The best ladder that was found; empty when none keeps to the rules. */
  Optional<PotTrial> plan() {
    List<PotTrial> beam = new ArrayList<>();
    for (int[] start : new PotAdditions(paints, aims, 0).into(new double[paints.count()], 0)) {
      PotTrial first = PotTrial.first(aims, paints, start);
      if (first.isAllowed()) {
        beam.add(first);
      }
    }
    beam = best(beam);
    for (int rung = 1; rung < aims.rungs(); rung++) {
      PotAdditions additions = new PotAdditions(paints, aims, rung);
      List<PotTrial> next = new ArrayList<>();
      for (PotTrial trial : beam) {
        for (int keep : additions.keeps(trial)) {
          for (int[] drops : additions.into(trial.contents(), keep)) {
            PotTrial longer = trial.then(keep, drops);
            if (longer.isAllowed()) {
              next.add(longer);
            }
          }
        }
      }
      beam = best(next);
    }
    return beam.stream()
        .limit(MENDED)
        .map(PotMending::byDrops)
        .min(Comparator.comparingDouble(PotTrial::cost));
  }

  /** The most hopeful, cheapest first. */
  private List<PotTrial> best(List<PotTrial> trials) {
    if (trials.isEmpty()) {
      return trials;
    }
    int width = width(trials.get(0));
    Comparator<PotTrial> exact = Comparator.comparingDouble(PotTrial::cost);
    List<PotTrial> rough =
        chosen(trials, Comparator.comparingDouble(PotTrial::roughCost), CLOSER * width);
    boolean last = trials.get(0).rung() == aims.rungs() - 1;
    return last ? rough.stream().sorted(exact).toList() : chosen(rough, exact, width);
  }

  private int width(PotTrial trial) {
    if (trial.rung() == aims.rungs() - 1) {
      return NARROWEST;
    }
    PotAdditions additions = new PotAdditions(paints, aims, trial.rung() + 1);
    int ways = 1;
    for (int keep : additions.keeps(trial)) {
      ways += additions.into(trial.contents(), keep).size();
    }
    return Math.max(NARROWEST, TRIALS / ways);
  }

  /** The best ones, but only some for each number of drops to spare. */
  private static List<PotTrial> chosen(
      List<PotTrial> trials, Comparator<PotTrial> order, int width) {
    List<PotTrial> ranked = trials.stream().sorted(order).toList();
    long spares = trials.stream().mapToInt(PotTrial::spare).distinct().count();
    int share = (int) Math.max(1, (long) SHARES * width / spares);
    Map<Integer, Integer> taken = new HashMap<>();
    List<PotTrial> chosen = new ArrayList<>();
    for (PotTrial trial : ranked) {
      if (chosen.size() < width && taken.merge(trial.spare(), 1, Integer::sum) <= share) {
        chosen.add(trial);
      }
    }
    return chosen;
  }
}
