package io.github.swatchwright.search;

import java.util.List;

/**
 * What a search found, and whether it got to its end.
 *
 * @param candidates the best found, in ascending order
 * @param complete whether they are the nearest of all; false when the search was stopped
 * @param provenBound no recipe of the space has a smaller ΔE00: that of the first candidate when
 *     complete (0 when there is none), else what was proven until then, which may be 0
 */
public record SearchOutcome(List<Candidate> candidates, boolean complete, double provenBound) {

  /** Copies the list. */
  public SearchOutcome {
    candidates = List.copyOf(candidates);
  }

  /** Of a search that got to its end. */
  static SearchOutcome complete(List<Candidate> nearest) {
    return new SearchOutcome(nearest, true, nearest.isEmpty() ? 0 : nearest.get(0).deltaE00());
  }

  /**
   * How much closer than the first candidate a recipe could be that wasn't found; 0 when complete,
   * infinite when nothing was found.
   */
  public double gap() {
    if (complete) {
      return 0;
    }
    return candidates.isEmpty()
        ? Double.POSITIVE_INFINITY
        : candidates.get(0).deltaE00() - provenBound;
  }
}
