package io.github.swatchwright.colour;

/**
 * The curve that turns X/Xn, Y/Yn and Z/Zn into even steps of lightness, its inverse and its slope:
 * the f of CIELAB, with the exact constants of CIE 15:2018. {@link Xyz#toLab()} uses it; the slope
 * is for searches that follow how a colour changes.
 *
 * <p>Roots are {@link StrictMath}'s: {@link Math#cbrt} differs in its last bit between versions of
 * Java, and a result is to be the same in all of them.
 */
public final class CielabCurve {
  static final double EPSILON = 216.0 / 24389;
  private static final double KAPPA = 24389.0 / 27;

  private CielabCurve() {}

  /** f(t): the cube root, with its straight start below ε. */
  static double encode(double t) {
    return t > EPSILON ? StrictMath.cbrt(t) : (KAPPA * t + 16) / 116;
  }

  /**
   * How steeply the curve rises, f′(t): 1/(3·t^(2/3)), or κ/116 on its straight start.
   *
   * @param t X/Xn, Y/Yn or Z/Zn
   */
  public static double slope(double t) {
    double root = StrictMath.cbrt(t);
    return t > EPSILON ? 1 / (3 * root * root) : KAPPA / 116;
  }

  /** The inverse: the t that has this f. */
  static double decode(double f) {
    double cube = f * f * f;
    return cube > EPSILON ? cube : (116 * f - 16) / KAPPA;
  }
}
