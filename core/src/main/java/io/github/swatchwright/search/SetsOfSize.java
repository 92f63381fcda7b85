package io.github.swatchwright.search;

import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import org.jspecify.annotations.Nullable;

/**
 * All sets of two, three or four of a shelf's paints, and the ratios in which each may be mixed.
 */
final class SetsOfSize {
  /**
   * Cells with up to this many ratios for each paint of a set aren't split: looking at the corners
   * of the smaller ones would cost more.
   */
  private static final int SMALL = 4;

  private static final int PAINT_BITS = 16;
  private static final int PAINT_MASK = (1 << PAINT_BITS) - 1;

  final int size;
  final int paints;
  final RatioCell ratios;

  /** What is remembered of each set; null when there is no room. */
  final @Nullable SetBoxes boxes;

  private final long[][] binomials;
  private final Queue<SetSearcher> idle = new ConcurrentLinkedQueue<>();

  private SetsOfSize(int size, int paints, RatioCell ratios, @Nullable SetBoxes boxes) {
    this.size = size;
    this.paints = paints;
    this.ratios = ratios;
    this.boxes = boxes;
    binomials = new long[size][paints];
    for (int place = 0; place < size; place++) {
      for (int paint = 0; paint < paints; paint++) {
        binomials[place][paint] = SetBoxes.binomial(paint, place + 1);
      }
    }
  }

  /**
   * The sets.
   *
   * @param size paints in each, 2 to 4
   * @param paints paints on the shelf
   * @param words how many boxes may be remembered
   */
  static SetsOfSize of(int size, int paints, int mostDrops, long words) {
    long sets = SetBoxes.binomial(paints, size);
    int small = SMALL * size;
    if (sets > words) {
      return new SetsOfSize(size, paints, RatioCell.whole(size, mostDrops, small, 0), null);
    }
    int remembered = small;
    RatioCell ratios = RatioCell.whole(size, mostDrops, small, remembered);
    while (sets * (ratios.parts + 1L) > words) {
      remembered = ratios.parts > 1 ? 2 * remembered : 0;
      ratios = RatioCell.whole(size, mostDrops, small, remembered);
    }
    return new SetsOfSize(size, paints, ratios, new SetBoxes((int) sets, ratios.parts));
  }

  /** The same with all ratios in one cell, and nothing remembered. */
  static SetsOfSize unsplit(int size, int paints, int mostDrops) {
    return new SetsOfSize(
        size, paints, RatioCell.whole(size, mostDrops, Integer.MAX_VALUE, 0), null);
  }

  /** A searcher for one thread, until it is given back. */
  SetSearcher searcher(CompiledShelf shelf, SearchRun run) {
    SetSearcher known = idle.poll();
    if (known == null) {
      return new SetSearcher(shelf, this, run);
    }
    known.turnTo(run);
    return known;
  }

  void giveBack(SetSearcher searcher) {
    idle.add(searcher);
  }

  /** How many sets there are. */
  long count() {
    return SetBoxes.binomial(paints, size);
  }

  /** How many recipes there are. */
  double recipes() {
    return (double) count() * ratios.ratios.length;
  }

  /** How many boxes are remembered. */
  long words() {
    return boxes == null ? 0 : count() * (1 + ratios.parts);
  }

  /** A set of ascending paints as one number: that of all but the last, and the last. */
  static long with(long earlier, int paint) {
    return earlier << PAINT_BITS | paint;
  }

  /** The paint in a place of a set, 0 for the first. */
  int paint(long set, int place) {
    return (int) (set >>> (PAINT_BITS * (size - 1 - place))) & PAINT_MASK;
  }

  /** What a paint in this place adds to the rank of its set. */
  long rankOf(int place, int paint) {
    return binomials[place][paint];
  }

  /** Number of a set among all: C(p₀, 1) + C(p₁, 2) + …; only for sets that are remembered. */
  int rank(long set) {
    long rank = 0;
    for (int place = 0; place < size; place++) {
      rank += binomials[place][paint(set, place)];
    }
    return (int) rank;
  }
}
