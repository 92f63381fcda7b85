package io.github.swatchwright.difference;

import io.github.swatchwright.argument.Require;

/**
 * The arithmetic of CIEDE2000 (ISO/CIE 11664-6; equation numbers of Sharma, Wu and Dalal 2005),
 * with the standard's symbols. Hues are never turned into angles: the mean hue is the direction of
 * a sum or difference of unit vectors, and the cosines of its multiples follow by angle addition.
 * Differences are formed before anything is rounded away, so that tiny ones keep their digits.
 */
final class Ciede2000Formula {
  /** Coordinates whose sizes add up to more take the slow path; their 7th powers would overflow. */
  private static final double LARGEST = 1e40;

  /** Where C₁′C₂′ is smaller, ΔH′ is below 1e-69, and the hue is as good as undefined. */
  private static final double NO_HUE = 1e-140;

  private static final double C25_7 = 6103515625.0;

  private static final double COS_6 = Math.cos(Math.toRadians(6));
  private static final double SIN_6 = Math.sin(Math.toRadians(6));
  private static final double COS_30 = Math.cos(Math.toRadians(30));
  private static final double SIN_30 = 0.5;
  private static final double COS_63 = Math.cos(Math.toRadians(63));
  private static final double SIN_63 = Math.sin(Math.toRadians(63));

  private Ciede2000Formula() {}

  static double deltaE(
      double l1,
      double a1,
      double b1,
      double l2,
      double a2,
      double b2,
      double kL,
      double kC,
      double kH) {
    double reach =
        Math.abs(l1) + Math.abs(a1) + Math.abs(b1) + Math.abs(l2) + Math.abs(a2) + Math.abs(b2);
    if (!(reach < LARGEST)) {
      return ofHuge(l1, a1, b1, l2, a2, b2, kL, kC, kH);
    }
    double lightness = lightness(l1, l2) / kL;
    double stretch = stretch((Math.sqrt(a1 * a1 + b1 * b1) + Math.sqrt(a2 * a2 + b2 * b2)) / 2);
    double a1p = stretch * a1;
    double a2p = stretch * a2;
    double c1p = Math.sqrt(a1p * a1p + b1 * b1);
    double c2p = Math.sqrt(a2p * a2p + b2 * b2);
    double sum = c1p + c2p;
    if (sum == 0) {
      return Math.abs(lightness);
    }
    // ΔC′ / S_C, where ΔC′ = (C₂′² − C₁′²) / (C₁′ + C₂′) and S_C = 1 + 0.045·C̄′, (8) and (15)
    double squares = (a2p - a1p) * (a2p + a1p) + (b2 - b1) * (b2 + b1);
    double chroma = squares / (sum * (1 + 0.0225 * sum) * kC);
    double product = c1p * c2p;
    if (product < NO_HUE) {
      return Math.sqrt(lightness * lightness + chroma * chroma);
    }
    double turn = HueDifference.turn(a1, b1, a2, b2);
    double dot = a1p * a2p + b1 * b2;
    double hue = HueDifference.of(stretch * turn, dot, product) / kH;
    // The vector (x, y) points along the mean hue, the middle of the shorter arc, (14).
    double x;
    double y;
    double length;
    if (dot >= 0) {
      x = c2p * a1p + c1p * a2p;
      y = c2p * b1 + c1p * b2;
      length = Math.sqrt(product) * Math.sqrt(2 * (product + dot));
    } else {
      double side = Math.copySign(1, turn);
      x = side * (c1p * b2 - c2p * b1);
      y = side * (c2p * a1p - c1p * a2p);
      length = Math.sqrt(product) * Math.sqrt(2 * (product - dot));
    }
    hue /= 1 + 0.0075 * sum * t(x / length, y / length);
    double square = lightness * lightness + chroma * chroma + hue * hue;
    if (!(x > 0 && isPastSeam(a1, b1, a2, b2))) {
      double rc = 2 * Math.sqrt(saturation(sum / 2));
      square -= HueRotation.sine(x, y, length) * rc * chroma * hue;
    }
    return Math.sqrt(square);
  }

  /** ΔL′ / S_L, (8) and (15). */
  private static double lightness(double l1, double l2) {
    double fromMiddle = (l1 + l2) / 2 - 50;
    double square = fromMiddle * fromMiddle;
    double root = Math.sqrt(20 + square);
    return (l2 - l1) * root / (root + 0.015 * square);
  }

  /** 1 + G for a mean chroma, (4) and (5): greys are spread along a*. */
  static double stretch(double meanChroma) {
    return 1.5 - 0.5 * Math.sqrt(saturation(meanChroma));
  }

  /** C⁷ / (C⁷ + 25⁷). */
  private static double saturation(double c) {
    double square = c * c;
    double c7 = square * square * square * c;
    return c7 / (c7 + C25_7);
  }

  /** T of the mean hue, given by its cosine and sine, (15). */
  private static double t(double cos, double sin) {
    double cos2 = cos * cos - sin * sin;
    double sin2 = 2 * sin * cos;
    double cos3 = cos2 * cos - sin2 * sin;
    double sin3 = sin2 * cos + cos2 * sin;
    double cos4 = cos2 * cos2 - sin2 * sin2;
    double sin4 = 2 * sin2 * cos2;
    return 1
        - 0.17 * (COS_30 * cos + SIN_30 * sin)
        + 0.24 * cos2
        + 0.32 * (COS_6 * cos3 - SIN_6 * sin3)
        - 0.20 * (COS_63 * cos4 + SIN_63 * sin4);
  }

  /**
   * Whether a mean hue within 90° of 0° is 0° or more, not below 360°. Δθ jumps there by 0.0003°,
   * since it isn't periodic. The sign is that of sin(h₁ + h₂), and exact.
   */
  private static boolean isPastSeam(double a1, double b1, double a2, double b2) {
    double sine = a1 * b2 + a2 * b1;
    return sine > 0 || (sine == 0 && ExactSign.ofSum(a1, b2, a2, b1) >= 0);
  }

  /**
   * The same for coordinates that no colour has; refuses what isn't finite. There ΔC′/S_C and
   * ΔH′/S_H depend on the coordinates' ratios alone.
   */
  private static double ofHuge(
      double l1,
      double a1,
      double b1,
      double l2,
      double a2,
      double b2,
      double kL,
      double kC,
      double kH) {
    Require.finite("l1", l1);
    Require.finite("l2", l2);
    double scale =
        Math.min(
            scale(Require.finite("a1", a1), Require.finite("b1", b1)),
            scale(Require.finite("a2", a2), Require.finite("b2", b2)));
    double plane = deltaE(50, a1 * scale, b1 * scale, 50, a2 * scale, b2 * scale, 1, kC, kH);
    double fromMiddle = Math.abs(l1 / 2 + l2 / 2 - 50);
    double sL = 1 + 0.015 * fromMiddle * (fromMiddle / Math.hypot(Math.sqrt(20), fromMiddle));
    return Math.hypot((l2 / sL - l1 / sL) / kL, plane);
  }

  /** A factor that brings a* and b* to where their products don't overflow; 1 for real colours. */
  static double scale(double a, double b) {
    double largest = Math.max(Math.abs(a), Math.abs(b));
    return largest < LARGEST / 100 ? 1 : LARGEST / 100 / largest;
  }
}
