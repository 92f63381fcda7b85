package io.github.swatchwright.ladder;

import io.github.swatchwright.argument.Require;
import java.util.List;

/** See {@link CoverageWish#ofPasses}. */
record PassesWish(List<Double> coverages) implements CoverageWish {
  /** Copies the list; refuses numbers outside 0 to 1. */
  PassesWish {
    coverages = List.copyOf(coverages);
    for (int i = 0; i < coverages.size(); i++) {
      Require.within("coverage " + (i + 1), coverages.get(i), 0, 1);
    }
  }
}
