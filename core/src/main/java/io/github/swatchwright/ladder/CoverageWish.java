package io.github.swatchwright.ladder;

import io.github.swatchwright.paint.Swatch;
import java.util.List;

/** What decides how much of the area each pass covers. Shares and coverages run from 0 to 1. */
public sealed interface CoverageWish
    permits EvenWish, FallingWish, PassesWish, SharesWish, ShadesWish, LookWish {

  /** Every shade, and the base if there is one, is to be seen on as much of the area. */
  CoverageWish EVEN = new EvenWish();

  /** Each shade is to be seen on less than the one before: as 4 : 3 : 2 : 1 of four. */
  CoverageWish FALLING = new FallingWish();

  /**
   * The coverages themselves.
   *
   * @param coverages of each pass, first pass first, 0 to 1
   */
  static CoverageWish ofPasses(List<Double> coverages) {
    return new PassesWish(coverages);
  }

  /**
   * The share of the area on which each rung is to be seen at last; what is left shows the base.
   *
   * @param shares of each rung, first rung first, 0 to 1; their sum is at most 1
   */
  static CoverageWish ofShares(List<Double> shares) {
    return new SharesWish(shares);
  }

  /**
   * The share of the area that each stated shade has, as in a photo: the rung nearest to it gets
   * it.
   *
   * @param shares of each shade in the order of the request, at least 0 and above 0 in all; they
   *     are scaled to sum to 1
   */
  static CoverageWish ofShades(List<Double> shares) {
    return new ShadesWish(shares);
  }

  /**
   * The average colour, as seen from a distance: the shares come as near to it as these shades can,
   * and among those that do, stay near to falling ones.
   *
   * @param colour the wanted average
   */
  static CoverageWish ofLook(Swatch colour) {
    return new LookWish(colour);
  }
}
