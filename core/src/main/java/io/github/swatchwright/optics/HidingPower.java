package io.github.swatchwright.optics;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.spectrum.Bands;
import java.util.Arrays;

/**
 * How well a film hides: the contrast ratio of ISO 6504-3, Y over a black of Y = 5 % divided by Y
 * over a white of Y = 80 %.
 *
 * @param viewing the light that Y is computed for, and the surface, which film and card share
 */
public record HidingPower(Viewing viewing) {

  /** Reflectance of the card's black, as seen. */
  public static final double BLACK = 0.05;

  /** Reflectance of the card's white, as seen. */
  public static final double WHITE = 0.80;

  /** The contrast ratio from which on a film is said to hide. */
  public static final double HIDES = 0.98;

  /** No film is thicker than this many coats when {@link #coatsToHide} gives up. */
  private static final double MOST_COATS = 1e6;

  /**
   * Contrast ratio of a film, 0 to 1.
   *
   * @param constants the film's paint
   * @param x its thickness, at least 0
   */
  public double contrastRatio(OpticalConstants constants, double x) {
    return seenY(constants, x, BLACK) / seenY(constants, x, WHITE);
  }

  private double seenY(OpticalConstants constants, double x, double card) {
    Saunderson surface = viewing.surface();
    double[] base = new double[Bands.COUNT];
    Arrays.fill(base, surface.internal(Math.max(card, surface.k1())));
    return viewing.xyz(constants.filmOver(x, base)).y();
  }

  /**
   * The number of coats, not whole, at which the contrast ratio reaches {@link #HIDES}: by
   * bisection on its logarithm, since more paint never hides less.
   *
   * @return coats of thickness {@value Film#COAT}, relative error below 1e-9; a million when even
   *     that many don't hide
   */
  public double coatsToHide(OpticalConstants constants) {
    double thin = 1e-6;
    double thick = MOST_COATS;
    while (thick / thin > 1 + 1e-9) {
      double middle = Math.sqrt(thin * thick);
      if (contrastRatio(constants, middle * Film.COAT) < HIDES) {
        thin = middle;
      } else {
        thick = middle;
      }
    }
    return Require.positive("coats", thick);
  }
}
