package io.github.swatchwright.search;

import java.util.concurrent.atomic.AtomicLongArray;

/**
 * Remembers where the colours of every set of paints of one size lie, for later targets: one {@link
 * BoxWord} for the whole set, and one for each part of its {@link RatioCell}s. They are filled in
 * as searches come by, and only ever get narrower in what matters; each is right by itself, so that
 * threads need not wait for each other.
 *
 * <p>A set p₀ &lt; p₁ &lt; … has the rank C(p₀, 1) + C(p₁, 2) + …
 */
final class SetBoxes {
  private final int partsOfSet;
  private final AtomicLongArray whole;
  private final AtomicLongArray parts;
  private volatile boolean complete;

  /**
   * Room for boxes.
   *
   * @param sets number of sets
   * @param partsOfSet boxes for each besides that of the whole; 0 to do without
   */
  SetBoxes(int sets, int partsOfSet) {
    this.partsOfSet = partsOfSet;
    whole = new AtomicLongArray(sets);
    parts = new AtomicLongArray(sets * partsOfSet);
  }

  /** C(n, k). */
  static long binomial(int n, int k) {
    long value = 1;
    for (int i = 0; i < k; i++) {
      value = value * (n - i) / (i + 1);
    }
    return value;
  }

  /** Whether the whole of every set is known. */
  boolean isComplete() {
    return complete;
  }

  void setComplete() {
    complete = true;
  }

  boolean hasParts() {
    return partsOfSet > 0;
  }

  long whole(int set) {
    return whole.get(set);
  }

  void setWhole(int set, long box) {
    whole.lazySet(set, box);
  }

  long part(int set, int part) {
    return parts.get(set * partsOfSet + part);
  }

  /** Sets the box of a part whose colours were all computed. */
  void setComputed(int set, int part, long box) {
    parts.lazySet(set * partsOfSet + part, box);
    long all = box;
    for (int other = 0; other < partsOfSet; other++) {
      long known = part(set, other);
      if (!BoxWord.isLab(known)) {
        return;
      }
      all = BoxWord.around(all, known);
    }
    setWhole(set, all);
  }

  /** Sets the box of parts that nothing is known of. */
  void setUnknownParts(int set, int from, int to, long box) {
    for (int part = from; part < to; part++) {
      if (part(set, part) == 0) {
        parts.lazySet(set * partsOfSet + part, box);
      }
    }
  }
}
