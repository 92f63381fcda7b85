package io.github.swatchwright.optics;

import io.github.swatchwright.argument.BadArgumentException;
import io.github.swatchwright.argument.Require;

/**
 * A colourant's constants in one band from its masstone and one tint with a white of known
 * constants (Duncan 1940, solved for one unknown).
 *
 * <p>Sp = (cw/cp)·(qt·Sw − Kw) / (qm − qt), Kp = qm·Sp. Noisy where tint and masstone nearly agree.
 *
 * @param k absorption K of the colourant
 * @param s scattering S of the colourant
 */
public record TintWithWhite(double k, double s) {

  /**
   * Solves one band.
   *
   * @param qMasstone K/S of the masstone
   * @param qTint K/S of the tint, between the white's and the masstone's
   * @param whiteToColourant volume of white for one volume of colourant, above 0
   * @param kWhite absorption of the white, at least 0
   * @param sWhite scattering of the white, above 0
   * @throws IllegalArgumentException when the tint doesn't lie between white and masstone
   */
  public static TintWithWhite of(
      double qMasstone, double qTint, double whiteToColourant, double kWhite, double sWhite) {
    Require.nonNegative("qMasstone", qMasstone);
    Require.nonNegative("qTint", qTint);
    Require.positive("whiteToColourant", whiteToColourant);
    Require.nonNegative("kWhite", kWhite);
    Require.positive("sWhite", sWhite);
    double s = whiteToColourant * (qTint * sWhite - kWhite) / (qMasstone - qTint);
    if (!(s > 0 && s < Double.POSITIVE_INFINITY)) {
      throw new BadArgumentException(
          "qTint",
          "is "
              + qTint
              + ", must lie between the white's "
              + kWhite / sWhite
              + " and the masstone's "
              + qMasstone);
    }
    return new TintWithWhite(qMasstone * s, s);
  }
}
