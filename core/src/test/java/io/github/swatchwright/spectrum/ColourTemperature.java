package io.github.swatchwright.spectrum;

import io.github.swatchwright.colour.WhitePoint;

/**
 * Correlated colour temperature by its definition (CIE 15:2018, 9.5): the Planckian radiator whose
 * (u′, 2/3·v′) lies nearest; for the tests alone, by plain search.
 */
final class ColourTemperature {
  private ColourTemperature() {}

  static double nearestPlanckian(WhitePoint white) {
    double best = 0;
    double bestDistance = Double.MAX_VALUE;
    for (double kelvin = 3000; kelvin < 7000; kelvin++) {
      double distance = distance(white, planckian(kelvin));
      if (distance < bestDistance) {
        bestDistance = distance;
        best = kelvin;
      }
    }
    return best;
  }

  private static double distance(WhitePoint a, WhitePoint b) {
    double du = u(a) - u(b);
    double dv = v(a) - v(b);
    return du * du + dv * dv;
  }

  private static double u(WhitePoint w) {
    return 4 * w.xn() / (w.xn() + 15 * w.yn() + 3 * w.zn());
  }

  private static double v(WhitePoint w) {
    return 6 * w.yn() / (w.xn() + 15 * w.yn() + 3 * w.zn());
  }

  private static WhitePoint planckian(double kelvin) {
    double[] power = new double[CieTable.ROWS];
    for (int row = 0; row < power.length; row++) {
      double nm = CieTable.FIRST_NM + row * CieTable.STEP_NM;
      power[row] = Math.pow(560 / nm, 5) / Math.expm1(1.438776877e7 / (nm * kelvin));
    }
    double[] xyz = new double[3];
    double[][] matching = Observer.CIE_1931.matchingFunctions();
    for (int channel = 0; channel < 3; channel++) {
      xyz[channel] = LogitSpectrum.dot(power, matching[channel]);
    }
    return new WhitePoint(100 * xyz[0] / xyz[1], 100, 100 * xyz[2] / xyz[1]);
  }
}
