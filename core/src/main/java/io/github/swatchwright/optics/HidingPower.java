package io.github.swatchwright.optics;

import io.github.swatchwright.argument.Require;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

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

  /** Most paints hide in a number of coats between these. */
  private static final double FEW_COATS = 0.05;

  private static final double MANY_COATS = 20;

  /** Films are looked for between these numbers of coats. */
  private static final double FEWEST_COATS = 1e-6;

  private static final double MOST_COATS = 1e6;

  /** A ratio within this of 1 is full hiding to the last digit. */
  private static final double ROUNDING = 1e-15;

  private static final int MOST_TRIALS = 200;

  /**
   * Contrast ratio of a film, 0 to 1.
   *
   * @param constants the film's paint
   * @param x its thickness, at least 0
   */
  public double contrastRatio(OpticalConstants constants, double x) {
    double[][] films = overCards(constants, x);
    return viewing.y(films[0]) / viewing.y(films[1]);
  }

  /**
   * A film on the card.
   *
   * @param constants the film's paint
   * @param x its thickness, at least 0
   * @return internal reflectance in all bands: over black in the first row, over white in the
   *     second
   */
  public double[][] overCards(OpticalConstants constants, double x) {
    Require.nonNegative("x", x);
    return constants.filmOver(x, internal(BLACK), internal(WHITE));
  }

  private double internal(double card) {
    Saunderson surface = viewing.surface();
    return surface.internal(Math.max(card, surface.k1()));
  }

  /**
   * The number of coats, not whole, at which the contrast ratio reaches {@link #HIDES}.
   *
   * @return coats of thickness {@value Film#COAT}, relative error below 1e-9; a million when even
   *     that many don't hide
   */
  public double coatsToHide(OpticalConstants constants) {
    return thickness(constants, HIDES) / Film.COAT;
  }

  /**
   * The thickness at which the contrast ratio reaches a value: a root of ln(1 − ratio) over ln X,
   * which is unique since more paint never hides less.
   *
   * @param constants the film's paint
   * @param ratio contrast ratio to reach, above 0 to below 1
   * @return thickness, relative error below 1e-9, within a millionth and a million coats
   */
  public double thickness(OpticalConstants constants, double ratio) {
    Require.positive("ratio", ratio);
    Require.within("ratio", ratio, 0, Math.nextDown(1.0));
    double target = Math.log1p(-ratio);
    UnivariateFunction off =
        logX -> Math.log(Math.max(ROUNDING, 1 - contrastRatio(constants, Math.exp(logX)))) - target;
    double thin = Math.log(FEW_COATS * Film.COAT);
    double thick = Math.log(MANY_COATS * Film.COAT);
    if (off.value(thin) > 0 && off.value(thick) < 0) {
      return root(off, thin, thick);
    }
    thin = Math.log(FEWEST_COATS * Film.COAT);
    thick = Math.log(MOST_COATS * Film.COAT);
    if (off.value(thin) <= 0) {
      return Math.exp(thin);
    }
    return off.value(thick) >= 0 ? Math.exp(thick) : root(off, thin, thick);
  }

  private static double root(UnivariateFunction off, double thin, double thick) {
    return Math.exp(new BrentSolver(1e-10, 1e-10).solve(MOST_TRIALS, off, thin, thick));
  }
}
