package io.github.swatchwright.search;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.mix.Control;
import java.util.List;

/**
 * The exhaustive search with the engine's own kernels: every recipe in single precision, 128 side
 * by side, and those near enough in double; nothing is left out by cells. It can be told to look at
 * one set in a number of them only.
 */
final class TunedSearch {
  private final CompiledShelf shelf;
  private final int every;
  private int set;

  TunedSearch(SearchSpace space, int every) {
    shelf = CompiledShelf.of(space);
    this.every = every;
  }

  List<Candidate> nearest(Lab target, int count) {
    BestCandidates best = new BestCandidates(new Sought(target, count));
    SearchRun run = new SearchRun(new TargetMap(target), best, Control.PLAIN);
    run.setCap(Double.POSITIVE_INFINITY);
    SearchSpace space = shelf.space();
    shelf.offerSingles(run);
    set = 0;
    for (int size = 2; size <= space.mostPaints(); size++) {
      SetsOfSize sets = SetsOfSize.unsplit(size, space.size(), space.mostDrops());
      CellDescent descent = new CellDescent(shelf, sets, run);
      add(descent, 0, 0, size);
      descent.finish();
    }
    return best.sorted();
  }

  private void add(CellDescent descent, long head, int first, int left) {
    if (left == 0) {
      if (set++ % every == 0) {
        descent.add(head);
      }
      return;
    }
    for (int paint = first; paint <= shelf.space().size() - left; paint++) {
      add(descent, SetsOfSize.with(head, paint), paint + 1, left - 1);
    }
  }
}
