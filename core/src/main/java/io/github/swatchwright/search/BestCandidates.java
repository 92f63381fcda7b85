package io.github.swatchwright.search;

import java.util.List;
import java.util.TreeSet;

/**
 * The best candidates so far, offered in any order and from any thread: a bounded number. What
 * stays doesn't depend on the order of offers.
 */
final class BestCandidates {
  private final int capacity;
  private final TreeSet<Candidate> best = new TreeSet<>();
  private volatile double limit;

  BestCandidates(Sought sought) {
    capacity = sought.count();
    limit = sought.upTo();
  }

  /** The largest ΔE00 that may still enter; it never grows. */
  double limit() {
    return limit;
  }

  /** Takes a candidate when it is good enough and hasn't been taken before. */
  synchronized void offer(Candidate candidate) {
    if (candidate.deltaE00() > limit) {
      return;
    }
    best.add(candidate);
    if (best.size() > capacity) {
      best.pollLast();
    }
    if (best.size() == capacity) {
      limit = best.last().deltaE00();
    }
  }

  /** All that stayed, best first. */
  synchronized List<Candidate> sorted() {
    return List.copyOf(best);
  }
}
