package io.github.swatchwright.estimate;

import io.github.swatchwright.colour.Lab;
import java.util.Arrays;

/**
 * A belief about scattering: ln S is a level, the same in all bands, plus a smooth shape. Where
 * nothing is known of a paint's hiding, its make and its masstone say what to expect.
 *
 * <p><b>Single pigments</b> scatter the less the darker they are; level and spread were found on
 * measured artists' paints. A black is strong by what it absorbs: its K, not its S, is much the
 * same from one to the next. Carbon black has K = 7.1 and S = 0.70 at 550 nm where white has S = 1
 * (Okumura 2005, thesis, RIT), and is the strongest of the common blacks (common practice; no
 * figures), so that K = 5 is expected.
 *
 * <p><b>Ready-mixed paints</b> are made to hide: in about one coat where they are dark, in three
 * where they are light (common practice; no figures). So a light one scatters like the white that
 * it is mixed with, and a dark one holds little white: its S falls with its lightness, and its K
 * stays where the pigment that paint can hold leaves it. Nobody knows a dark one's share of white,
 * so the spread grows as the level falls.
 *
 * @param mean mean of the level
 * @param sd standard deviation of the level
 * @param shapeSd standard deviation of the shape in each band
 */
record Scattering(double mean, double sd, double shapeSd) {
  /** A paint that nobody has seen unmixed: any make. */
  static final Scattering UNSEEN = new Scattering(-2, 1.3, 0.65);

  private static final double WHITE_SD = 0.2;

  /** Two whites scatter alike over the bands: what is left is their pigment's size. */
  private static final double WHITE_SHAPE_SD = 0.08;

  /** Of a light ready-mixed paint: how far its share of white and binder may lie from usual. */
  private static final double READY_MIXED_SD = 0.25;

  private static final double PIGMENT_SD = 1;
  private static final double PIGMENT_SHAPE_SD = 0.45;
  private static final Scattering WHITE_BASE = new Scattering(0, WHITE_SD, WHITE_SHAPE_SD);

  private static final double WHITE_LIGHTNESS = 90;
  private static final double WHITE_CHROMA = 8;
  private static final double BLACK_LIGHTNESS = 35;
  private static final double BLACK_CHROMA = 5;
  private static final double BLACK_ABSORPTION = 5;

  private static final double DARK = 20;
  private static final double DARK_COATS = 1.1;
  private static final double LIGHT = 90;
  private static final double LIGHT_COATS = 3;

  /** How much the spreads of level and shape grow where ln S is one lower than white's. */
  private static final double SD_SLOPE = 0.2;

  private static final double SHAPE_SLOPE = 0.1;

  /**
   * What to expect of a ready-mixed paint.
   *
   * @param masstone its colour (D65)
   * @param unitCoats coats until it hides if S were 1 in all bands
   */
  static Scattering ofReadyMixed(Lab masstone, double unitCoats) {
    if (isWhite(masstone)) {
      return WHITE_BASE;
    }
    double lightness = Math.max(DARK, Math.min(LIGHT, masstone.l()));
    double share = (lightness - DARK) / (LIGHT - DARK);
    double logCoats = (1 - share) * Math.log(DARK_COATS) + share * Math.log(LIGHT_COATS);
    double level = Math.min(0, Math.log(unitCoats) - logCoats);
    double below = Math.min(3, -level);
    return new Scattering(
        level, READY_MIXED_SD + SD_SLOPE * below, WHITE_SHAPE_SD + SHAPE_SLOPE * below);
  }

  /**
   * What to expect of a paint of one pigment.
   *
   * @param masstone its colour (D65)
   * @param internal its internal reflectance at full hiding, all bands
   */
  static Scattering ofPigment(Lab masstone, double[] internal) {
    if (isWhite(masstone)) {
      return WHITE_BASE;
    }
    double level =
        isBlack(masstone)
            ? Math.log(BLACK_ABSORPTION) - meanLogQ(internal)
            : -4.4 + 0.031 * masstone.l();
    return new Scattering(level, PIGMENT_SD, PIGMENT_SHAPE_SD);
  }

  /** Mean of ln q = ln K/S over all bands. */
  private static double meanLogQ(double[] internal) {
    return Arrays.stream(internal)
        .map(r -> Math.log((1 - r) * (1 - r) / (2 * r)))
        .average()
        .orElseThrow();
  }

  private static boolean isBlack(Lab masstone) {
    return masstone.l() <= BLACK_LIGHTNESS && masstone.chroma() <= BLACK_CHROMA;
  }

  private static boolean isWhite(Lab masstone) {
    return masstone.l() >= WHITE_LIGHTNESS && masstone.chroma() <= WHITE_CHROMA;
  }
}
