package io.github.swatchwright.sheet;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.WhitePoint;
import io.github.swatchwright.colour.Xyz;
import io.github.swatchwright.optics.Saunderson;

/**
 * One stroke of unknown thickness over a dark and a light base: what it would look like at full
 * hiding, and how well it hides. Kubelka's film equations (Kubelka 1948) are solved for the film's
 * own reflectance R0 and transmittance T from the two colours, inside the surface, for X, Y and Z
 * as if each were a band of the spectrum.
 *
 * @param masstone the colour at full hiding, relative to D65
 * @param contrastRatio Y of this stroke over black of Y = 5 % to Y over white of Y = 80 %
 */
public record Drawdown(Lab masstone, double contrastRatio) {
  private static final double BLACK = 0.05;
  private static final double WHITE = 0.80;

  /** The part of what lies below a surface that its gloss hides can't be more than this. */
  private static final double MOST_SURFACE = 0.04;

  private static final double K2 = 0.4;

  /** The film in one band: reflectance over nothing, and transmittance squared. */
  private record Layer(double r0, double t2) {
    /**
     * From R over g and over w: R = R0 + T² Rg / (1 − R0 Rg), twice; R0 drops out linearly.
     *
     * @param overBlack internal reflectance over the base g
     * @param overWhite internal reflectance over the base w
     */
    static Layer of(double overBlack, double overWhite, double g, double w) {
      double gained = Math.max(overWhite - overBlack, 0);
      double below = Math.max(1e-6, w - g - w * g * gained);
      double r0 = Math.max(1e-5, Math.min(0.98, (w * overBlack - g * overWhite) / below));
      double t2 = Math.max(0, (overWhite - r0) * (1 - r0 * w) / w);
      double most = (1 - r0) * (1 - r0);
      return new Layer(r0, Math.min(most, gained == 0 ? 0 : t2));
    }

    double over(double base) {
      return r0 + t2 * base / (1 - r0 * base);
    }

    /** a = (1 + R0² − T²)/2R0 = 1 + K/S; R∞ = a − √(a² − 1). */
    double masstone() {
      double a = Math.max(1, (1 + r0 * r0 - t2) / (2 * r0));
      return Math.min(0.99, a - Math.sqrt(a * a - 1));
    }
  }

  /**
   * The drawdown by four colours, all relative to D65.
   *
   * @param overBlack the stroke over the dark base
   * @param overPaper the stroke over the light base
   * @param black the dark base
   * @param paper the light base
   */
  static Drawdown of(Lab overBlack, Lab overPaper, Lab black, Lab paper) {
    double[] onBlack = relative(overBlack);
    double[] onPaper = relative(overPaper);
    double[] dark = relative(black);
    double[] light = relative(paper);
    double least = MOST_SURFACE / 0.9;
    for (int i = 0; i < 3; i++) {
      least = Math.min(least, Math.min(Math.min(onBlack[i], onPaper[i]), dark[i]));
    }
    Saunderson surface = new Saunderson(Math.max(0, 0.9 * least), K2);
    double[] masstone = new double[3];
    double ratio = 1;
    for (int i = 0; i < 3; i++) {
      Layer layer =
          Layer.of(
              surface.internal(onBlack[i]),
              surface.internal(Math.max(onBlack[i], onPaper[i])),
              surface.internal(dark[i]),
              surface.internal(Math.max(light[i], dark[i] + 0.05)));
      masstone[i] = surface.seen(layer.masstone());
      if (i == 1) {
        ratio =
            surface.seen(layer.over(surface.internal(BLACK)))
                / surface.seen(layer.over(surface.internal(WHITE)));
      }
    }
    WhitePoint white = WhitePoint.D65;
    Xyz colour =
        new Xyz(
            masstone[0] * white.xn(), masstone[1] * white.yn(), masstone[2] * white.zn(), white);
    return new Drawdown(colour.toLab(), Math.max(0.01, Math.min(1, ratio)));
  }

  private static double[] relative(Lab lab) {
    Xyz xyz = lab.toXyz();
    WhitePoint white = xyz.white();
    return new double[] {
      held(xyz.x() / white.xn()), held(xyz.y() / white.yn()), held(xyz.z() / white.zn())
    };
  }

  private static double held(double share) {
    return Math.max(0.0015, Math.min(0.985, share));
  }
}
