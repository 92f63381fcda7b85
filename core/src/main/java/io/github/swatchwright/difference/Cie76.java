package io.github.swatchwright.difference;

import io.github.swatchwright.colour.Lab;

/**
 * CIE 1976 ΔE*ab (CIE 15:2018, 8.2.1.3): the plain distance in CIELAB. It makes differences between
 * vivid colours two to four times too large. A symmetric formula, and a true metric.
 */
public final class Cie76 {
  private Cie76() {}

  /**
   * ΔE*ab of two colours.
   *
   * @throws IllegalArgumentException when the colours are relative to different whites
   */
  public static double deltaE(Lab first, Lab second) {
    SameWhite.require(first, second);
    return Math.hypot(
        second.l() - first.l(), Math.hypot(second.a() - first.a(), second.b() - first.b()));
  }
}
