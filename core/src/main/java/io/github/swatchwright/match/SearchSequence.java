package io.github.swatchwright.match;

import io.github.swatchwright.mix.Control;
import io.github.swatchwright.search.Candidate;
import io.github.swatchwright.search.RecipeSearch;
import io.github.swatchwright.search.SearchOutcome;
import io.github.swatchwright.search.SearchSpace;
import io.github.swatchwright.search.Sought;
import java.time.Duration;
import java.util.List;

/**
 * Runs several searches for one target, one after the other, with one time limit and one progress
 * for all of them. Not thread-safe.
 */
final class SearchSequence {
  private final Control control;
  private final long end;
  private final int planned;
  private int done;
  private boolean complete = true;
  private double provenBound = Double.POSITIVE_INFINITY;

  /**
   * Starts the clock.
   *
   * @param control time limit, cancelling and progress of all searches together
   * @param planned how many searches there will be, at least 1
   */
  SearchSequence(Control control, int planned) {
    this.control = control;
    this.planned = planned;
    end = System.nanoTime() + control.longest().toNanos();
  }

  /** Searches one space; returns what was found, in ascending order. */
  List<Candidate> run(RecipeSearch search, SearchSpace space, Sought sought) {
    Duration left = Duration.ofNanos(Math.max(0, end - System.nanoTime()));
    int before = done;
    Control one =
        control
            .withLongest(left)
            .withProgress(share -> control.progress().reached((before + share) / planned));
    SearchOutcome outcome = search.search(space, sought, one);
    complete &= outcome.complete();
    provenBound = Math.min(provenBound, outcome.provenBound());
    done++;
    return outcome.candidates();
  }

  /** Does the same, unless the time is up or the caller has cancelled. */
  List<Candidate> runIfTime(RecipeSearch search, SearchSpace space, Sought sought) {
    if (System.nanoTime() < end && !control.isCancelled()) {
      return run(search, space, sought);
    }
    skip();
    complete = false;
    return List.of();
  }

  /** Counts a search as done that turned out not to be needed. */
  void skip() {
    done++;
    control.progress().reached((double) done / planned);
  }

  boolean complete() {
    return complete;
  }

  /** How much closer than the best recipe found an unseen one could be, ΔE00. */
  double gap(double nearest) {
    return complete ? 0 : Math.max(0, nearest - provenBound);
  }
}
