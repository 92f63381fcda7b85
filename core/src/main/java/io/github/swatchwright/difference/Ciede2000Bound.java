package io.github.swatchwright.difference;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.colour.Lab;

/**
 * What ΔE00 from one colour says about where another colour lies: the box of CIELAB that holds all
 * colours within a limit of it, and a lower bound of ΔE00 between it and any box. CIEDE2000 is no
 * metric and has no such bound of its own. The symbols are those of Sharma, Wu and Dalal 2005.
 *
 * <p><b>The quadratic form.</b> Write c = ΔC′/S_C and h = ΔH′/S_H. R_T = −sin 2Δθ·R_C lies in [−R,
 * 0] with R = sin 60°·R_C ≤ √3, so c² + h² + R_T·c·h ≥ κ(c² + h²) with κ = 1 − R/2, and, by
 * completing the square, ≥ (1 − R²/4)c² and ≥ (1 − R²/4)h².
 *
 * <p><b>The box.</b> Let ΔE00 ≤ t, and let 1 stand for the colour, 2 for the other.
 *
 * <ol>
 *   <li>|ΔL′| ≤ t·S_L, and S_L ≤ 1 + 0.015|L̄′ − 50| ≤ 1 + 0.015(|L₁ − 50| + |ΔL′|/2); solved for
 *       |ΔL′|. Then S_L at the |L̄′ − 50| so found, which it grows with, gives a smaller one.
 *   <li>|ΔC′| ≤ e·S_C with e = t/√(1 − R²/4) and S_C ≤ 1 + 0.0225(2C₁′ + |ΔC′|); solved for |ΔC′|.
 *       R and C₁′ are taken at their largest: first R = √3 and G = ½, then what the interval of
 *       chroma just found allows. G and R_C are monotone in the mean chroma, in opposite senses.
 *   <li>|ΔH′| ≤ e·S_H with S_H ≤ 1 + 0.015·C̄′·T and T ≤ 1.93, the sum of its coefficients, or what
 *       its terms come to over the interval of hues.
 *   <li>ΔH′ = 2√(C₁′C₂′)·sin(Δh′/2) bounds the turn |Δh′| ≤ δ. With C₂′ = C₁′ + ΔC′ and h₂′ = h₁′ +
 *       Δh′, Δa′ = ΔC′·cos h₂′ − 2C₁′·sin(Δh′/2)·sin(h₁′ + Δh′/2), and alike for Δb; the largest
 *       |cos| and |sin| over the interval of hues bound both. Also ΔC′² + ΔH′² = Δa′² + Δb², so
 *       that neither is above t·max(S_C, S_H)/√κ. Last, Δa = Δa′/(1 + G).
 * </ol>
 *
 * <p><b>The bound.</b> A point within t has its S_L, S_C, S_H below the maxima of the region, so
 * that ΔE00² ≥ (ΔL′/S_L)² + κ((ΔC′/S_C)² + (ΔH′/S_H)²) there. Of a box, d² = Δa′² + Δb² = ΔC′² +
 * ΔH′² is at least ((1 + G)Δa)² + Δb² with the nearest point and the smallest G. That is divided by
 * the larger of S_C² and S_H²; or, when S_C is larger, as much of it as the widest ΔC′ in the box
 * can make up is divided by S_C², and the rest by S_H². ΔC′ at another G is off by at most the
 * difference of G times the larger |a*|. Outside the region ΔE00 is above t: so the smaller of t
 * and that.
 *
 * <p>Everything is widened by a part in 10⁹ for rounding. Immutable.
 */
public final class Ciede2000Bound {
  private static final double SLACK = 1 + 1e-9;
  private static final double TINY = 1e-9;

  private final double l;
  private final double a;
  private final double b;
  private final double limit;
  private final double reachL;
  private final double reachA;
  private final double reachB;
  private final double perL;
  private final double perChroma;
  private final double perHue;
  private final double stretch;
  private final double stretchRange;
  private final double chroma;

  private Ciede2000Bound(Lab colour, double limit) {
    this.l = colour.l();
    this.a = colour.a();
    this.b = colour.b();
    this.limit = limit;
    reachL = lightnessReach(l, limit);
    perL = 1 / (lightnessScale(Math.abs(l - 50) + reachL / 2) * SLACK);
    ChromaRegion region = ChromaRegion.of(a, b, limit);
    reachA = region.reachA() * SLACK + TINY;
    reachB = region.reachB() * SLACK + TINY;
    perChroma = region.perChroma() / SLACK;
    perHue = region.perHue() / SLACK;
    stretch = region.leastStretch() / SLACK;
    stretchRange = region.mostStretch() * SLACK - stretch;
    chroma = Math.hypot(stretch * a, b);
  }

  /**
   * The bound about a colour.
   *
   * @param limit the ΔE00 up to which it is to be sharp, at least 0; no bound it gives is above
   */
  public static Ciede2000Bound of(Lab colour, double limit) {
    return new Ciede2000Bound(colour, Require.within("limit", limit, 0, Double.POSITIVE_INFINITY));
  }

  private static double lightnessScale(double fromMiddle) {
    double square = fromMiddle * fromMiddle;
    return Double.isInfinite(square) ? fromMiddle : 1 + 0.015 * square / Math.sqrt(20 + square);
  }

  private static double lightnessReach(double l, double limit) {
    double fromMiddle = Math.abs(l - 50);
    double left = 1 - 0.0075 * limit;
    if (left <= 0) {
      return Double.POSITIVE_INFINITY;
    }
    double reach = limit * (1 + 0.015 * fromMiddle) / left;
    for (int i = 0; i < 3; i++) {
      reach = Math.min(reach, limit * lightnessScale(fromMiddle + reach / 2));
    }
    return reach * SLACK + TINY;
  }

  /** No colour within the limit differs by more in L*; may be infinite. */
  public double reachL() {
    return reachL;
  }

  /** No colour within the limit differs by more in a*; may be infinite. */
  public double reachA() {
    return reachA;
  }

  /** No colour within the limit differs by more in b*; may be infinite. */
  public double reachB() {
    return reachB;
  }

  /** The limit that it is sharp up to. */
  public double limit() {
    return limit;
  }

  /**
   * A lower bound of ΔE00 between the colour and every colour in a box of CIELAB, at most the
   * limit.
   */
  public double ofBox(
      double lowL, double highL, double lowA, double highA, double lowB, double highB) {
    double dL = apart(l, lowL, highL);
    double dA = apart(a, lowA, highA);
    double dB = apart(b, lowB, highB);
    if (dL > reachL || dA > reachA || dB > reachB) {
      return limit;
    }
    double light = dL * perL;
    double wide = stretch * dA;
    double square = wide * wide + dB * dB;
    double plane = square * Math.min(perChroma, perHue);
    if (perHue > perChroma && square > 0) {
      double mostA = Math.max(Math.abs(lowA), Math.abs(highA));
      double most = distance(stretch * mostA, Math.max(Math.abs(lowB), Math.abs(highB)));
      double least = distance(stretch * apart(0, lowA, highA), apart(0, lowB, highB));
      double step =
          Math.max(most - chroma, chroma - least) * SLACK
              + stretchRange * Math.max(mostA, Math.abs(a));
      plane = Math.max(plane, square * perHue - step * step * (perHue - perChroma) * SLACK);
    }
    return Math.min(limit, Math.sqrt(light * light + plane) / SLACK);
  }

  private static double distance(double x, double y) {
    return Math.sqrt(x * x + y * y);
  }

  private static double apart(double at, double low, double high) {
    return Math.max(0, Math.max(low - at, at - high));
  }
}
