package io.github.swatchwright.estimate;

import io.github.swatchwright.optics.OpticalConstants;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.paint.FittedOptics;
import io.github.swatchwright.spectrum.Bands;
import java.util.Arrays;

/**
 * The layout of one paint's unknowns: z = logit of internal masstone reflectance in all bands, then
 * u = ln S in all bands; and the constants that follow from them.
 */
final class OpticsState {
  /** Number of unknowns of a paint. */
  static final int SIZE = 2 * Bands.COUNT;

  /** z and u beyond this are cut: a reflectance of e^−40 is dark enough for any paint. */
  private static final double STEEPEST = 40;

  private OpticsState() {}

  /** The unknowns as a fit left them: z, then u. */
  static double[] of(FittedOptics fitted) {
    double[] state = Arrays.copyOf(fitted.z(), SIZE);
    System.arraycopy(fitted.u(), 0, state, Bands.COUNT, Bands.COUNT);
    return state;
  }

  /** Changes z so that the masstone looks through another surface as it did through the first. */
  static void seeThrough(double[] state, Saunderson first, Saunderson other) {
    double[] internal = masstone(state);
    for (int band = 0; band < internal.length; band++) {
      double seen = Math.max(other.k1(), first.seen(internal[band]));
      state[band] = SwatchEvidence.logit(other.internal(seen));
    }
  }

  /** Internal masstone reflectance R = 1 / (1 + e^−z), all bands. */
  static double[] masstone(double[] state) {
    double[] r = new double[Bands.COUNT];
    for (int i = 0; i < r.length; i++) {
      r[i] = 1 / (1 + Math.exp(-cut(state[i])));
    }
    return r;
  }

  /** q = (1 − R)²/2R = e^−z / 2(1 + e^z), K = qS, S = e^u. */
  static OpticalConstants constants(double[] state) {
    return constants(state, 0);
  }

  /** The same for paint that is e^{@code logStrength} times as strong. */
  static OpticalConstants constants(double[] state, double logStrength) {
    double[] k = new double[Bands.COUNT];
    double[] s = new double[Bands.COUNT];
    for (int i = 0; i < k.length; i++) {
      double z = cut(state[i]);
      s[i] = Math.exp(cut(state[Bands.COUNT + i] + logStrength));
      k[i] = s[i] * Math.exp(-z) / (2 * (1 + Math.exp(z)));
    }
    return OpticalConstants.of(k, s);
  }

  /** ∂R/∂z = R(1 − R) for all bands, given R. */
  static double[] masstoneSlope(double[] masstone) {
    return Arrays.stream(masstone).map(r -> r * (1 - r)).toArray();
  }

  private static double cut(double value) {
    return Math.max(-STEEPEST, Math.min(STEEPEST, value));
  }
}
