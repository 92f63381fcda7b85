package io.github.swatchwright.estimate;

import io.github.swatchwright.optics.Film;
import io.github.swatchwright.optics.OpticalConstants;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.optics.Viewing;
import io.github.swatchwright.paint.Drawdown;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.Bands;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.Arrays;

/**
 * A stroke over black and over white as evidence. The unknowns are those of its paint, z and u in
 * all bands, and after them ln X, the stroke's thickness in coats, which both halves share.
 *
 * <p>Colours are observed as L*, a* and b*, reflectances as logits of internal reflectance; over
 * black first, then over white. Both halves are read in one go, so that most of their error is
 * common to both: it moves the colour, and hardly what the paint hides.
 */
final class DrawdownEvidence implements Evidence {
  /** Slopes are taken as differences between these shares. */
  private static final double MORE = 1 + 1e-5;

  private static final double LESS = 1 - 1e-5;

  /** Reflectances are held this far from black and from white: ΔE00 0.05. */
  private static final double EDGE = 1e-4;

  private final Drawdown drawdown;
  private final Half black;
  private final Half white;
  private final Errors errors;

  /**
   * How well a stroke was measured and made.
   *
   * @param common error that both halves share with their bases, sd of L*, a* and b*
   * @param own error of each half by itself, the same
   * @param modelError how far films stray from the model, mean ΔE00
   */
  record Errors(double common, double own, double modelError) {
    double whole() {
      return Math.hypot(common, own);
    }
  }

  DrawdownEvidence(Drawdown drawdown, Errors errors, Saunderson surface) {
    Viewing viewing = new Viewing(TristimulusWeights.D65, surface);
    this.drawdown = drawdown;
    this.errors = errors;
    black = new Half(drawdown.black(), errors, viewing);
    white = new Half(drawdown.white(), errors, viewing);
  }

  @Override
  public double[] observed() {
    return joined(black.readout.observed(), white.readout.observed());
  }

  @Override
  public double[] predict(double[] state) {
    return joined(black.predict(state), white.predict(state));
  }

  @Override
  public double[][] jacobian(double[] state) {
    double[][] first = black.jacobian(state);
    double[][] second = white.jacobian(state);
    double[][] jacobian = Arrays.copyOf(first, first.length + second.length);
    System.arraycopy(second, 0, jacobian, first.length, second.length);
    return jacobian;
  }

  @Override
  public double[][] errorCovariance() {
    double[] variances = joined(black.readout.variances(), white.readout.variances());
    int half = black.readout.variances().length;
    double[][] covariance = new double[variances.length][variances.length];
    if (black.isColour() && white.isColour()) {
      addShared(covariance);
    } else {
      for (int i = 0; i < variances.length; i++) {
        covariance[i][i] = variances[i];
      }
    }
    black.addModelError(covariance, 0);
    white.addModelError(covariance, half);
    return covariance;
  }

  /** What both colours share leaves in them what their bases don't explain. */
  private void addShared(double[][] covariance) {
    double[][] left = SharedError.left(drawdown);
    for (int i = 0; i < covariance.length; i++) {
      covariance[i][i] = errors.own() * errors.own();
      for (int j = 0; j < covariance.length; j++) {
        covariance[i][j] += errors.common() * errors.common() * LowerTriangle.dot(left[i], left[j]);
      }
    }
  }

  private static double[] joined(double[] first, double[] second) {
    double[] joined = Arrays.copyOf(first, first.length + second.length);
    System.arraycopy(second, 0, joined, first.length, second.length);
    return joined;
  }

  /** One base and what was measured over it. */
  private static final class Half {
    private final Viewing viewing;
    private final double modelError;
    private final PatchReadout readout;
    private final double[] base;
    private final double[] measuredInternal;

    private Half(Drawdown.Half half, Errors errors, Viewing viewing) {
      this.viewing = viewing;
      modelError = errors.modelError();
      Swatch measured = half.measured();
      readout =
          measured instanceof Swatch.OfReflectance bands
              ? new PatchReadout.Logits(
                  SwatchEvidence.spectrum(bands, errors.whole(), viewing.surface()))
              : new PatchReadout.Colour(measured.lab(), viewing, errors.whole());
      base = internal(half.base());
      measuredInternal = internal(measured);
    }

    private boolean isColour() {
      return readout instanceof PatchReadout.Colour;
    }

    private double[] internal(Swatch swatch) {
      Saunderson surface = viewing.surface();
      return Arrays.stream(swatch.reflectance().toArray())
          .map(r -> surface.internal(Math.max(r, surface.k1())))
          .map(r -> Math.max(EDGE, Math.min(1 - EDGE, r)))
          .toArray();
    }

    /** The model's error where it was measured, so that it is the same in all steps. */
    private void addModelError(double[][] covariance, int from) {
      if (modelError > 0) {
        double[][] error =
            ModelError.of(modelError, measuredInternal, readout.slopes(measuredInternal), viewing);
        for (int i = 0; i < error.length; i++) {
          for (int j = 0; j < error.length; j++) {
            covariance[from + i][from + j] += error[i][j];
          }
        }
      }
    }

    private double[] film(double[] state) {
      return OpticsState.constants(state).filmOver(thickness(state), base);
    }

    private static double thickness(double[] state) {
      return Film.COAT * Math.exp(state[OpticsState.SIZE]);
    }

    private double[] predict(double[] state) {
      return readout.of(film(state));
    }

    /** ∂R/∂u = K·∂R/∂K + S·∂R/∂S = X·∂R/∂X; ∂K/∂z = −K(1 + R∞). */
    private double[][] jacobian(double[] state) {
      double[][] byInternal = readout.slopes(film(state));
      double[] masstone = OpticsState.masstone(state);
      OpticalConstants constants = OpticsState.constants(state);
      double x = thickness(state);
      double[][] jacobian = new double[byInternal.length][state.length];
      for (int band = 0; band < Bands.COUNT; band++) {
        double k = constants.k(band);
        double s = constants.s(band);
        double byLogK = (over(k * MORE, s, x, band) - over(k * LESS, s, x, band)) / (MORE - LESS);
        double byLogS = (over(k, s * MORE, x, band) - over(k, s * LESS, x, band)) / (MORE - LESS);
        for (int row = 0; row < jacobian.length; row++) {
          double slope = byInternal[row][band];
          jacobian[row][band] = -slope * byLogK * (1 + masstone[band]);
          jacobian[row][Bands.COUNT + band] = slope * (byLogK + byLogS);
          jacobian[row][OpticsState.SIZE] += slope * (byLogK + byLogS);
        }
      }
      return jacobian;
    }

    private double over(double k, double s, double x, int band) {
      return new Film(k, s, x).reflectanceOver(base[band]);
    }
  }
}
