package io.github.swatchwright.search;

/**
 * Computes the mixes that single precision can't rule out as {@link ExhaustiveSearch} does: paints
 * added in the order of the shelf.
 */
final class ExactMix {
  private final CompiledShelf shelf;
  private final SetsOfSize sets;
  private SearchRun run;
  private final MixColour colour;
  private final int[] paints;
  private final int[] drops;

  ExactMix(CompiledShelf shelf, SetsOfSize sets, SearchRun run) {
    this.shelf = shelf;
    this.sets = sets;
    this.run = run;
    colour = shelf.mixColour(run.target, sets.size);
    paints = new int[sets.size];
    drops = new int[sets.size];
  }

  void turnTo(SearchRun other) {
    run = other;
    colour.turnTo(other.target);
  }

  /** Offers a ratio of a set to the best, when there are drops enough. */
  void offer(long set, int[] ratio) {
    for (int place = 0; place < ratio.length; place++) {
      int paint = shelf.onShelf(sets.paint(set, place));
      if (ratio[place] > shelf.mostOf(paint)) {
        return;
      }
      int at = place;
      while (at > 0 && paints[at - 1] > paint) {
        paints[at] = paints[at - 1];
        drops[at] = drops[at - 1];
        at--;
      }
      paints[at] = paint;
      drops[at] = ratio[place];
    }
    for (int place = 0; place < paints.length; place++) {
      colour.add(place, paints[place], drops[place]);
    }
    double limit = run.best.limit();
    double deltaE00 = colour.deltaE00(limit);
    if (deltaE00 <= limit && deltaE00 < Double.POSITIVE_INFINITY) {
      run.best.offer(new Candidate(paints, drops, deltaE00));
    }
  }
}
