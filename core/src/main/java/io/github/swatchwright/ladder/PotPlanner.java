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
  static final int THOROUGH = 15_000;

  /** So many are enough to see which mixes for the ends are the most hopeful. */
  static final int QUICK = 4_000;

  private static final int WIDER = 8;

  /** No number of drops to spare has more than that many times its equal share of the beam. */
  private static final int SHARES = 2;

  /** So many times as many are looked at closely. */
  private static final int CLOSER = 4;

  private static final int MENDED = 6;

  private final PotAims aims;
  private final PotPaints paints;
  private final int trials;
  private final List<PotAdditions> additions = new ArrayList<>();

  /**
   * A planner.
   *
   * @param trials about how many pots are tried for each rung
   */
  PotPlanner(PotPaints paints, PotAims aims, int trials) {
    this.trials = trials;
    this.paints = paints;
    this.aims = aims;
  }

  /**
   * The best ladder that was found; empty when none keeps to the rules. A beam that finds no way on
   * is followed once more with {@value #WIDER} times as many pots, since the cheapest starts may
   * all lead nowhere.
   */
  Optional<PotTrial> plan() {
    Optional<PotTrial> found = follow();
    return found.isPresent() ? found : new PotPlanner(paints, aims, WIDER * trials).follow();
  }

  private Optional<PotTrial> follow() {
    List<PotTrial> beam = new ArrayList<>();
    for (int[] start : additions(0).into(new double[paints.count()], 0)) {
      PotTrial first = PotTrial.first(aims, paints, start);
      if (first.isAllowed()) {
        beam.add(first);
      }
    }
    beam = best(beam);
    for (int rung = 1; rung < aims.rungs(); rung++) {
      PotAdditions ways = additions(rung);
      beam = best(aims.rule().separate() ? separate(beam, ways) : poured(beam, ways));
    }
    return beam.stream()
        .limit(MENDED)
        .map(PotMending::byDrops)
        .min(Comparator.comparingDouble(PotTrial::cost));
  }

  /** Every way to go on that keeps to the rules, out of the pot. */
  private static List<PotTrial> poured(List<PotTrial> beam, PotAdditions additions) {
    List<PotTrial> next = new ArrayList<>();
    for (PotTrial trial : beam) {
      for (int keep : additions.keeps(trial)) {
        for (int[] drops : additions.into(trial.cup().contents(), keep)) {
          PotTrial longer = trial.then(keep, drops);
          if (longer.isAllowed()) {
            next.add(longer);
          }
        }
      }
    }
    return next;
  }

  /** The same with clean pots, each mixed once for all that it may follow. */
  private static List<PotTrial> separate(List<PotTrial> beam, PotAdditions additions) {
    List<Cup> cups = additions.cups();
    List<PotTrial> next = new ArrayList<>();
    for (PotTrial trial : beam) {
      for (Cup cup : cups) {
        PotTrial longer = trial.then(cup);
        if (longer.isAllowed()) {
          next.add(longer);
        }
      }
    }
    return next;
  }

  /** The most hopeful, cheapest first. */
  private List<PotTrial> best(List<PotTrial> tried) {
    if (tried.isEmpty()) {
      return tried;
    }
    int width = width(tried.get(0));
    Comparator<PotTrial> exact = Comparator.comparingDouble(PotTrial::cost);
    List<PotTrial> rough =
        chosen(tried, Comparator.comparingDouble(PotTrial::roughCost), CLOSER * width);
    boolean last = tried.get(0).rung() == aims.rungs() - 1;
    return last ? rough.stream().sorted(exact).toList() : chosen(rough, exact, width);
  }

  private PotAdditions additions(int rung) {
    while (additions.size() <= rung) {
      additions.add(new PotAdditions(paints, aims, additions.size()));
    }
    return additions.get(rung);
  }

  private int width(PotTrial trial) {
    if (trial.rung() == aims.rungs() - 1) {
      return NARROWEST;
    }
    PotAdditions next = additions(trial.rung() + 1);
    if (aims.rule().separate()) {
      return Math.max(NARROWEST, trials / (1 + next.cups().size()));
    }
    int ways = 1;
    for (int keep : next.keeps(trial)) {
      ways += next.into(trial.cup().contents(), keep).size();
    }
    return Math.max(NARROWEST, trials / ways);
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
