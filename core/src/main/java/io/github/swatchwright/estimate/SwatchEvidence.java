package io.github.swatchwright.estimate;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.optics.Viewing;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.Bands;
import io.github.swatchwright.spectrum.Reflectance;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.Arrays;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/** The two forms in which a swatch enters the estimate: as a colour, and as a reflectance. */
final class SwatchEvidence {
  /** Reflectances this near 0 or 1 look black or white: ΔE00 0.05. */
  private static final double NEAR_BLACK = 1e-4;

  private SwatchEvidence() {}

  /** A masstone as evidence, with the stated error or the form's usual one. */
  static Evidence of(Paint paint, Swatch masstone, Saunderson surface) {
    return of(masstone, paint.swatchError().orElse(masstone.usualError()), surface);
  }

  /** A masstone as evidence with a stated error. */
  static Evidence of(Swatch masstone, double sd, Saunderson surface) {
    if (masstone instanceof Swatch.OfReflectance measured) {
      return new Spectrum(measured, sd, surface);
    }
    return new Colour(masstone.lab(), sd, new Viewing(TristimulusWeights.D65, surface));
  }

  /**
   * Values of z in all bands under which a masstone is seen as stated: of a reflectance, z itself,
   * its ends held; of a colour, the smoothest that has it inside the surface.
   */
  static double[] met(Swatch masstone, Saunderson surface, Recoveries recoveries) {
    double[] internal =
        masstone instanceof Swatch.OfReflectance
            ? masstone.reflectance().toArray()
            : recoveries.of(masstone, surface).internal().toArray();
    double[] z = new double[Bands.COUNT];
    for (int band = 0; band < z.length; band++) {
      z[band] =
          masstone instanceof Swatch.OfReflectance
              ? logit(surface.internal(Math.max(internal[band], surface.k1())))
              : logit(internal[band]);
    }
    return z;
  }

  /** z of an internal reflectance, held a little above black and below white. */
  static double logit(double internal) {
    double held = Math.max(NEAR_BLACK, Math.min(1 - NEAR_BLACK, internal));
    return Math.log(held / (1 - held));
  }

  /** A reflectance with an error stated in units of L*. */
  static Spectrum spectrum(Swatch.OfReflectance measured, double sd, Saunderson surface) {
    return new Spectrum(measured, sd, surface);
  }

  /**
   * A colour: L*, a* and b* under D65 of the seen reflectance.
   *
   * @param swatch the measured colour
   * @param sd its error in each of the three
   * @param viewing daylight, and the shelf's surface
   */
  private record Colour(Lab swatch, double sd, Viewing viewing) implements Evidence {
    @Override
    public double[] observed() {
      return new double[] {swatch.l(), swatch.a(), swatch.b()};
    }

    @Override
    public double[] predict(double[] state) {
      Lab lab = viewing.lab(OpticsState.masstone(state));
      return new double[] {lab.l(), lab.a(), lab.b()};
    }

    @Override
    public double[][] jacobian(double[] state) {
      double[] internal = OpticsState.masstone(state);
      double[][] byReflectance = viewing.labSlope(internal);
      double[] slope = OpticsState.masstoneSlope(internal);
      double[][] jacobian = new double[3][state.length];
      for (int row = 0; row < 3; row++) {
        for (int i = 0; i < Bands.COUNT; i++) {
          jacobian[row][i] = byReflectance[row][i] * slope[i];
        }
      }
      return jacobian;
    }

    @Override
    public double[][] errorCovariance() {
      return diagonal(3, i -> sd * sd);
    }
  }

  /**
   * A reflectance: z itself in every band that was measured. An error of e in L* is one of
   * 3/116·R^(2/3)·e in R, and that over dR/dz in z.
   */
  static final class Spectrum implements Evidence {
    private final int[] bands;
    private final double[] logits;
    private final double[] variances;

    private Spectrum(Swatch.OfReflectance measured, double sd, Saunderson surface) {
      bands = IntStream.range(0, Bands.COUNT).filter(measured::covers).toArray();
      Reflectance seen = measured.reflectance();
      logits = new double[bands.length];
      variances = new double[bands.length];
      for (int i = 0; i < bands.length; i++) {
        double r = seen.at(bands[i]);
        logits[i] = logit(surface.internal(Math.max(r, surface.k1())));
        double internal = 1 / (1 + Math.exp(-logits[i]));
        double error = 3.0 / 116 * StrictMath.cbrt(r * r) * sd;
        double errorOfLogit = error / (surface.slope(internal) * internal * (1 - internal));
        variances[i] = errorOfLogit * errorOfLogit;
      }
    }

    /** Variances of the logits, band by band. */
    double[] variances() {
      return variances.clone();
    }

    @Override
    public double[] observed() {
      return logits.clone();
    }

    @Override
    public double[] predict(double[] state) {
      return Arrays.stream(bands).mapToDouble(band -> state[band]).toArray();
    }

    @Override
    public double[][] jacobian(double[] state) {
      double[][] jacobian = new double[bands.length][state.length];
      for (int i = 0; i < bands.length; i++) {
        jacobian[i][bands[i]] = 1;
      }
      return jacobian;
    }

    @Override
    public double[][] errorCovariance() {
      return diagonal(bands.length, i -> variances[i]);
    }
  }

  private static double[][] diagonal(int size, IntToDoubleFunction value) {
    double[][] matrix = new double[size][size];
    for (int i = 0; i < size; i++) {
      matrix[i][i] = value.applyAsDouble(i);
    }
    return matrix;
  }
}
