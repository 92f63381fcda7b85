package io.github.swatchwright.search;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The best candidates so far, offered in any order and from any thread: a bounded number in all,
 * and of each set of paints. What stays doesn't depend on the order of offers.
 */
final class BestCandidates {
  private final int capacity;
  private final int perSet;
  private final List<Candidate> sorted = new ArrayList<>();
  private volatile double limit = Double.POSITIVE_INFINITY;

  BestCandidates(int capacity, int perSet) {
    this.capacity = capacity;
    this.perSet = perSet;
  }

  /** The largest ΔE00 that may still enter; it never grows. */
  double limit() {
    return limit;
  }

  /** Takes a candidate when it is good enough and hasn't been taken before. */
  synchronized void offer(Candidate candidate) {
    int place = -Collections.binarySearch(sorted, candidate) - 1;
    if (place < 0 || place >= capacity) {
      return;
    }
    int same = 0;
    int last = -1;
    for (int i = 0; i < sorted.size(); i++) {
      if (sorted.get(i).samePaints(candidate)) {
        same++;
        last = i;
      }
    }
    if (same == perSet) {
      if (last < place) {
        return;
      }
      sorted.remove(last);
    }
    sorted.add(place, candidate);
    if (sorted.size() > capacity) {
      sorted.remove(capacity);
    }
    if (sorted.size() == capacity) {
      limit = sorted.get(capacity - 1).deltaE00();
    }
  }

  /** All that stayed, best first. */
  synchronized List<Candidate> sorted() {
    return List.copyOf(sorted);
  }
}
