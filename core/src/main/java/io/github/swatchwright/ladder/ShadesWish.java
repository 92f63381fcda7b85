package io.github.swatchwright.ladder;

import io.github.swatchwright.argument.Require;
import java.util.List;

/** See {@link CoverageWish#ofShades}. */
record ShadesWish(List<Double> shares) implements CoverageWish {
  /** Copies the list; refuses negative numbers and a sum of 0. */
  ShadesWish {
    shares = List.copyOf(shares);
    double sum = 0;
    for (int i = 0; i < shares.size(); i++) {
      sum += Require.nonNegative("share " + (i + 1), shares.get(i));
    }
    Require.positive("sum of shares", sum);
  }
}
