package io.github.swatchwright.ciede2000;

import io.github.swatchwright.argument.Require;

/**
 * The arithmetic of CIEDE2000 (ISO/CIE 11664-6; equation numbers of Sharma, Wu and Dalal 2005),
 * with the standard's symbols. Hues are never turned into angles: the mean hue is the direction of
 * a sum or difference of unit vectors, and the cosines of its multiples follow by angle addition.
 * Differences are formed before anything is rounded away, so that tiny ones keep their digits.
 *
 * @param kL parametric factor of lightness
 * @param kC parametric factor of chroma
 * @param kH parametric factor of hue
 */
public record Ciede2000Formula(double kL, double kC, double kH) {
  /** Coordinates whose sizes add up to more take the slow path; their 7th powers would overflow. */
  private static final double LARGEST = 1e40;

  /** Where C₁′C₂′ is smaller, ΔH′ is below 1e-69, and the hue is as good as undefined. */
  private static final double NO_HUE = 1e-140;

  private static final double COS_6 = Math.cos(Math.toRadians(6));
  private static final double SIN_6 = Math.sin(Math.toRadians(6));
  private static final double COS_30 = Math.cos(Math.toRadians(30));
  private static final double SIN_30 = 0.5;
  private static final double COS_63 = Math.cos(Math.toRadians(63));
  private static final double SIN_63 = Math.sin(Math.toRadians(63));

  /** ΔE00 of two colours; refuses what isn't finite. */
  public double deltaE(double l1, double a1, double b1, double l2, double a2, double b2) {
    return stretched(l1, a1, b1, l2, a2, b2, checkedStretch(l1, a1, b1, l2, a2, b2));
  }

  /** 1 + G, or 0 for coordinates that are too large or not finite. */
  public static double checkedStretch(
      double l1, double a1, double b1, double l2, double a2, double b2) {
    double reach =
        Math.abs(l1) + Math.abs(a1) + Math.abs(b1) + Math.abs(l2) + Math.abs(a2) + Math.abs(b2);
    return reach < LARGEST ? stretch(a1, b1, a2, b2) : 0;
  }

  /**
   * ΔE00 of colours whose {@link #checkedStretch} is known. One method, since its dozen
   * intermediate values, shared by several terms, would otherwise need an object for each pair of
   * colours.
   */
  public double stretched(
      double l1, double a1, double b1, double l2, double a2, double b2, double stretch) {
    if (stretch == 0) {
      return ofHuge(l1, a1, b1, l2, a2, b2);
    }
    double lightness = lightness(l1, l2);
    double a1p = stretch * a1;
    double a2p = stretch * a2;
    double c1p = Math.sqrt(a1p * a1p + b1 * b1);
    double c2p = Math.sqrt(a2p * a2p + b2 * b2);
    double sum = c1p + c2p;
    double product = c1p * c2p;
    if (product < NO_HUE) {
      double chroma = (c2p - c1p) / (kC * (1 + 0.0225 * sum));
      return Math.sqrt(lightness * lightness + chroma * chroma);
    }
    // ΔC′/S_C, (9) and (19), where ΔC′ = (C₂′² − C₁′²) / (C₁′ + C₂′)
    double squares = stretch * (a2 - a1) * (a2p + a1p) + (b2 - b1) * (b2 + b1);
    double chroma = squares / (sum * (kC * (1 + 0.0225 * sum)));

    double dot = a1p * a2p + b1 * b2;
    double root = Math.sqrt(product);
    double halfAngle = Math.sqrt(2 * (product + Math.abs(dot)));
    double inverse = 1 / (root * halfAngle);
    // (x, y)·inverse is the unit vector of the mean hue, the middle of the shorter arc, (14).
    double x;
    double y;
    double deltaH; // (11)
    if (dot >= 0) {
      x = c2p * a1p + c1p * a2p;
      y = c2p * b1 + c1p * b2;
      deltaH = stretch * HueDifference.twiceCross(a1, b1, a2, b2) * root * inverse;
    } else {
      double side = HueDifference.side(a1, b1, a2, b2);
      x = side * (c1p * b2 - c2p * b1);
      y = side * (c2p * a1p - c1p * a2p);
      deltaH = side * halfAngle;
    }
    double inverseProduct = 1 / product;
    double cos2 = (a1p * a2p - b1 * b2) * inverseProduct;
    double sin2 = (a1p * b2 + a2p * b1) * inverseProduct;
    double t = evenTerms(cos2, sin2) + oddTerms(x, y, cos2, sin2) * inverse; // (15)
    double hue = deltaH / (kH * (1 + 0.0075 * sum * t)); // ΔH′/S_H, (20)
    double rT =
        -2
            * ChromaSaturation.of(sum / 2)
            * HueRotation.sine(x, y, inverse, sineOfSum(a1, b1, a2, b2)); // (17) and (21)
    return Math.sqrt(lightness * lightness + chroma * chroma + hue * (hue + rT * chroma)); // (22)
  }

  /** ΔL′/(kL·S_L), (8) and (18). */
  private double lightness(double l1, double l2) {
    double fromMiddle = (l1 + l2) / 2 - 50;
    double square = fromMiddle * fromMiddle;
    double root = Math.sqrt(20 + square);
    return (l2 - l1) * root / (kL * (root + 0.015 * square));
  }

  /** 1 + G, (2) to (5): greys are spread along a*. */
  public static double stretch(double a1, double b1, double a2, double b2) {
    double meanChroma = (Math.sqrt(a1 * a1 + b1 * b1) + Math.sqrt(a2 * a2 + b2 * b2)) / 2;
    return 1.5 - 0.5 * ChromaSaturation.of(meanChroma);
  }

  /** T's terms in 2h̄′ and 4h̄′ and its 1, from cosine and sine of 2h̄′. */
  private static double evenTerms(double cos2, double sin2) {
    double cos4 = cos2 * cos2 - sin2 * sin2;
    double sin4 = 2 * sin2 * cos2;
    return 1 + 0.24 * cos2 - 0.20 * (COS_63 * cos4 + SIN_63 * sin4);
  }

  /**
   * T's terms in h̄′ and 3h̄′, by angle addition, times the length of (x, y), which points to h̄′.
   */
  private static double oddTerms(double x, double y, double cos2, double sin2) {
    double ofCos = 0.32 * (COS_6 * cos2 - SIN_6 * sin2) - 0.17 * COS_30;
    double ofSin = -0.32 * (COS_6 * sin2 + SIN_6 * cos2) - 0.17 * SIN_30;
    return x * ofCos + y * ofSin;
  }

  /** C₁C₂·sin(h₁ + h₂) or, where that rounds to 0, a number of its exact sign. */
  private static double sineOfSum(double a1, double b1, double a2, double b2) {
    double sine = a1 * b2 + a2 * b1;
    return sine == 0 ? ExactSign.ofSum(a1, b2, a2, b1) : sine;
  }

  /**
   * The same for coordinates that no colour has; refuses what isn't finite. There ΔC′/S_C and
   * ΔH′/S_H depend on the coordinates' ratios alone.
   */
  private double ofHuge(double l1, double a1, double b1, double l2, double a2, double b2) {
    Require.finite("l1", l1);
    Require.finite("l2", l2);
    double scale =
        Math.min(
            scale(Require.finite("a1", a1), Require.finite("b1", b1)),
            scale(Require.finite("a2", a2), Require.finite("b2", b2)));
    double plane = deltaE(50, a1 * scale, b1 * scale, 50, a2 * scale, b2 * scale);
    double fromMiddle = Math.abs(l1 / 2 + l2 / 2 - 50);
    double sL = 1 + 0.015 * fromMiddle * (fromMiddle / Math.hypot(Math.sqrt(20), fromMiddle));
    return Math.hypot((l2 / sL - l1 / sL) / kL, plane);
  }

  /** A factor that brings a* and b* to where their products don't overflow; 1 for real colours. */
  public static double scale(double a, double b) {
    double largest = Math.max(Math.abs(a), Math.abs(b));
    return largest < LARGEST / 100 ? 1 : LARGEST / 100 / largest;
  }
}
