package io.github.swatchwright.search;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.mix.Control;

/**
 * Tries every recipe: every set of paints, every reduced ratio of whole drops. Its cost grows with
 * the number of paints to the power of {@link SearchSpace#mostPaints}.
 */
public final class ExhaustiveSearch implements RecipeSearch {

  private final boolean holdsTheLast;

  /** A search; it holds no state. */
  public ExhaustiveSearch() {
    this(false);
  }

  private ExhaustiveSearch(boolean holdsTheLast) {
    this.holdsTheLast = holdsTheLast;
  }

  /** A search among the recipes that hold the last ingredient of the space. */
  public static ExhaustiveSearch holdingTheLast() {
    return new ExhaustiveSearch(true);
  }

  @Override
  public SearchOutcome search(SearchSpace space, Sought sought, Control control) {
    BestCandidates best = new BestCandidates(sought);
    int most = Math.min(space.mostPaints(), space.size());
    for (int size = 1; size <= most; size++) {
      new SetsOfSize(space, sought.target(), best, size, holdsTheLast).tryAll(0, 0);
    }
    control.progress().reached(1);
    return SearchOutcome.complete(best.sorted());
  }

  /** Tries all sets of one size, and all ratios of each. */
  private static final class SetsOfSize {
    private final SearchSpace space;
    private final BestCandidates best;
    private final MixColour mixColour;
    private final int[] paints;
    private final int[] drops;
    private final boolean holdsTheLast;

    private SetsOfSize(
        SearchSpace space, Lab target, BestCandidates best, int size, boolean holdsTheLast) {
      this.holdsTheLast = holdsTheLast;
      this.space = space;
      this.best = best;
      this.mixColour = new MixColour(space, target, size);
      this.paints = new int[size];
      this.drops = new int[size];
    }

    private void tryAll(int chosen, int first) {
      if (chosen == paints.length) {
        tryRatios(0, space.mostDrops(), 0);
        return;
      }
      boolean closing = holdsTheLast && chosen == paints.length - 1;
      int start = closing ? space.size() - 1 : first;
      for (int paint = start; paint <= space.size() - (paints.length - chosen); paint++) {
        paints[chosen] = paint;
        tryAll(chosen + 1, paint + 1);
      }
    }

    private void tryRatios(int place, int dropsLeft, int divisor) {
      int later = paints.length - place - 1;
      int most = Math.min(dropsLeft - later, space.mostOf(paints[place]));
      for (int count = 1; count <= most; count++) {
        drops[place] = count;
        mixColour.add(place, paints[place], count);
        int common = greatestCommonDivisor(count, divisor);
        if (later > 0) {
          tryRatios(place + 1, dropsLeft - count, common);
        } else if (common == 1) {
          double limit = best.limit();
          double deltaE00 = mixColour.deltaE00(limit);
          if (deltaE00 <= limit && deltaE00 < Double.POSITIVE_INFINITY) {
            best.offer(new Candidate(paints, drops, deltaE00));
          }
        }
      }
    }

    private static int greatestCommonDivisor(int a, int b) {
      return b == 0 ? a : greatestCommonDivisor(b, a % b);
    }
  }
}
