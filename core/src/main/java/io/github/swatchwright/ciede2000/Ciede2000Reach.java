package io.github.swatchwright.ciede2000;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.colour.Lab;

/**
 * The box of CIELAB that holds all colours within a limit of ΔE00 of a colour. CIEDE2000 is no
 * metric and has no such box of its own. The symbols are those of Sharma, Wu and Dalal 2005.
 *
 * <p>Write c = ΔC′/S_C and h = ΔH′/S_H. R_T = −sin 2Δθ·R_C lies in [−R, 0] with R = sin 60°·R_C ≤
 * √3, so c² + h² + R_T·c·h ≥ κ(c² + h²) with κ = 1 − R/2, and, by completing the square, ≥ (1 −
 * R²/4)c² and ≥ (1 − R²/4)h². Let ΔE00 ≤ t, and let 1 stand for the colour, 2 for the other.
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
 * <p>Everything is widened by a part in 10⁹ for rounding.
 *
 * @param l no colour within the limit differs by more in L*; may be infinite, as the others
 * @param a no such colour differs by more in a*
 * @param b no such colour differs by more in b*
 */
public record Ciede2000Reach(double l, double a, double b) {
  private static final double SLACK = 1 + 1e-9;
  private static final double TINY = 1e-9;

  /**
   * The box about a colour.
   *
   * @param limit the ΔE00 up to which colours lie in it, at least 0
   */
  public static Ciede2000Reach of(Lab colour, double limit) {
    Require.within("limit", limit, 0, Double.POSITIVE_INFINITY);
    ChromaRegion region = ChromaRegion.of(colour.a(), colour.b(), limit);
    return new Ciede2000Reach(
        lightness(colour.l(), limit),
        region.reachA() * SLACK + TINY,
        region.reachB() * SLACK + TINY);
  }

  private static double lightness(double l, double limit) {
    double fromMiddle = Math.abs(l - 50);
    double left = 1 - 0.0075 * limit;
    if (left <= 0) {
      return Double.POSITIVE_INFINITY;
    }
    double reach = limit * (1 + 0.015 * fromMiddle) / left;
    for (int i = 0; i < 3; i++) {
      reach = Math.min(reach, limit * Ciede2000Bound.lightnessScale(fromMiddle + reach / 2));
    }
    return reach * SLACK + TINY;
  }
}
