package io.github.swatchwright.search;

import io.github.swatchwright.colour.CielabCurve;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.WhitePoint;
import io.github.swatchwright.difference.Ciede2000Reach;

/**
 * Where the colours within some ΔE00 of a target lie, in the numbers of {@link LaneKernel}, widened
 * by what single precision may be off: the ranges of X/Xn, Y/Yn and Z/Zn less what the surface
 * adds, and the scaled box of CIELAB.
 */
final class TargetRegion {
  /**
   * f of CIELAB is within this of its exact value: a third of {@link BandTables#RELATIVE_ERROR}
   * times f ≤ 1, which holds on the straight start too, and five roundings of the root.
   */
  private static final double ERROR_OF_F = 3e-6;

  /** Of X/Xn, Y/Yn or Z/Zn of a corner, whose shares are rounded too; and its comparison. */
  private static final double ERROR_OF_BOX = 1e-5;

  /** L*, a* and b* themselves are rounded at sizes up to 500. */
  private static final double ROUNDING = 1e-4;

  /** So a*, L* and b* in single precision are within this of their exact values. */
  private static final double[] ERROR = {
    1000 * ERROR_OF_F + ROUNDING, 116 * ERROR_OF_F + ROUNDING, 400 * ERROR_OF_F + ROUNDING
  };

  /** A colour just at the limit must not be left out, and one beyond the bound's must. */
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
  final float[] middle;

  /** How far a*, L*, b* in single precision may be from it. */
  final float[] reach;

  /** What {@link BoxWord#meets} takes for a box of f(X/Xn), f(Y/Yn), f(Z/Zn) from cell corners. */
  private final long hullWord;

  /** And for a box of L*, a*, b* from computed mixes. */
  private final long labWord;

  TargetRegion(Lab target, TargetMap map, double limit, BandTables tables) {
    this.limit = limit;
    this.map = map;
    double atTie = limit * (1 + TIE) + TIE;
    furthest = atTie * atTie;
    Ciede2000Reach within = Ciede2000Reach.of(target, atTie);
    middle = new float[] {(float) target.a(), (float) target.l(), (float) target.b()};
    reach =
        new float[] {
          finite(within.a() + ERROR[0]),
          finite(within.l() + ERROR[1]),
          finite(within.b() + ERROR[2])
        };
    double stepX = within.l() / 116 + within.a() / 500;
    double stepY = within.l() / 116;
    double stepZ = within.l() / 116 + within.b() / 200;
    double[] steps = {stepX, stepY, stepZ};
    double fy = (target.l() + 16) / 116;
    double[] f = {fy + target.a() / 500, fy, fy - target.b() / 200};
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
    hullMargin = widest;
    lowestY = fy - stepY - hullMargin;
    highestY = fy + stepY + hullMargin;
    hullWord = BoxWord.region(BoxWord.ofF(low, high));
    for (int i = 0; i < 3; i++) {
      low[i] = middle[i] - reach[i];
      high[i] = middle[i] + reach[i];
    }
    labWord = BoxWord.region(BoxWord.ofLab(low, high));
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
