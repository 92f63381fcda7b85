package io.github.swatchwright.ladder;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Finds whole drops that bring a pot from rung to rung: a beam search over pots, then small changes
 * to the best ladders as long as they help.
 */
final class PotPlanner {
  private static final int BEAM = 20;

  /** What it counts when the pot would have to be twice as large as it may be. */
  private static final double TOO_LARGE = 0.25;

  /** Where there are no more ways to go on, the beam is as wide as {@link #TRIALS} allows. */
  private static final int FEW_ENOUGH = 200;

  private static final int TRIALS = 20_000;
  private static final int MENDED = 4;
  private static final int POT_SIZES = 8;
  private static final double[] SHIFTS = {0, -0.2, 0.2};

  /** So few ways to add drops are all tried. */
  private static final int FEW = 500;

  /** Rounding up or down is tried for so many paints at once, the others go to the nearest. */
  private static final int ROUNDED = 4;

  private final PotPaints paints;
  private final PotAims aims;

  PotPlanner(PotPaints paints, PotAims aims) {
    this.paints = paints;
    this.aims = aims;
  }

  /** The best ladder that was found; empty when none keeps to the rules. */
  Optional<PotTrial> plan() {
    List<PotTrial> beam = new ArrayList<>();
    for (int[] start : additions(new double[paints.count()], 0)) {
      beam.add(PotTrial.first(aims, paints, start));
    }
    beam = best(beam);
    for (int rung = 1; rung < aims.rungs(); rung++) {
      List<PotTrial> next = new ArrayList<>();
      for (PotTrial trial : beam) {
        for (int[] drops : additions(trial.left(), rung)) {
          next.add(trial.then(paints, drops));
        }
      }
      beam = best(next);
    }
    return beam.stream()
        .limit(MENDED)
        .map(trial -> PotMending.byDrops(paints, aims, trial))
        .min(Comparator.comparingDouble(PotTrial::objective));
  }

  /** The most hopeful: the more, the fewer ways there are to go on from each. */
  private List<PotTrial> best(List<PotTrial> trials) {
    List<PotTrial> ranked =
        trials.stream()
            .filter(PotTrial::isAllowed)
            .map(trial -> new Ranked(trial, prospect(trial)))
            .sorted(Comparator.comparingDouble(Ranked::prospect))
            .map(Ranked::trial)
            .toList();
    return ranked.subList(0, Math.min(ranked.size(), ranked.isEmpty() ? 0 : width(ranked.get(0))));
  }

  private int width(PotTrial first) {
    int next = first.rung() + 1;
    int ways = next < aims.rungs() ? additions(first.left(), next).size() : 1;
    return ways <= FEW_ENOUGH ? TRIALS / Math.max(1, ways) : BEAM;
  }

  /**
   * A trial in the order of hope.
   *
   * @param trial the rungs so far
   * @param prospect what it promises, the smaller the better
   */
  private record Ranked(PotTrial trial, double prospect) {}

  /** The objective, and how far too large the pot would have to grow to meet the later aims. */
  private double prospect(PotTrial trial) {
    if (trial.rung() + 1 == aims.rungs()) {
      return trial.objective();
    }
    double largest = aims.largestPot(trial.left(), trial.rung() + 1);
    double tooLarge = Math.max(0, largest / aims.rule().mostDrops() - 1);
    return trial.objective() + TOO_LARGE * Math.min(1, tooLarge);
  }

  /** Whole drops that bring what is left near to the aim of a rung, in pots of many sizes. */
  private List<int[]> additions(double[] left, int rung) {
    double room = aims.rule().mostDrops() - Arrays.stream(left).sum();
    if (ways((int) room, left.length) <= FEW) {
      return all(new int[left.length], 0, (int) room);
    }
    List<int[]> additions = new ArrayList<>();
    Set<Long> known = new HashSet<>();
    double smallest =
        Math.max(Math.max(1, aims.need(rung) / aims.rule().use()), Arrays.stream(left).sum());
    double largest = aims.rule().mostDrops();
    double stride = Math.max(1, (largest - smallest) / POT_SIZES);
    for (double shift : SHIFTS) {
      double[] wanted = aims.proportions(rung, shift);
      for (double pot = smallest; pot <= largest; pot += stride) {
        double[] exact = new double[left.length];
        for (int i = 0; i < exact.length; i++) {
          exact[i] = Math.max(0, pot * wanted[i] - left[i]);
        }
        round(exact, known, additions);
      }
    }
    return additions;
  }

  /** In how many ways up to so many drops of some paints can be chosen. */
  private static double ways(int room, int paints) {
    double ways = 1;
    for (int i = 1; i <= paints; i++) {
      ways *= (room + i) / (double) i;
    }
    return ways;
  }

  /** All additions that there is room for but none at all. */
  private static List<int[]> all(int[] drops, int paint, int room) {
    if (paint == drops.length) {
      return Arrays.stream(drops).sum() > 0 ? List.of(drops.clone()) : List.of();
    }
    List<int[]> all = new ArrayList<>();
    for (int count = 0; count <= room; count++) {
      drops[paint] = count;
      all.addAll(all(drops, paint + 1, room - count));
    }
    drops[paint] = 0;
    return all;
  }

  private static void round(double[] exact, Set<Long> known, List<int[]> additions) {
    int[] order = mostUndecided(exact);
    int free = Math.min(ROUNDED, order.length);
    for (int choice = 0; choice < 1 << free; choice++) {
      int[] drops = Arrays.stream(exact).mapToInt(d -> (int) Math.rint(d)).toArray();
      for (int i = 0; i < free; i++) {
        drops[order[i]] = (int) Math.floor(exact[order[i]]) + (choice >> i & 1);
      }
      boolean nothing = Arrays.stream(drops).sum() == 0;
      if (!nothing && known.add(key(drops))) {
        additions.add(drops);
      }
    }
  }

  /** A number of its own for the drops of up to six paints, 1023 of each; a hash for more. */
  private static long key(int[] drops) {
    long key = 0;
    for (int count : drops) {
      key = key * 1031 + count;
    }
    return key;
  }

  private static int[] mostUndecided(double[] exact) {
    return IntStream.range(0, exact.length)
        .boxed()
        .sorted(Comparator.comparingDouble(i -> Math.abs(exact[i] - Math.rint(exact[i])) * -1))
        .mapToInt(Integer::intValue)
        .toArray();
  }
}
