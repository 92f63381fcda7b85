package io.github.swatchwright.search;

import java.util.concurrent.atomic.AtomicLongArray;

/**
 * Remembers where the colours of every set of paints of one size lie, for later targets: one {@link
 * BoxWord} for the whole set, and one for each leaf of its {@link RatioCell}s. They are filled in
 * as searches come by, and only ever get narrower in what matters; each is right by itself, so that
 * threads need not wait for each other.
 *
 * <p>A set p₀ &lt; p₁ &lt; … has the rank C(p₀, 1) + C(p₁, 2) + …
 */
final class SetBoxes {
  private final int leaves;
  private final AtomicLongArray whole;
  private final AtomicLongArray parts;
  private volatile boolean complete;

  /**
   * Room for boxes.
   *
   * @param sets number of sets
   * @param leaves boxes for each besides that of the whole; 0 to do without
   */
  SetBoxes(int sets, int leaves) {
    this.leaves = leaves;
    whole = new AtomicLongArray(sets);
    parts = new AtomicLongArray(sets * leaves);
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
    return leaves > 0;
  }

  long whole(int set) {
    return whole.get(set);
  }

  void setWhole(int set, long box) {
    whole.lazySet(set, box);
  }

  long part(int set, int leaf) {
    return parts.get(set * leaves + leaf);
  }

  void setPart(int set, int leaf, long box) {
    parts.lazySet(set * leaves + leaf, box);
  }

  /** Sets the box of leaves that nothing is known of. */
  void setUnknownParts(int set, int from, int to, long box) {
    for (int leaf = from; leaf < to; leaf++) {
      if (part(set, leaf) == 0) {
        setPart(set, leaf, box);
      }
    }
  }
}
