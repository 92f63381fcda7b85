package io.github.swatchwright.spectrum;

import io.github.swatchwright.argument.Require;
import java.util.Arrays;

/**
 * A reflectance spectrum on the grid of {@link Bands}: 36 fractions from 0 (black) to 1 (the
 * perfect diffuser). Fluorescence, which can exceed 1, is not modelled.
 */
public final class Reflectance {
  /** A measured table has to begin at or below this wavelength in nm. */
  public static final double MEASURED_FROM_AT_MOST_NM = 450;

  /** A measured table has to end at or above this wavelength in nm. */
  public static final double MEASURED_TO_AT_LEAST_NM = 650;

  /** The widest step in nm of a measured table: wider ones miss what a colour depends on. */
  public static final double MEASURED_STEP_AT_MOST_NM = 40;

  private final double[] values;

  private Reflectance(double[] values) {
    this.values = values;
  }

  /**
   * A reflectance from one value a band, in order of wavelength.
   *
   * @param values 36 fractions, 0 to 1 each
   */
  public static Reflectance of(double... values) {
    Require.within("number of bands", values.length, Bands.COUNT, Bands.COUNT);
    double[] copy = values.clone();
    for (int band = 0; band < Bands.COUNT; band++) {
      if (!(copy[band] >= 0 && copy[band] <= 1)) {
        Require.within("reflectance at " + Bands.wavelengthNm(band) + " nm", copy[band], 0, 1);
      }
    }
    return new Reflectance(copy);
  }

  /** The same fraction at every band. */
  public static Reflectance constant(double value) {
    double[] values = new double[Bands.COUNT];
    Arrays.fill(values, Require.within("value", value, 0, 1));
    return new Reflectance(values);
  }

  /**
   * A reflectance measured on another grid. Where a band coincides with a sample, the sample is
   * taken as it is; between samples Lagrange's cubic through the four nearest decides (the
   * interpolation of ASTM E2022), cut off at 0 and 1; beyond the measured range the end sample is
   * held.
   *
   * @param fromNm wavelength of the first value, at most {@value #MEASURED_FROM_AT_MOST_NM} nm
   * @param stepNm distance between the values in nm, above 0, at most {@value
   *     #MEASURED_STEP_AT_MOST_NM}
   * @param values fractions, 0 to 1 each; the last at {@value #MEASURED_TO_AT_LEAST_NM} nm or above
   */
  public static Reflectance ofMeasured(double fromNm, double stepNm, double[] values) {
    Require.within("fromNm", fromNm, 1, MEASURED_FROM_AT_MOST_NM);
    Require.positive("stepNm", stepNm);
    Require.within("stepNm", stepNm, 0, MEASURED_STEP_AT_MOST_NM);
    double lastNm = fromNm + stepNm * (values.length - 1);
    Require.within("wavelength of the last value", lastNm, MEASURED_TO_AT_LEAST_NM, 1e5);
    for (int i = 0; i < values.length; i++) {
      if (!(values[i] >= 0 && values[i] <= 1)) {
        Require.within("reflectance at " + (fromNm + i * stepNm) + " nm", values[i], 0, 1);
      }
    }
    SampledCurve measured = new SampledCurve(fromNm, stepNm, values);
    double[] resampled = new double[Bands.COUNT];
    for (int band = 0; band < Bands.COUNT; band++) {
      double value = measured.at(Bands.wavelengthNm(band));
      resampled[band] = Math.max(0, Math.min(1, value));
    }
    return new Reflectance(resampled);
  }

  /**
   * The fraction reflected at a band.
   *
   * @param band 0 to {@link Bands#COUNT} − 1
   */
  public double at(int band) {
    return values[Require.within("band", band, 0, Bands.COUNT - 1)];
  }

  /** A copy of all 36 fractions, in order of wavelength. */
  public double[] toArray() {
    return values.clone();
  }

  /** Without a copy, for this package's readers. */
  double[] values() {
    return values;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Reflectance that && Arrays.equals(values, that.values);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(values);
  }

  @Override
  public String toString() {
    return "Reflectance" + Arrays.toString(values);
  }
}
