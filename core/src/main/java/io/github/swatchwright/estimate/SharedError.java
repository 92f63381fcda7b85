package io.github.swatchwright.estimate;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.WhitePoint;
import io.github.swatchwright.colour.Xyz;
import io.github.swatchwright.paint.Drawdown;

/**
 * What an error that a stroke shares with its bases does to what the stroke tells of its paint.
 *
 * <p>A photo that is a little too yellow makes paper and stroke too yellow alike. Seen against its
 * base, a stroke that hides nothing is then read without error, and one that hides with all of it.
 * With s how much of a base's light a film passes on, (R over white − R over black) ÷ (white −
 * black), an error e in ∛R of the base turns up as e·s·(R of the base ÷ R of the stroke)^(2/3) in
 * ∛R of the stroke, and the rest of e is left to be taken for the paint's.
 */
final class SharedError {
  private static final double LEAST = 1e-3;

  private SharedError() {}

  /**
   * How an error of L*, a* and b* in all of a drawdown's colours is left in those of both halves.
   *
   * @return 6 rows of 3: L*, a* and b* over black, then over white
   */
  static double[][] left(Drawdown drawdown) {
    double[] black = channels(drawdown.black().base().lab());
    double[] white = channels(drawdown.white().base().lab());
    double[] overBlack = channels(drawdown.black().measured().lab());
    double[] overWhite = channels(drawdown.white().measured().lab());
    double[] dark = new double[3];
    double[] pale = new double[3];
    for (int c = 0; c < 3; c++) {
      double passed =
          Math.max(0, (overWhite[c] - overBlack[c]) / Math.max(LEAST, white[c] - black[c]));
      dark[c] = rest(passed, black[c], overBlack[c]);
      pale[c] = rest(passed, white[c], overWhite[c]);
    }
    double[][] left = new double[6][];
    System.arraycopy(inLab(dark), 0, left, 0, 3);
    System.arraycopy(inLab(pale), 0, left, 3, 3);
    return left;
  }

  private static double rest(double passed, double base, double stroke) {
    return 1 - Math.min(1, passed * Math.pow(base / stroke, 2.0 / 3));
  }

  private static double[] channels(Lab lab) {
    Xyz xyz = lab.toXyz();
    WhitePoint white = xyz.white();
    return new double[] {
      Math.max(LEAST, xyz.x() / white.xn()),
      Math.max(LEAST, xyz.y() / white.yn()),
      Math.max(LEAST, xyz.z() / white.zn())
    };
  }

  /** Shares of ∛X, ∛Y and ∛Z, with L* = 116∛Y, a* = 500(∛X − ∛Y) and b* = 200(∛Y − ∛Z). */
  private static double[][] inLab(double[] share) {
    double x = share[0];
    double y = share[1];
    double z = share[2];
    return new double[][] {{y, 0, 0}, {500 * (x - y) / 116, x, 0}, {200 * (y - z) / 116, 0, z}};
  }
}
