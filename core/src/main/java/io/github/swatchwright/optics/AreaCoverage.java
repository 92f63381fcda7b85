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
      Require.within("coverages[" + i + "]", coverages[i], 0, 1);
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
      sum += Require.within("shares[" + i + "]", shares[i], 0, 1);
      root +=
          shares[i] * rooted(Require.within("reflectances[" + i + "]", reflectances[i], 0, 1), n);
    }
    Require.within("sum of shares", sum, 1 - 1e-9, 1 + 1e-9);
    return n == 1 ? root : Math.pow(root, n);
  }

  private static double rooted(double reflectance, double n) {
    return n == 1 ? reflectance : Math.pow(reflectance, 1 / n);
  }
}
