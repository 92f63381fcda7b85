package io.github.swatchwright.estimate;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.optics.Viewing;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.Bands;
import java.util.Arrays;

/** What of a patch's internal reflectance was measured: a colour, or a reflectance. */
interface PatchReadout {

  /**
   * The readout that the patch was measured by.
   *
   * @param width how many neighbouring bands of a reflectance are taken together, at least 1
   */
  static PatchReadout of(PaintedPatch patch, Viewing viewing, int width) {
    if (!(patch.measured() instanceof Swatch.OfReflectance measured)) {
      return new Colour(patch.measured().lab(), viewing, patch.colourError());
    }
    PatchReadout bands =
        new Logits(SwatchEvidence.spectrum(measured, patch.colourError(), viewing.surface()));
    return width == 1 ? bands : new Merged(bands, width);
  }

  /** A copy of the measured values. */
  double[] observed();

  /** The values that an internal reflectance, all bands, would have given. */
  double[] of(double[] internal);

  /** Derivatives: a row for each value, a column for the internal reflectance of each band. */
  double[][] slopes(double[] internal);

  /** Variances of the values' own errors. */
  double[] variances();

  /**
   * L*, a* and b*.
   *
   * @param lab the measured colour
   * @param viewing daylight and the shelf's surface
   * @param sd the error of each
   */
  record Colour(Lab lab, Viewing viewing, double sd) implements PatchReadout {
    @Override
    public double[] observed() {
      return new double[] {lab.l(), lab.a(), lab.b()};
    }

    @Override
    public double[] of(double[] internal) {
      Lab seen = viewing.lab(internal);
      return new double[] {seen.l(), seen.a(), seen.b()};
    }

    @Override
    public double[][] slopes(double[] internal) {
      return viewing.labSlope(internal);
    }

    @Override
    public double[] variances() {
      return new double[] {sd * sd, sd * sd, sd * sd};
    }
  }

  /**
   * Logits of internal reflectance.
   *
   * @param spectrum the measured ones with their errors
   */
  record Logits(SwatchEvidence.Spectrum spectrum) implements PatchReadout {
    @Override
    public double[] observed() {
      return spectrum.observed();
    }

    @Override
    public double[] of(double[] internal) {
      return spectrum.predict(Arrays.stream(internal).map(r -> Math.log(r / (1 - r))).toArray());
    }

    @Override
    public double[][] slopes(double[] internal) {
      double[][] slopes = spectrum.jacobian(new double[Bands.COUNT]);
      for (double[] row : slopes) {
        for (int band = 0; band < Bands.COUNT; band++) {
          row[band] /= internal[band] * (1 - internal[band]);
        }
      }
      return slopes;
    }

    @Override
    public double[] variances() {
      return spectrum.variances();
    }
  }

  /**
   * Means of neighbouring values.
   *
   * @param bands the values
   * @param width how many make a mean
   */
  record Merged(PatchReadout bands, int width) implements PatchReadout {
    @Override
    public double[] observed() {
      return merged(bands.observed());
    }

    @Override
    public double[] of(double[] internal) {
      return merged(bands.of(internal));
    }

    @Override
    public double[][] slopes(double[] internal) {
      double[][] slopes = bands.slopes(internal);
      double[][] merged = new double[groups(slopes.length)][slopes[0].length];
      for (int row = 0; row < slopes.length; row++) {
        for (int i = 0; i < merged[0].length; i++) {
          merged[row / width][i] += slopes[row][i] / members(row / width, slopes.length);
        }
      }
      return merged;
    }

    @Override
    public double[] variances() {
      double[] variances = merged(bands.variances());
      int size = bands.variances().length;
      for (int group = 0; group < variances.length; group++) {
        variances[group] /= members(group, size);
      }
      return variances;
    }

    private double[] merged(double[] values) {
      double[] merged = new double[groups(values.length)];
      for (int i = 0; i < values.length; i++) {
        merged[i / width] += values[i] / members(i / width, values.length);
      }
      return merged;
    }

    private int groups(int values) {
      return (values + width - 1) / width;
    }

    private int members(int group, int values) {
      return Math.min(width, values - group * width);
    }
  }
}
