package io.github.swatchwright.difference;

import java.math.BigDecimal;

/**
 * CIEDE2000 as Sharma, Wu and Dalal 2005 write it, equation by equation, with hue angles in
 * degrees: the second opinion. Only where rounding an angle could push a pair across one of the
 * formula's two jumps does it look closer, and decide by exact arithmetic.
 */
final class TextbookCiede2000 {
  /**
   * Degrees; far more than atan2's rounding, far less than any pair that isn't meant to be there.
   */
  private static final double NEAR = 1e-9;

  private static final double C25_7 = 6103515625.0;

  private TextbookCiede2000() {}

  static double deltaE(double l1, double a1, double b1, double l2, double a2, double b2) {
    double c1 = Math.sqrt(a1 * a1 + b1 * b1); // (2)
    double c2 = Math.sqrt(a2 * a2 + b2 * b2);
    double cMean = (c1 + c2) / 2; // (3)
    double cMean7 = Math.pow(cMean, 7);
    double g = 0.5 * (1 - Math.sqrt(cMean7 / (cMean7 + C25_7))); // (4)
    double a1p = (1 + g) * a1; // (5)
    double a2p = (1 + g) * a2;
    double c1p = Math.sqrt(a1p * a1p + b1 * b1); // (6)
    double c2p = Math.sqrt(a2p * a2p + b2 * b2);
    double h1 = hue(a1p, b1); // (7)
    double h2 = hue(a2p, b2);

    double deltaL = l2 - l1; // (8)
    double deltaC = c2p - c1p; // (9)
    double deltaHue = c1p * c2p == 0 ? 0 : hueDifference(h1, h2, a1, b1, a2, b2); // (10)
    double deltaH = 2 * Math.sqrt(c1p * c2p) * Math.sin(Math.toRadians(deltaHue / 2)); // (11)

    double lMean = (l1 + l2) / 2; // (12)
    double cpMean = (c1p + c2p) / 2; // (13)
    double hMean = c1p * c2p == 0 ? h1 + h2 : meanHue(h1, h2, deltaHue, a1, b1, a2, b2); // (14)
    double t =
        1
            - 0.17 * Math.cos(Math.toRadians(hMean - 30))
            + 0.24 * Math.cos(Math.toRadians(2 * hMean))
            + 0.32 * Math.cos(Math.toRadians(3 * hMean + 6))
            - 0.20 * Math.cos(Math.toRadians(4 * hMean - 63)); // (15)
    double x = (hMean - 275) / 25;
    double deltaTheta = 30 * Math.exp(-x * x); // (16)
    double cpMean7 = Math.pow(cpMean, 7);
    double rC = 2 * Math.sqrt(cpMean7 / (cpMean7 + C25_7)); // (17)
    double lFromMiddle = (lMean - 50) * (lMean - 50);
    double sL = 1 + 0.015 * lFromMiddle / Math.sqrt(20 + lFromMiddle); // (18)
    double sC = 1 + 0.045 * cpMean; // (19)
    double sH = 1 + 0.015 * cpMean * t; // (20)
    double rT = -Math.sin(Math.toRadians(2 * deltaTheta)) * rC; // (21)
    double lightness = deltaL / sL;
    double chroma = deltaC / sC;
    double hue = deltaH / sH;
    return Math.sqrt(
        lightness * lightness + chroma * chroma + hue * hue + rT * chroma * hue); // (22)
  }

  private static double hue(double ap, double b) {
    double degrees = Math.toDegrees(Math.atan2(b, ap));
    return degrees < 0 ? degrees + 360 : degrees;
  }

  /** h2 − h1, brought to the shorter way round; of a half turn, as it is. */
  private static double hueDifference(
      double h1, double h2, double a1, double b1, double a2, double b2) {
    double difference = h2 - h1;
    boolean longWay;
    if (Math.abs(Math.abs(difference) - 180) > NEAR) {
      longWay = Math.abs(difference) > 180;
    } else {
      int counterClockwise = exactSign(a1, b2, -a2, b1);
      longWay = counterClockwise != 0 && counterClockwise != Math.signum(difference);
    }
    if (!longWay) {
      return difference;
    }
    return difference > 0 ? difference - 360 : difference + 360;
  }

  private static double meanHue(
      double h1, double h2, double deltaHue, double a1, double b1, double a2, double b2) {
    double sum = h1 + h2;
    boolean shortWay = Math.abs(deltaHue - (h2 - h1)) < 180;
    if (shortWay) {
      return sum / 2;
    }
    boolean belowFullTurn = Math.abs(sum - 360) > NEAR ? sum < 360 : exactSign(a1, b2, a2, b1) < 0;
    return belowFullTurn ? (sum + 360) / 2 : (sum - 360) / 2;
  }

  private static int exactSign(double p, double q, double r, double s) {
    BigDecimal first = new BigDecimal(p).multiply(new BigDecimal(q));
    BigDecimal second = new BigDecimal(r).multiply(new BigDecimal(s));
    return first.add(second).signum();
  }
}
