package io.github.swatchwright.ladder;

import io.github.swatchwright.difference.Ciede2000;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What may be kept of a pot for one rung, and which whole drops may be added to it. */
final class PotAdditions {
  /** So many kept amounts, and pot sizes, are tried one by one; larger ones in strides. */
  private static final int ONE_BY_ONE = 6;

  /** Larger ones grow by that share. */
  private static final double STRIDE = 0.25;

  /** A pot may be so much larger than it has to be, and that many drops besides. */
  private static final double ROOMY = 2.2;

  private static final int ROOM = 8;
  private static final double[] SHIFTS = {0, -0.25, 0.25};

  /**
   * For this many ingredients at once both rounding up and down are tried; the others are rounded
   * to the nearest.
   */
  private static final int ROUNDED = 2;

  /** So few ways to add drops are all tried. */
  private static final int FEW = 30;

  /** So many clean pots are tried, */
  private static final int MANY = 3_000;

  /** and this many of them are followed. */
  private static final int CUPS = 200;

  private final PotPaints paints;
  private final PotAims aims;
  private final List<Integer> sizes;
  private final double[][] wanted;
  private final int rung;
  private @Nullable List<Cup> cups;

  PotAdditions(PotPaints paints, PotAims aims, int rung) {
    this.paints = paints;
    this.aims = aims;
    this.rung = rung;
    int smallest = (int) Math.ceil(aims.smallestPot(rung) - 1e-9);
    int largest =
        aims.rule().separate()
            ? aims.rule().mostDrops()
            : (int) Math.min(aims.rule().mostDrops(), ROOMY * smallest + ROOM);
    this.sizes = strided(smallest, largest);
    this.wanted =
        Arrays.stream(SHIFTS)
            .mapToObj(shift -> aims.proportions(rung, shift))
            .toArray(double[][]::new);
  }

  /** Whole numbers from the first to the last, all of the first ones and then in strides. */
  private static List<Integer> strided(int first, int last) {
    List<Integer> numbers = new ArrayList<>();
    int number = first;
    while (number <= last) {
      numbers.add(number);
      boolean few = numbers.size() < ONE_BY_ONE;
      number += few ? 1 : Math.max(1, (int) (STRIDE * number));
    }
    return numbers;
  }

  /** How many drops of the pot before may be kept. */
  List<Integer> keeps(PotTrial before) {
    int most = Math.min(before.spare(), aims.rule().mostDrops() - 1);
    return aims.rule().separate() || most < 0 ? List.of(0) : strided(0, most);
  }

  /**
   * Whole drops that bring what is kept near to the aim of the rung.
   *
   * @param pot contents of the pot before
   * @param keep drops that are kept of it
   */
  List<int[]> into(double[] pot, int keep) {
    double whole = Arrays.stream(pot).sum();
    double[] kept = Arrays.stream(pot).map(drops -> keep == 0 ? 0 : drops * keep / whole).toArray();
    List<int[]> additions = new ArrayList<>();
    Set<Long> known = new HashSet<>();
    for (int size : sizes) {
      int room = size - keep;
      if (room > 0) {
        if (ways(room) <= FEW) {
          each(new int[paints.ingredients()], 0, room, drops -> add(drops, known, additions));
        } else {
          for (double[] proportions : wanted) {
            rounded(missing(kept, proportions, size, keep), known, additions);
          }
        }
      }
    }
    return additions;
  }

  /**
   * Clean pots near to the aim, the most hopeful first: these don't depend on the pot before, so
   * they are mixed once.
   */
  List<Cup> cups() {
    if (cups == null) {
      Set<Long> known = new HashSet<>();
      List<int[]> drops = new ArrayList<>();
      for (int size : sizes) {
        if (ways(size) + drops.size() <= MANY) {
          each(new int[paints.ingredients()], 0, size, some -> add(some, known, drops));
        }
      }
      for (int[] some : into(new double[paints.count()], 0)) {
        add(some, known, drops);
      }
      cups =
          drops.stream()
              .map(some -> Cup.of(paints, some))
              .map(cup -> new Weighed(cup, hopeless(cup)))
              .sorted(Comparator.comparingDouble(Weighed::hopeless))
              .limit(CUPS)
              .map(Weighed::cup)
              .toList();
    }
    return cups;
  }

  /** A clean pot and what it costs about: that is worked out once, not at each comparison. */
  private record Weighed(Cup cup, double hopeless) {}

  /** What a clean pot costs about. */
  private double hopeless(Cup cup) {
    double missed = Ciede2000.deltaE(cup.lab(), aims.lab(rung));
    return LadderCost.paint(cup.poured(), true)
        + LadderCost.openings(cup.sources())
        + LadderCost.uneven(LadderCost.EVEN_ENOUGH + missed / aims.step())
        + LadderCost.end(aims.missedEnd(rung, cup.lab()));
  }

  /** What is missing of each paint for a pot of a size, the let-down standing for its paints. */
  private double[] missing(double[] kept, double[] proportions, int size, int keep) {
    double[] missing = new double[paints.ingredients()];
    for (int i = 0; i < kept.length; i++) {
      missing[i] = Math.max(0, size * proportions[i] - kept[i]);
    }
    if (paints.letDown().isPresent()) {
      replace(missing, paints.letDown().get());
    }
    double sum = 0;
    for (double drops : missing) {
      sum += drops;
    }
    double room = size - keep;
    if (sum > 0) {
      for (int i = 0; i < missing.length; i++) {
        missing[i] *= room / sum;
      }
    }
    return missing;
  }

  /** Takes the strong paint from the let-down as far as that goes. */
  private void replace(double[] missing, LetDown small) {
    double[] one = new double[paints.count()];
    paints.pour(one, paints.count(), 1);
    double most = small.count();
    for (int i = 0; i < one.length; i++) {
      if (one[i] > 0 && paints.paint(i).equals(small.strong())) {
        most = Math.min(most, missing[i] / one[i]);
      }
    }
    missing[paints.count()] = most;
    for (int i = 0; i < one.length; i++) {
      missing[i] = Math.max(0, missing[i] - most * one[i]);
    }
  }

  private interface Use {
    void of(int[] drops);
  }

  private static void add(int[] drops, Set<Long> known, List<int[]> additions) {
    if (known.add(key(drops))) {
      additions.add(drops.clone());
    }
  }

  /** In how many ways some drops can be shared among the ingredients. */
  private double ways(int drops) {
    double ways = 1;
    for (int i = 1; i < paints.ingredients(); i++) {
      ways *= (drops + i) / (double) i;
    }
    return ways;
  }

  private static void each(int[] drops, int ingredient, int room, Use use) {
    if (ingredient == drops.length - 1) {
      drops[ingredient] = room;
      use.of(drops);
      return;
    }
    for (int count = 0; count <= room; count++) {
      drops[ingredient] = count;
      each(drops, ingredient + 1, room - count, use);
    }
  }

  /** Rounds the most undecided ones up and down in all ways, the others to the nearest. */
  private static void rounded(double[] exact, Set<Long> known, List<int[]> additions) {
    int[] nearest = new int[exact.length];
    for (int i = 0; i < exact.length; i++) {
      nearest[i] = (int) Math.rint(exact[i]);
    }
    int[] undecided = mostUndecided(exact);
    for (int choice = 0; choice < 1 << undecided.length; choice++) {
      int[] drops = nearest.clone();
      for (int i = 0; i < undecided.length; i++) {
        drops[undecided[i]] = (int) Math.floor(exact[undecided[i]]) + (choice >> i & 1);
      }
      if (!isEmpty(drops)) {
        add(drops, known, additions);
      }
    }
  }

  private static boolean isEmpty(int[] drops) {
    for (int count : drops) {
      if (count > 0) {
        return false;
      }
    }
    return true;
  }

  /** A number of its own for the drops of up to six ingredients, 1023 of each; a hash for more. */
  private static long key(int[] drops) {
    long key = 0;
    for (int count : drops) {
      key = key * 1031 + count;
    }
    return key;
  }

  /** The places that lie farthest from a whole number, farthest first. */
  private static int[] mostUndecided(double[] exact) {
    int[] places = new int[Math.min(ROUNDED, exact.length)];
    boolean[] taken = new boolean[exact.length];
    for (int n = 0; n < places.length; n++) {
      int farthest = -1;
      double most = -1;
      for (int i = 0; i < exact.length; i++) {
        double off = Math.abs(exact[i] - Math.rint(exact[i]));
        if (!taken[i] && off > most) {
          most = off;
          farthest = i;
        }
      }
      taken[farthest] = true;
      places[n] = farthest;
    }
    return places;
  }
}
