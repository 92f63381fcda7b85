package io.github.swatchwright.difference;

import io.github.swatchwright.ciede2000.HueDifference;
import io.github.swatchwright.colour.Lab;

/**
 * CIE94 ΔE*94 (CIE 116-1995), weighted by the reference's chroma: swapping reference and sample
 * changes the result.
 */
public final class Cie94 {
  /** For graphic arts: kL = 1, K1 = 0.045, K2 = 0.015. */
  public static final Cie94 GRAPHIC_ARTS = new Cie94(1, 0.045, 0.015);

  /** For textiles: kL = 2, K1 = 0.048, K2 = 0.014. */
  public static final Cie94 TEXTILES = new Cie94(2, 0.048, 0.014);

  private final double kL;
  private final double k1;
  private final double k2;

  private Cie94(double kL, double k1, double k2) {
    this.kL = kL;
    this.k1 = k1;
    this.k2 = k2;
  }

  /**
   * ΔE*94 of a sample from a reference.
   *
   * @throws IllegalArgumentException when the colours are relative to different whites
   */
  public double deltaE(Lab reference, Lab sample) {
    SameWhite.require(reference, sample);
    double c1 = reference.chroma();
    double lightness = (sample.l() - reference.l()) / kL;
    double chroma = (sample.chroma() - c1) / (1 + k1 * c1);
    double hue = HueDifference.of(reference, sample) / (1 + k2 * c1);
    return Math.hypot(lightness, Math.hypot(chroma, hue));
  }
}
