package io.github.swatchwright.ciede2000;

import io.github.swatchwright.colour.Lab;

/**
 * Tells how near a colour can at best be to any colour of a box of CIELAB, in ΔE00, so that a
 * search may skip the box. The answer is a lower bound: never above the true least ΔE00, often a
 * little below it. CIEDE2000 is no metric, so no distance bounds it; its terms are bounded one by
 * one. The symbols are those of Sharma, Wu and Dalal 2005; 1 stands for the colour, 2 for those of
 * the box.
 *
 * <p>ΔE00² = (ΔL′/S_L)² + (c² + h² + R_T·c·h) with c = ΔC′/S_C and h = ΔH′/S_H. The first term
 * depends on L* alone, the second, called chromatic here, on a* and b* alone.
 *
 * <p><b>Lightness.</b> S_L grows with |L̄′ − 50|, which is largest at an end of the box.
 *
 * <p><b>Chromatic.</b>
 *
 * <ol>
 *   <li>The chromas of the box bound the mean chroma, and 1 + G, which falls with it. Between its
 *       least and greatest value a₁′ and the box of a₂′ are intervals, and so are C₁′, C₂′, h₁′,
 *       h₂′ and Δh′, by the box's corners. A box that holds a′ = b = 0 has every hue.
 *   <li>c = (C₂′ − C₁′)/(1 + 0.0225(C₁′ + C₂′)) grows with C₂′ and falls with C₁′: its range is
 *       that between two corners.
 *   <li>|h| = √(C₁′C₂′)·|2 sin(Δh′/2)|/(1 + 0.0075·T·(C₁′ + C₂′)), with the largest T of the mean
 *       hues, is the least turn times a fraction that first grows, then falls with either chroma,
 *       as its logarithm's derivative shows: its least value is at a corner.
 *   <li>−R_T = 2 sin 2Δθ·√(C̄′⁷/(C̄′⁷ + 25⁷)) lies between r and R, its values at the hue furthest
 *       from 275° and the least chroma and at the nearest and the greatest. Where c and h have
 *       unlike signs, c² + h² + r|ch| is least at the least of both. Where they have like signs, c²
 *       + h² − R|ch| is least, over |c| ≥ x and |h| ≥ y, on |c| = x at the |h| nearest to R·x/2 or
 *       on |h| = y at the |c| nearest to R·y/2, because it is convex and least at 0.
 * </ol>
 *
 * <p>Everything is lessened by a part in 10⁹ for rounding. Immutable.
 */
public final class Ciede2000Bound {
  private static final double SLACK = 1 - 1e-9;
  private static final double TINY = 1e-10;

  /** Colours of no more chroma are said to have any hue. */
  private static final double GREY = 1e-12;

  /** A box with an edge beyond is given a chromatic bound of 0. */
  private static final double FURTHEST = 1e6;

  private final double l;
  private final double a;
  private final double b;
  private final double chroma;

  private Ciede2000Bound(Lab colour) {
    this.l = colour.l();
    this.a = colour.a();
    this.b = colour.b();
    chroma = distance(a, b);
  }

  /** The bounds for a colour. */
  public static Ciede2000Bound of(Lab colour) {
    return new Ciede2000Bound(colour);
  }

  /** S_L at a distance of L̄′ from 50. */
  static double lightnessScale(double fromMiddle) {
    double square = fromMiddle * fromMiddle;
    return Double.isInfinite(square) ? fromMiddle : 1 + 0.015 * square / Math.sqrt(20 + square);
  }

  /** No more than ΔE00 of the colour from any in a box of CIELAB. */
  public double ofBox(
      double lowL, double highL, double lowA, double highA, double lowB, double highB) {
    return Math.sqrt(lightness(lowL, highL) + chromatic(lowA, highA, lowB, highB)) * SLACK;
  }

  /** No more than (ΔL′/S_L)² of the colour from any whose L* is in a range. */
  public double lightness(double low, double high) {
    double away = apart(l, low, high);
    if (away == 0) {
      return 0;
    }
    double furthest = Math.max(Math.abs((l + low) / 2 - 50), Math.abs((l + high) / 2 - 50));
    double term = away / lightnessScale(furthest);
    return term * term * SLACK;
  }

  /** No more than ΔE00² of the colour from any of the same L* whose a* and b* are in a box. */
  public double chromatic(double lowA, double highA, double lowB, double highB) {
    double mostA = Math.max(Math.abs(lowA), Math.abs(highA));
    double mostB = Math.max(Math.abs(lowB), Math.abs(highB));
    if (!(mostA + mostB + chroma < FURTHEST)) {
      return 0;
    }
    // Step 1: what the box leaves open of a′, C′ and h′.
    double nearest = distance(apart(0, lowA, highA), apart(0, lowB, highB));
    double leastStretch = stretch((chroma + distance(mostA, mostB)) / 2);
    double mostStretch = stretch((chroma + nearest) / 2);
    double left = lowA * (lowA < 0 ? mostStretch : leastStretch);
    double right = highA * (highA > 0 ? mostStretch : leastStretch);
    double least1 = distance(leastStretch * a, b);
    double most1 = distance(mostStretch * a, b);
    double least2 = distance(apart(0, left, right), apart(0, lowB, highB));
    double most2 = distance(Math.max(Math.abs(left), Math.abs(right)), mostB);
    HueTurn turn =
        least1 > GREY && least2 > GREY
            ? HueTurn.between(
                Math.atan2(b, leastStretch * a),
                Math.atan2(b, mostStretch * a),
                Math.atan2((lowB + highB) / 2, (left + right) / 2),
                halfAngle(left, right, lowB, highB))
            : HueTurn.ANY;
    // Step 2.
    double lowC = chromaTerm(least2, most1);
    double highC = chromaTerm(most2, least1);
    // Steps 3 and 4, for both ways round.
    HueTerms terms = hueTerms(least1, most1, least2, most2, turn.meanHues());
    double form =
        Math.min(
            terms.leastForm(turn.from(), turn.to(), lowC, highC),
            terms.leastForm(turn.fromBack(), turn.toBack(), -highC, -lowC));
    return Math.max(0, form * SLACK - TINY);
  }

  private static HueTerms hueTerms(
      double least1, double most1, double least2, double most2, HueInterval hues) {
    return new HueTerms(
        leastPerTurn(least1, most1, least2, most2, hues.mostT()),
        Math.sqrt(most1 * most2) / (1 + 0.0075 * hues.leastT() * (least1 + least2)),
        hues.leastRotation() * ChromaSaturation.of((least1 + least2) / 2),
        hues.mostRotation() * ChromaSaturation.of((most1 + most2) / 2));
  }

  /** Step 3: the least of |h| over 2 sin(|Δh′|/2), which is at a corner of the chromas. */
  private static double leastPerTurn(
      double least1, double most1, double least2, double most2, double mostT) {
    return Math.min(
        Math.min(perTurn(least1, least2, mostT), perTurn(most1, most2, mostT)),
        Math.min(perTurn(least1, most2, mostT), perTurn(most1, least2, mostT)));
  }

  /**
   * What chromas and mean hues leave open of the terms that hold the turn of the hue.
   *
   * @param leastPerTurn the least |h| over 2 sin(|Δh′|/2)
   * @param mostPerTurn the greatest
   * @param leastBend the least −R_T, called r above
   * @param mostBend the greatest, called R above
   */
  private record HueTerms(
      double leastPerTurn, double mostPerTurn, double leastBend, double mostBend) {

    /**
     * Step 4 for one way round: the least c² + h² + R_T·c·h for a turn of a range, infinite when
     * the range holds no turn that way.
     */
    double leastForm(double from, double to, double lowC, double highC) {
      if (to < 0) {
        return Double.POSITIVE_INFINITY;
      }
      double leastH = leastSine(from) * leastPerTurn;
      double mostH = mostSine(to) * mostPerTurn;
      return form(lowC, highC, leastH, mostH, leastBend, mostBend);
    }
  }

  private static double leastSine(double turn) {
    return 2 * Math.sin(Math.max(0, turn) / 2);
  }

  private static double mostSine(double turn) {
    return 2 * Math.sin(Math.min(Math.PI, turn) / 2);
  }

  /**
   * The least c² + h² + R_T·c·h for an h of a range that is not negative; for one that is not
   * positive turn both signs round.
   */
  private static double form(
      double lowC, double highC, double lowH, double highH, double leastBend, double mostBend) {
    double form = Double.POSITIVE_INFINITY;
    if (highC >= 0) {
      double c = Math.max(0, lowC);
      form = Math.min(alongSide(c, lowH, highH, mostBend), alongSide(lowH, c, highC, mostBend));
    }
    if (lowC <= 0) {
      double c = Math.max(0, -highC);
      form = Math.min(form, c * c + lowH * lowH + leastBend * c * lowH);
    }
    return form;
  }

  /** The least x² + y² − bend·x·y for a y of a range. */
  private static double alongSide(double x, double lowY, double highY, double bend) {
    double y = Math.max(lowY, Math.min(highY, bend * x / 2));
    return x * x + y * y - bend * x * y;
  }

  private static double stretch(double meanChroma) {
    return 1.5 - 0.5 * ChromaSaturation.of(meanChroma);
  }

  /** ΔH′/S_H over 2 sin(Δh′/2). */
  private static double perTurn(double chroma1, double chroma2, double mostT) {
    return Math.sqrt(chroma1 * chroma2) / (1 + 0.0075 * mostT * (chroma1 + chroma2));
  }

  private static double chromaTerm(double chroma2, double chroma1) {
    return (chroma2 - chroma1) / (1 + 0.0225 * (chroma1 + chroma2));
  }

  /** The largest angle between a box's middle and its corners, seen from 0, which lies outside. */
  private static double halfAngle(double left, double right, double low, double high) {
    double x = (left + right) / 2;
    double y = (low + high) / 2;
    double widest = 0;
    for (int corner = 0; corner < 4; corner++) {
      double cornerX = (corner & 1) == 0 ? left : right;
      double cornerY = (corner & 2) == 0 ? low : high;
      double across = Math.abs(x * cornerY - y * cornerX);
      double along = x * cornerX + y * cornerY;
      // Grows with the angle, from 0 to 2.
      widest = Math.max(widest, 1 - along / (across + Math.abs(along)));
    }
    return Math.atan2(Math.min(widest, 2 - widest), 1 - widest);
  }

  private static double distance(double x, double y) {
    return Math.sqrt(x * x + y * y);
  }

  private static double apart(double at, double low, double high) {
    return Math.max(0, Math.max(low - at, at - high));
  }
}
