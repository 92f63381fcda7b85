package io.github.swatchwright.search;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.PriorityQueue;

/** The best candidates so far: a bounded number in all, and of each set of paints. */
final class Shortlist {
  private final int capacity;
  private final int perSet;
  private final PriorityQueue<Candidate> worstFirst =
      new PriorityQueue<>(Collections.reverseOrder());
  private final List<Candidate> ofThisSet = new ArrayList<>();

  Shortlist(int capacity, int perSet) {
    this.capacity = capacity;
    this.perSet = perSet;
  }

  /** The largest ΔE00 that may still enter. */
  double threshold() {
    double overall = worstFirst.size() < capacity ? Double.POSITIVE_INFINITY : worst().deltaE00();
    return ofThisSet.size() < perSet
        ? overall
        : Math.min(overall, ofThisSet.get(perSet - 1).deltaE00());
  }

  private Candidate worst() {
    return worstFirst.element();
  }

  /** Tells that the candidates offered from here on use another set of paints. */
  void startSet() {
    closeSet();
  }

  /** Offers a candidate of the current set of paints. */
  void offer(Candidate candidate) {
    int place = Collections.binarySearch(ofThisSet, candidate);
    ofThisSet.add(place < 0 ? -place - 1 : place, candidate);
    if (ofThisSet.size() > perSet) {
      ofThisSet.remove(perSet);
    }
  }

  private void closeSet() {
    for (Candidate candidate : ofThisSet) {
      worstFirst.add(candidate);
      if (worstFirst.size() > capacity) {
        worstFirst.remove();
      }
    }
    ofThisSet.clear();
  }

  /** All that stayed, best first. */
  List<Candidate> sorted() {
    closeSet();
    return worstFirst.stream().sorted().toList();
  }
}
