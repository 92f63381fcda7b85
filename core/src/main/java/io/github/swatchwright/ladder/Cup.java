package io.github.swatchwright.ladder;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import org.jspecify.annotations.Nullable;

/**
 * One pot: some drops kept of the pot before, whole drops added, and how the colour answers when
 * they scatter. Not changed once it is made, but for figures that are worked out when they are
 * first asked for; for one thread.
 */
final class Cup {
  /** Relative scatter of a drop's volume, as sd (common practice). */
  private static final double DROP_SCATTER = 0.08;

  private final PotPaints paints;
  private final @Nullable Cup before;
  private final int keep;
  private final int[] added;
  private final double[] contents;
  private final double drops;
  private final Lab lab;
  private double oneDrop = Double.NaN;
  private double ownScatter;

  private Cup(PotPaints paints, @Nullable Cup before, int keep, int[] added) {
    this.paints = paints;
    this.before = before;
    this.keep = keep;
    this.added = added;
    this.contents = mixed(keep);
    this.drops = sum(contents);
    this.lab = paints.lab(contents);
  }

  /** A clean pot with whole drops of the ingredients. */
  static Cup of(PotPaints paints, int[] added) {
    return new Cup(paints, null, 0, added);
  }

  /** A pot that starts with whole drops of this one, or clean when none are kept. */
  Cup then(int kept, int[] more) {
    return new Cup(paints, kept == 0 ? null : this, kept, more);
  }

  private double[] mixed(double kept) {
    double[] mixed = new double[paints.count()];
    if (before != null) {
      for (int i = 0; i < mixed.length; i++) {
        mixed[i] = before.contents[i] * kept / before.drops;
      }
    }
    for (int i = 0; i < added.length; i++) {
      if (added[i] > 0) {
        paints.pour(mixed, i, added[i]);
      }
    }
    return mixed;
  }

  private static double sum(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum;
  }

  PotPaints paints() {
    return paints;
  }

  int keep() {
    return keep;
  }

  int[] added() {
    return added;
  }

  /** How many drops are added, those of a let-down among them. */
  int poured() {
    int poured = 0;
    for (int count : added) {
      poured += count;
    }
    return poured;
  }

  /** How many bottles and cups are added from. */
  int sources() {
    int sources = 0;
    for (int count : added) {
      sources += count > 0 ? 1 : 0;
    }
    return sources;
  }

  double[] contents() {
    return contents;
  }

  double drops() {
    return drops;
  }

  Lab lab() {
    return lab;
  }

  /** The bottles that are opened for what is added, one bit each. */
  int bottles() {
    int bottles = 0;
    for (int i = 0; i < added.length; i++) {
      bottles |= added[i] > 0 ? paints.bottles(i) : 0;
    }
    return bottles;
  }

  /** Drops added of the let-down. */
  int letDown() {
    return added.length > paints.count() ? added[paints.count()] : 0;
  }

  /** The largest ΔE00 that one drop more or less makes, of what is kept or added. */
  double oneDrop() {
    if (Double.isNaN(oneDrop)) {
      answer();
    }
    return oneDrop;
  }

  /** The same with the scatter of the other drops on top. */
  double oneDropScattered() {
    int most = keep;
    for (int count : added) {
      most = Math.max(most, count);
    }
    return oneDrop() * (1 + DROP_SCATTER * Math.sqrt(most));
  }

  /**
   * The variance of L* that comes from what this pot keeps and adds, as drops scatter one by one.
   * What the pot before was already off by is not in it.
   */
  private double ownVariance() {
    oneDrop();
    return ownScatter;
  }

  /** The variance of L*, that of the pot before handed on as far as it is kept. */
  private double variance() {
    double share = keep / drops;
    return ownVariance() + (before == null ? 0 : share * share * before.variance());
  }

  /**
   * The sd of how far L* moves from another pot to this one.
   *
   * @param from the pot before, whether or not anything was kept of it
   */
  double scatterOfStep(Cup from) {
    double apart = 1 - keep / drops;
    return Math.sqrt(ownVariance() + apart * apart * from.variance());
  }

  /** How the colour moves with a drop more or less of each source. */
  private void answer() {
    double largest = 0;
    double variance = 0;
    for (int source = -1; source < added.length; source++) {
      int count = source < 0 ? keep : added[source];
      if (count > 0) {
        Lab more = with(source, 1);
        Lab less = with(source, -1);
        largest = Math.max(largest, Ciede2000.deltaE(lab, more));
        largest = Math.max(largest, Ciede2000.deltaE(lab, less));
        double slope = DROP_SCATTER * (more.l() - less.l()) / 2;
        // A let-down has a scatter of its own, the same for all its drops.
        boolean handedOn = source >= paints.count();
        variance += slope * slope * (handedOn ? count + (double) count * count : count);
      }
    }
    oneDrop = largest;
    ownScatter = variance;
  }

  /** The colour with drops more of a source; this one where nothing would be left. */
  private Lab with(int source, int change) {
    if (drops + change < 0.5) {
      return lab;
    }
    if (source < 0) {
      return paints.lab(mixed(keep + (double) change));
    }
    double[] other = contents.clone();
    paints.pour(other, source, change);
    return paints.lab(other);
  }
}
