package io.github.swatchwright.ladder;

import io.github.swatchwright.colour.CielabCurve;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.WhitePoint;
import io.github.swatchwright.colour.Xyz;
import java.util.Arrays;
import java.util.List;

/**
 * Shares of colours whose average in linear light comes nearest to a wanted one. Near is measured
 * in XYZ weighted by how fast L*, a* and b* change at the wanted colour; among shares that are as
 * near, those next to usual ones are taken.
 *
 * <p>The sum of squares is made small over all shares that are at least 0 and sum to 1, by
 * projected gradients with momentum (Nesterov 1983; projection on the simplex after Held, Wolfe and
 * Crowder 1974).
 */
final class NearestAverage {
  /** What a share's distance from the usual one costs, against one unit of L*, a* or b*. */
  private static final double USUAL = 0.1;

  private static final int STEPS = 20_000;
  private static final double STILL = 1e-12;

  private NearestAverage() {}

  /**
   * The shares.
   *
   * @param colours what is averaged, at least one, all under one white
   * @param wanted the average
   * @param usual shares to stay near to, with a sum of 1
   */
  static double[] shares(List<Lab> colours, Lab wanted, double[] usual) {
    double[][] rows = rows(colours, wanted);
    double slope = 2 * largestEigenvalue(rows);
    double[] shares = usual.clone();
    double[] ahead = shares.clone();
    double momentum = 1;
    for (int step = 0; step < STEPS; step++) {
      double[] next = projected(gradientStep(rows, usual, ahead, slope));
      double nextMomentum = (1 + Math.sqrt(1 + 4 * momentum * momentum)) / 2;
      double moved = 0;
      for (int i = 0; i < next.length; i++) {
        double move = next[i] - shares[i];
        moved = Math.max(moved, Math.abs(move));
        ahead[i] = next[i] + (momentum - 1) / nextMomentum * move;
      }
      shares = next;
      momentum = nextMomentum;
      if (moved < STILL) {
        break;
      }
    }
    return shares;
  }

  /** Rows of A, so that A·shares is the weighted difference from the wanted colour. */
  private static double[][] rows(List<Lab> colours, Lab wanted) {
    Xyz aim = wanted.toXyz();
    WhitePoint white = aim.white();
    double x = CielabCurve.slope(aim.x() / white.xn()) / white.xn();
    double y = CielabCurve.slope(aim.y() / white.yn()) / white.yn();
    double z = CielabCurve.slope(aim.z() / white.zn()) / white.zn();
    double[][] rows = new double[3][colours.size()];
    for (int i = 0; i < colours.size(); i++) {
      Xyz colour = colours.get(i).toXyz();
      double dx = x * (colour.x() - aim.x());
      double dy = y * (colour.y() - aim.y());
      double dz = z * (colour.z() - aim.z());
      rows[0][i] = 116 * dy;
      rows[1][i] = 500 * (dx - dy);
      rows[2][i] = 200 * (dy - dz);
    }
    return rows;
  }

  /** An upper bound of it: the trace of AᵀA + c²I. */
  private static double largestEigenvalue(double[][] rows) {
    return USUAL * USUAL
        + Arrays.stream(rows).flatMapToDouble(Arrays::stream).map(v -> v * v).sum();
  }

  private static double[] gradientStep(double[][] rows, double[] usual, double[] at, double slope) {
    double[] next = at.clone();
    for (double[] row : rows) {
      double miss = 0;
      for (int i = 0; i < at.length; i++) {
        miss += row[i] * at[i];
      }
      for (int i = 0; i < at.length; i++) {
        next[i] -= 2 * row[i] * miss / slope;
      }
    }
    for (int i = 0; i < at.length; i++) {
      next[i] -= 2 * USUAL * USUAL * (at[i] - usual[i]) / slope;
    }
    return next;
  }

  /** The nearest point of the simplex: all values lowered alike, and cut off at 0. */
  static double[] projected(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    double sum = 0;
    double lower = 0;
    for (int i = sorted.length - 1, count = 1; i >= 0; i--, count++) {
      sum += sorted[i];
      double candidate = (sum - 1) / count;
      if (sorted[i] > candidate) {
        lower = candidate;
      }
    }
    double cut = lower;
    return Arrays.stream(values).map(v -> Math.max(0, v - cut)).toArray();
  }
}
