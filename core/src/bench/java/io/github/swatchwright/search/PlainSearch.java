package io.github.swatchwright.search;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.WhitePoint;
import io.github.swatchwright.colour.Xyz;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.spectrum.Bands;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.List;

/**
 * The plain search to compare with: every recipe's 36 bands, XYZ, CIELAB and CIEDE2000 in full,
 * paint by paint without an object per recipe. It can be told to look at one set in a number of
 * them only.
 */
final class PlainSearch {
  private final SearchSpace space;
  private final int every;
  private final double[][] absorption;
  private final double[][] scattering;
  private final double[] wx;
  private final double[] wy;
  private final double[] wz;
  private final WhitePoint white;
  private final Saunderson surface;
  private int set;

  PlainSearch(SearchSpace space, int every) {
    this.space = space;
    this.every = every;
    absorption = space.absorptionPerDrop();
    scattering = space.scatteringPerDrop();
    TristimulusWeights weights = space.viewing().weights();
    wx = weights.x();
    wy = weights.y();
    wz = weights.z();
    white = weights.whitePoint();
    surface = space.viewing().surface();
  }

  List<Candidate> nearest(Lab target, int count) {
    BestCandidates best = new BestCandidates(new Sought(target, count));
    set = 0;
    for (int size = 1; size <= space.mostPaints(); size++) {
      sets(
          target,
          best,
          new int[size],
          new int[size],
          new double[size + 1][Bands.COUNT],
          new double[size + 1][Bands.COUNT],
          0,
          0);
    }
    return best.sorted();
  }

  private void sets(
      Lab target,
      BestCandidates best,
      int[] paints,
      int[] drops,
      double[][] k,
      double[][] s,
      int chosen,
      int first) {
    if (chosen == paints.length) {
      if (set++ % every == 0) {
        ratios(target, best, paints, drops, k, s, 0, space.mostDrops(), 0);
      }
      return;
    }
    for (int paint = first; paint <= space.size() - (paints.length - chosen); paint++) {
      paints[chosen] = paint;
      sets(target, best, paints, drops, k, s, chosen + 1, paint + 1);
    }
  }

  private void ratios(
      Lab target,
      BestCandidates best,
      int[] paints,
      int[] drops,
      double[][] k,
      double[][] s,
      int place,
      int left,
      int divisor) {
    int later = paints.length - place - 1;
    double[] kDrop = absorption[paints[place]];
    double[] sDrop = scattering[paints[place]];
    for (int count = 1; count <= left - later; count++) {
      drops[place] = count;
      for (int i = 0; i < Bands.COUNT; i++) {
        k[place + 1][i] = k[place][i] + count * kDrop[i];
        s[place + 1][i] = s[place][i] + count * sDrop[i];
      }
      int common = greatestCommonDivisor(count, divisor);
      if (later > 0) {
        ratios(target, best, paints, drops, k, s, place + 1, left - count, common);
      } else if (common == 1) {
        double deltaE00 = Ciede2000.deltaE(target, colour(k[place + 1], s[place + 1]));
        if (deltaE00 <= best.limit()) {
          best.offer(new Candidate(paints, drops, deltaE00));
        }
      }
    }
  }

  private static int greatestCommonDivisor(int a, int b) {
    return b == 0 ? a : greatestCommonDivisor(b, a % b);
  }

  private Lab colour(double[] k, double[] s) {
    double k1 = surface.k1();
    double k2 = surface.k2();
    double through = (1 - k1) * (1 - k2);
    double x = 0;
    double y = 0;
    double z = 0;
    for (int i = 0; i < Bands.COUNT; i++) {
      double d = k[i] + s[i] + Math.sqrt(k[i] * (k[i] + 2 * s[i]));
      double seen = k1 + through * s[i] / (d - k2 * s[i]);
      x += wx[i] * seen;
      y += wy[i] * seen;
      z += wz[i] * seen;
    }
    return new Xyz(x, y, z, white).toLab();
  }
}
