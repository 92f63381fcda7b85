package io.github.swatchwright.ladder;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.paint.Swatch;
import java.util.List;

/** What decides how much of the area each pass covers. Shares and coverages run from 0 to 1. */
public sealed interface CoverageWish {

  /** Every shade, and the base if there is one, is to be seen on as much of the area. */
  record Even() implements CoverageWish {}

  /** Each shade is to be seen on less than the one before: as 4 : 3 : 2 : 1 of four. */
  record Falling() implements CoverageWish {}

  /**
   * The coverages themselves.
   *
   * @param coverages of each pass, first pass first
   */
  record OfPasses(List<Double> coverages) implements CoverageWish {
    /** Copies the list; refuses numbers outside 0 to 1. */
    public OfPasses {
      coverages = List.copyOf(coverages);
      for (int i = 0; i < coverages.size(); i++) {
        Require.within("coverage " + (i + 1), coverages.get(i), 0, 1);
      }
    }
  }

  /**
   * The share of the area on which each rung is to be seen at last; what is left shows the base.
   *
   * @param shares of each rung, first rung first; their sum is at most 1
   */
  record OfShares(List<Double> shares) implements CoverageWish {
    /** Copies the list; refuses numbers outside 0 to 1 and sums above 1. */
    public OfShares {
      shares = List.copyOf(shares);
      double sum = 0;
      for (int i = 0; i < shares.size(); i++) {
        sum += Require.within("share " + (i + 1), shares.get(i), 0, 1);
      }
      Require.within("sum of shares", sum, 0, 1 + 1e-9);
    }
  }

  /**
   * The share of the area that each stated shade has, as in a photo: the rung nearest to it gets
   * it.
   *
   * @param shares of each shade in the order of the request, above 0 in all; they are scaled to sum
   *     to 1
   */
  record OfShades(List<Double> shares) implements CoverageWish {
    /** Copies the list; refuses negative numbers and a sum of 0. */
    public OfShades {
      shares = List.copyOf(shares);
      double sum = 0;
      for (int i = 0; i < shares.size(); i++) {
        sum += Require.nonNegative("share " + (i + 1), shares.get(i));
      }
      Require.positive("sum of shares", sum);
    }
  }

  /**
   * The average colour, as seen from a distance: the shares come as near to it as these shades can,
   * and among those that do, stay near to falling ones.
   *
   * @param colour the wanted average
   */
  record OfLook(Swatch colour) implements CoverageWish {}
}
