package io.github.swatchwright.optics;

import io.github.swatchwright.argument.Require;

/**
 * Colours that lie side by side and are seen as one: mixing of light by area.
 *
 * <p>Murray and Davies 1936; Yule and Nielsen 1951; Demichel 1924; Neugebauer 1937. The exponent n
 * stands for light that spreads sideways below the surface: 1 for none.
 */
public final class AreaCoverage {
  private AreaCoverage() {}

  /**
   * R = a·Rs + (1 − a)·Rp.
   *
   * @param coverage share a of the area, 0 to 1
   * @param covered reflectance Rs of the covered part, 0 to 1
   * @param bare reflectance Rp of the rest, 0 to 1
   */
  public static double murrayDavies(double coverage, double covered, double bare) {
    return yuleNielsen(coverage, covered, bare, 1);
  }

  /**
   * R^(1/n) = a·Rs^(1/n) + (1 − a)·Rp^(1/n).
   *
   * @param coverage share a of the area, 0 to 1
   * @param covered reflectance Rs of the covered part, 0 to 1
   * @param bare reflectance Rp of the rest, 0 to 1
   * @param n the Yule–Nielsen exponent, at least 1
   */
  public static double yuleNielsen(double coverage, double covered, double bare, double n) {
    Require.within("coverage", coverage, 0, 1);
    return neugebauer(new double[] {1 - coverage, coverage}, new double[] {bare, covered}, n);
  }

  /**
   * Demichel's shares of all overlaps of independent passes: share of the area that shows exactly
   * the passes whose bits are set in the index.
   *
   * @param coverages share of the area that each pass covers, 0 to 1; at most 16 passes
   * @return 2^m shares, which sum to 1; bit i of the index stands for pass i
   */
  public static double[] demichel(double... coverages) {
    Require.within("number of passes", coverages.length, 1, 16);
    for (int i = 0; i < coverages.length; i++) {
      Require.within("coverages", i, coverages[i], 0, 1);
    }
    double[] shares = new double[1 << coverages.length];
    for (int overlap = 0; overlap < shares.length; overlap++) {
      double share = 1;
      for (int pass = 0; pass < coverages.length; pass++) {
        share *= (overlap >> pass & 1) == 1 ? coverages[pass] : 1 - coverages[pass];
      }
      shares[overlap] = share;
    }
    return shares;
  }

  /**
   * What each of several independent passes leaves to be seen when each hides what it covers:
   * visibleₖ = coverageₖ · Π(1 − coverageⱼ), j later than k.
   *
   * @param coverages share of the area that each pass covers, 0 to 1, first pass first
   * @return the base's visible share, then each pass's; they sum to 1
   */
  public static double[] visibleShares(double... coverages) {
    double[] visible = new double[coverages.length + 1];
    double left = 1;
    for (int pass = coverages.length - 1; pass >= 0; pass--) {
      double coverage = Require.within("coverages", pass, coverages[pass], 0, 1);
      visible[pass + 1] = coverage * left;
      left *= 1 - coverage;
    }
    visible[0] = left;
    return visible;
  }

  /**
   * The coverages that leave wanted shares to be seen: coverageₖ = visibleₖ ÷ (the shares of the
   * base and of all passes up to k). A pass below which nothing is to be seen covers all, or
   * nothing when it isn't to be seen itself.
   *
   * @param visible the base's share, then each pass's: 0 to 1, with a sum of 1 within 1e-9
   * @return the coverage of each pass, first pass first
   */
  public static double[] coveragesFor(double... visible) {
    Require.within("number of shares", visible.length, 2, Integer.MAX_VALUE);
    double below = Require.within("visible[0]", visible[0], 0, 1);
    double[] coverages = new double[visible.length - 1];
    for (int pass = 1; pass < visible.length; pass++) {
      double share = Require.within("visible", pass, visible[pass], 0, 1);
      below += share;
      coverages[pass - 1] = below == 0 ? 0 : share / below;
    }
    Require.within("sum of visible shares", below, 1 - 1e-9, 1 + 1e-9);
    return coverages;
  }

  /**
   * Neugebauer's sum with a Yule–Nielsen exponent: R^(1/n) = Σ wᵢ·Rᵢ^(1/n).
   *
   * @param shares shares of the area, at least 0; they must sum to 1 within 1e-9
   * @param reflectances reflectance of each, 0 to 1
   * @param n the exponent, at least 1
   */
  public static double neugebauer(double[] shares, double[] reflectances, double n) {
    if (shares.length != reflectances.length) {
      throw new IllegalArgumentException(
          "there are "
              + shares.length
              + " shares and "
              + reflectances.length
              + " reflectances, must be as many");
    }
    Require.within("n", n, 1, Double.MAX_VALUE);
    double sum = 0;
    double root = 0;
    for (int i = 0; i < shares.length; i++) {
      sum += Require.within("shares", i, shares[i], 0, 1);
      root += shares[i] * rooted(Require.within("reflectances", i, reflectances[i], 0, 1), n);
    }
    Require.within("sum of shares", sum, 1 - 1e-9, 1 + 1e-9);
    return n == 1 ? root : Math.pow(root, n);
  }

  private static double rooted(double reflectance, double n) {
    return n == 1 ? reflectance : Math.pow(reflectance, 1 / n);
  }
}
