package io.github.swatchwright.difference;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.ciede2000.HueDifference;
import io.github.swatchwright.colour.Lab;

/**
 * CMC(l:c) of the Society of Dyers and Colourists (Clarke, McDonald and Rigg 1984; ISO 105-J03),
 * weighted by the reference: swapping reference and sample changes the result.
 */
public final class Cmc {
  /** CMC(2:1), for judging whether a difference is acceptable. */
  public static final Cmc ACCEPTABILITY = new Cmc(2, 1);

  /** CMC(1:1), for judging whether a difference can be seen. */
  public static final Cmc PERCEPTIBILITY = new Cmc(1, 1);

  private final double l;
  private final double c;

  private Cmc(double l, double c) {
    this.l = l;
    this.c = c;
  }

  /**
   * CMC with other relative tolerances.
   *
   * @param l tolerance of lightness, above 0
   * @param c tolerance of chroma, above 0
   */
  public static Cmc withTolerances(double l, double c) {
    return new Cmc(Require.positive("l", l), Require.positive("c", c));
  }

  /**
   * ΔE CMC(l:c) of a sample from a reference.
   *
   * @throws IllegalArgumentException when the colours are relative to different whites
   */
  public double deltaE(Lab reference, Lab sample) {
    SameWhite.require(reference, sample);
    double c1 = reference.chroma();
    double sC = 0.0638 * c1 / (1 + 0.0131 * c1) + 0.638;
    double lightness = (sample.l() - reference.l()) / (l * lightnessWeight(reference.l()));
    double chroma = (sample.chroma() - c1) / (c * sC);
    double hue = HueDifference.of(reference, sample) / (sC * hueFactor(reference));
    return Math.hypot(lightness, Math.hypot(chroma, hue));
  }

  /** S_L. */
  private static double lightnessWeight(double l1) {
    return l1 < 16 ? 0.511 : 0.040975 * l1 / (1 + 0.01765 * l1);
  }

  /** S_H / S_C = F·T + 1 − F; without a hue F is 0, and T doesn't matter. */
  private static double hueFactor(Lab reference) {
    double h1 = reference.hueDegrees().orElse(0);
    double t =
        h1 >= 164 && h1 <= 345
            ? 0.56 + Math.abs(0.2 * Math.cos(Math.toRadians(h1 + 168)))
            : 0.36 + Math.abs(0.4 * Math.cos(Math.toRadians(h1 + 35)));
    double c1 = reference.chroma();
    double f = 1 / Math.sqrt(1 + 1900 / (c1 * c1 * c1 * c1));
    return f * t + 1 - f;
  }
}
