package io.github.swatchwright.ciede2000;

import io.github.swatchwright.colour.Lab;

/**
 * The metric hue difference ΔH = 2·√(C₁C₂)·sin(Δh/2) of two vectors of the chroma plane, without
 * angles: from C₁C₂·sin Δh, their cross product, and C₁C₂·cos Δh, their dot product. Of the two
 * half-angle forms, 2·cross/√(2(C₁C₂ + dot)) and ±√(2(C₁C₂ − dot)), the one is taken that doesn't
 * cancel.
 */
public final class HueDifference {
  private HueDifference() {}

  /** ΔH*ab of two colours, sample from reference; 0 when either is neutral. */
  public static double of(Lab reference, Lab sample) {
    return of(reference.a(), reference.b(), sample.a(), sample.b(), 1);
  }

  /** ΔH of two vectors of the chroma plane, both a* stretched first; 0 when either is 0. */
  public static double of(double a1, double b1, double a2, double b2, double stretch) {
    double product = Math.hypot(stretch * a1, b1) * Math.hypot(stretch * a2, b2);
    if (product == 0) {
      return 0;
    }
    double dot = stretch * a1 * (stretch * a2) + b1 * b2;
    double halfAngle = Math.sqrt(2 * (product + Math.abs(dot)));
    return dot >= 0
        ? stretch * twiceCross(a1, b1, a2, b2) / halfAngle
        : side(a1, b1, a2, b2) * halfAngle;
  }

  /**
   * 2·(a₁b₂ − a₂b₁), positive when the second vector is counter-clockwise of the first; written so
   * that it keeps its digits for vectors that hardly differ.
   */
  static double twiceCross(double a1, double b1, double a2, double b2) {
    return (a1 + a2) * (b2 - b1) - (a2 - a1) * (b1 + b2);
  }

  /**
   * The exact sign of a₁b₂ − a₂b₁: 1 when the second vector is counter-clockwise of the first, or
   * −1. For hues exactly 180° apart it is the sign of h₂ − h₁ with both in 0° to below 360°, as
   * ISO/CIE 11664-6 takes it.
   */
  static int side(double a1, double b1, double a2, double b2) {
    int sign = ExactSign.ofSum(a1, b2, -a2, b1);
    return sign == 0 ? opposite(a1, b1) : sign;
  }

  /** 1 when the first hue is below 180°, so that its opposite is the greater one; else −1. */
  private static int opposite(double a1, double b1) {
    return b1 > 0 || (b1 == 0 && a1 > 0) ? 1 : -1;
  }
}
