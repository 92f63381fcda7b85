package io.github.swatchwright.ladder;

import io.github.swatchwright.argument.Require;
import java.util.List;

/** See {@link CoverageWish#ofShares}. */
record SharesWish(List<Double> shares) implements CoverageWish {
  /** Copies the list; refuses numbers outside 0 to 1 and sums above 1. */
  SharesWish {
    shares = List.copyOf(shares);
    double sum = 0;
    for (int i = 0; i < shares.size(); i++) {
      sum += Require.within("share " + (i + 1), shares.get(i), 0, 1);
    }
    Require.within("sum of shares", sum, 0, 1 + 1e-9);
  }
}
