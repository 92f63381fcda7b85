package io.github.swatchwright.match;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.mix.Control;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.search.RecipeSearch;
import io.github.swatchwright.search.SearchOutcome;
import io.github.swatchwright.search.SearchSpace;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/**
 * Runs several searches for one target, one after the other, with one time limit and one progress
 * for all of them, and collects what they find. Not thread-safe.
 */
final class SearchSequence {
  private final Lab target;
  private final Control control;
  private final long end;
  private final int planned;
  private final List<Recipe> recipes = new ArrayList<>();
  private int done;
  private boolean complete = true;
  private double provenBound = Double.POSITIVE_INFINITY;

  /**
   * Starts the clock.
   *
   * @param target the wanted colour
   * @param control time limit, cancelling and progress of all searches together
   * @param planned how many searches there will be, at least 1
   */
  SearchSequence(Lab target, Control control, int planned) {
    this.target = target;
    this.control = control;
    this.planned = planned;
    end = System.nanoTime() + control.longest().toNanos();
  }

  /** Searches one space and keeps the recipes found. */
  void run(RecipeSearch search, SearchSpace space, int count) {
    Duration left = Duration.ofNanos(Math.max(0, end - System.nanoTime()));
    int before = done;
    Control one =
        control
            .withLongest(left)
            .withProgress(share -> control.progress().reached((before + share) / planned));
    SearchOutcome outcome = search.search(space, target, count, one);
    outcome.candidates().forEach(candidate -> recipes.add(candidate.recipe(space)));
    complete &= outcome.complete();
    provenBound = Math.min(provenBound, outcome.provenBound());
    done++;
  }

  /** Does the same, unless the time is up or the caller has cancelled. */
  void runIfTime(RecipeSearch search, SearchSpace space, int count) {
    if (System.nanoTime() < end && !control.isCancelled()) {
      run(search, space, count);
    } else {
      done++;
      complete = false;
    }
  }

  /** All that was found. */
  List<Recipe> recipes() {
    return List.copyOf(recipes);
  }

  boolean complete() {
    return complete;
  }

  /** How much closer than the best recipe found an unseen one could be, ΔE00. */
  double gap(double nearest) {
    return complete ? 0 : Math.max(0, nearest - provenBound);
  }
}
