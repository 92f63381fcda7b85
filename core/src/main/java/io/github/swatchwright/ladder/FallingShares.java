package io.github.swatchwright.ladder;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.WhitePoint;
import io.github.swatchwright.colour.Xyz;
import java.util.ArrayList;
import java.util.List;

/**
 * Shares of colours whose average comes nearest to a wanted one, while no rung is seen on more than
 * the one before; no pass then covers more than the one before. Such shares are averages of the
 * plain means of the first 1, 2, 3 … rungs, so that these means are what is mixed.
 */
final class FallingShares {
  private FallingShares() {}

  /**
   * The shares.
   *
   * @param parts colours, those of a base first
   * @param base how many of them are a base's, whose share may be any
   * @param wanted the average
   * @param usual shares to stay near to, falling, with a sum of 1
   */
  static double[] nearest(List<Lab> parts, int base, Lab wanted, double[] usual) {
    List<Lab> means = new ArrayList<>(parts.subList(0, base));
    double[] usualOfMeans = usual.clone();
    double x = 0;
    double y = 0;
    double z = 0;
    for (int i = base; i < parts.size(); i++) {
      Xyz colour = parts.get(i).toXyz();
      x += colour.x();
      y += colour.y();
      z += colour.z();
      int count = i - base + 1;
      WhitePoint white = colour.white();
      means.add(new Xyz(x / count, y / count, z / count, white).toLab());
      usualOfMeans[i] = count * (usual[i] - (i + 1 < usual.length ? usual[i + 1] : 0));
    }
    double[] ofMeans = NearestAverage.shares(means, wanted, usualOfMeans);
    double[] shares = ofMeans.clone();
    for (int i = base; i < shares.length; i++) {
      shares[i] = 0;
      for (int mean = i; mean < shares.length; mean++) {
        shares[i] += ofMeans[mean] / (mean - base + 1);
      }
    }
    return shares;
  }
}
