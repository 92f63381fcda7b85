package io.github.swatchwright.search;

import io.github.swatchwright.ciede2000.Ciede2000Reach;
import io.github.swatchwright.colour.CielabCurve;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.WhitePoint;

/**
 * Tells quickly, and never wrongly, which colours can't lie within some ΔE00 of a target, so that
 * only the others are computed in full.
 *
 * <p>It holds two boxes around all colours within the limit, both widened by what single precision
 * may be off: one of CIELAB, for mixes that {@link LaneKernel} has computed, and one of X/Xn, Y/Yn
 * and Z/Zn less what the surface adds, for the corners of cells. What meets a box is judged once
 * more by the {@link TargetMap}, whose lower bound of ΔE00 is closer.
 */
final class TargetRegion {
  /**
   * f of CIELAB is within this of its exact value: a third of {@link BandTables#RELATIVE_ERROR}
   * times f ≤ 1, which holds on the straight start too, and five roundings of the root.
   */
  private static final double ERROR_OF_F = 3e-6;

  /** The error of X/Xn, Y/Yn or Z/Zn of a corner, whose shares are rounded too, when compared. */
  private static final double ERROR_OF_BOX = 1e-5;

  /** L*, a* and b* themselves are rounded at sizes up to 500. */
  private static final double ROUNDING = 1e-4;

  /** The errors of a*, L* and b* in single precision, by the two figures above. */
  private static final double[] ERROR = {
    1000 * ERROR_OF_F + ROUNDING, 116 * ERROR_OF_F + ROUNDING, 400 * ERROR_OF_F + ROUNDING
  };

  /** A colour exactly at the limit must be kept, whatever rounding does to the comparison. */
  private static final double TIE = 1e-9;

  private static final WhitePoint UNIT = new WhitePoint(1, 1, 1);

  /** The steepest that CIELAB's f is. */
  private static final double SLOPE = CielabCurve.slope(0);

  final double limit;
  private final TargetMap map;
  private final double furthest;
  private final double hullMargin;
  private final double lowestY;
  private final double highestY;
  final float[] from = new float[3];
  final float[] to = new float[3];

  /** a*, L*, b* of the target. */
  final float[] centre;

  /** How far a*, L*, b* in single precision of a colour within the limit may be from it. */
  final float[] reach;

  /** The region as {@link BoxWord#meets} wants it, for boxes of f(X/Xn), f(Y/Yn), f(Z/Zn). */
  private final long hullWord;

  /** The same for boxes of a*, L*, b*. */
  private final long labWord;

  TargetRegion(Lab target, TargetMap map, double limit, BandTables tables) {
    this.limit = limit;
    this.map = map;
    double atTie = limit * (1 + TIE) + TIE;
    furthest = atTie * atTie;
    Ciede2000Reach within = Ciede2000Reach.of(target, atTie);
    centre = new float[] {(float) target.a(), (float) target.l(), (float) target.b()};
    reach =
        new float[] {
          finite(within.a() + ERROR[0]),
          finite(within.l() + ERROR[1]),
          finite(within.b() + ERROR[2])
        };
    labWord = labWord(centre, reach);
    // By L* = 116·f(Y) − 16, a* = 500(f(X) − f(Y)) and b* = 200(f(Y) − f(Z)).
    double fy = (target.l() + 16) / 116;
    double[] f = {fy + target.a() / 500, fy, fy - target.b() / 200};
    double stepY = within.l() / 116;
    double[] steps = {stepY + within.a() / 500, stepY, stepY + within.b() / 200};
    double widest = 0;
    float[] low = new float[3];
    float[] high = new float[3];
    for (int i = 0; i < 3; i++) {
      double margin = SLOPE * (ERROR_OF_BOX + tables.negative[i]);
      widest = Math.max(widest, margin);
      low[i] = (float) (f[i] - steps[i] - margin);
      high[i] = (float) (f[i] + steps[i] + margin);
      from[i] = (float) (decode(f[i] - steps[i]) - tables.surface[i] - ERROR_OF_BOX);
      to[i] =
          (float) (decode(f[i] + steps[i]) - tables.surface[i] + tables.negative[i] + ERROR_OF_BOX);
    }
    hullWord = BoxWord.region(BoxWord.ofF(low, high));
    hullMargin = widest;
    lowestY = fy - stepY - hullMargin;
    highestY = fy + stepY + hullMargin;
  }

  private static long labWord(float[] centre, float[] reach) {
    float[] low = new float[3];
    float[] high = new float[3];
    for (int i = 0; i < 3; i++) {
      low[i] = centre[i] - reach[i];
      high[i] = centre[i] + reach[i];
    }
    return BoxWord.region(BoxWord.ofLab(low, high));
  }

  /** Whether a box may hold a colour within the limit. */
  boolean meets(long box) {
    return BoxWord.isLab(box)
        ? BoxWord.meets(labWord, box) && labMeets(box)
        : BoxWord.meets(hullWord, box) && hullMeets(box);
  }

  private boolean labMeets(long box) {
    return map.ofBox(
            BoxWord.lowLab(box, 1) - ERROR[1],
            BoxWord.highLab(box, 1) + ERROR[1],
            BoxWord.lowLab(box, 0) - ERROR[0],
            BoxWord.highLab(box, 0) + ERROR[0],
            BoxWord.lowLab(box, 2) - ERROR[2],
            BoxWord.highLab(box, 2) + ERROR[2])
        <= furthest;
  }

  /** By the CIELAB box of the part of the box that has the right L*. */
  private boolean hullMeets(long box) {
    double lowY = Math.max(BoxWord.lowF(box, 1) - hullMargin, lowestY);
    double highY = Math.min(BoxWord.highF(box, 1) + hullMargin, highestY);
    double lowX = BoxWord.lowF(box, 0) - hullMargin;
    double highX = BoxWord.highF(box, 0) + hullMargin;
    double lowZ = BoxWord.lowF(box, 2) - hullMargin;
    double highZ = BoxWord.highF(box, 2) + hullMargin;
    return map.ofBox(
            116 * lowY - 16,
            116 * highY - 16,
            500 * (lowX - highY),
            500 * (highX - lowY),
            200 * (lowY - highZ),
            200 * (highY - lowZ))
        <= furthest;
  }

  /** Whether a* (first), L* and b* computed in single precision may be of such a colour. */
  boolean meets(float valueA, float valueL, float valueB) {
    return map.ofBox(
            valueL - ERROR[1],
            valueL + ERROR[1],
            valueA - ERROR[0],
            valueA + ERROR[0],
            valueB - ERROR[2],
            valueB + ERROR[2])
        <= furthest;
  }

  private static float finite(double reach) {
    return (float) Math.min(reach, 1e6);
  }

  /** t of f, which is at most 2 for anything that paint can have. */
  private static double decode(double f) {
    double l = 116 * Math.max(-2, Math.min(2, f)) - 16;
    return new Lab(l, 0, 0, UNIT).toXyz().y();
  }
}
