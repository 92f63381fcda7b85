package io.github.swatchwright.photo;

import io.github.swatchwright.colour.Xyz;
import io.github.swatchwright.spectrum.Illuminant;
import io.github.swatchwright.spectrum.Observer;
import io.github.swatchwright.spectrum.TristimulusWeights;

/**
 * The colours that white light may have: those near the Planckian locus, in the CIE 1960 uniform
 * chromaticity diagram. A grey patch that is elsewhere isn't grey.
 */
final class LightLocus {
  /** Lamps sold as white are within 0.006 (ANSI C78.377, from memory); a camera adds as much. */
  private static final double REACH = 0.015;

  /** From a dim filament lamp to a blue sky (common practice). */
  private static final double[] TEMPERATURES = {2600, 3400, 4200, 5500, 7500, 12_000, 30_000};

  /** Planck's second radiation constant in nm·K. */
  private static final double C2 = 1.438777e7;

  private LightLocus() {}

  static boolean holds(Xyz grey) {
    double[] at = uv(grey);
    double[] from = uv(planckian(TEMPERATURES[0]));
    for (int i = 1; i < TEMPERATURES.length; i++) {
      double[] to = uv(planckian(TEMPERATURES[i]));
      if (distance(at, from, to) <= REACH) {
        return true;
      }
      from = to;
    }
    return false;
  }

  private static Xyz planckian(double kelvin) {
    double[] power = new double[41];
    for (int i = 0; i < power.length; i++) {
      double nm = 380 + 10 * i;
      power[i] = Math.pow(nm / 560, -5) / Math.expm1(C2 / (nm * kelvin)) * 1e3;
    }
    Illuminant light = Illuminant.ofSamples("Planckian", 380, 10, power);
    return TristimulusWeights.of(light, Observer.CIE_1931).whitePoint().toXyz();
  }

  private static double[] uv(Xyz colour) {
    double d = colour.x() + 15 * colour.y() + 3 * colour.z();
    return new double[] {4 * colour.x() / d, 6 * colour.y() / d};
  }

  private static double distance(double[] p, double[] from, double[] to) {
    double u = to[0] - from[0];
    double v = to[1] - from[1];
    double along = ((p[0] - from[0]) * u + (p[1] - from[1]) * v) / (u * u + v * v);
    double t = Math.max(0, Math.min(1, along));
    return Math.hypot(p[0] - from[0] - t * u, p[1] - from[1] - t * v);
  }
}
