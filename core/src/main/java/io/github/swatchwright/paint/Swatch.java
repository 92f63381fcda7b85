package io.github.swatchwright.paint;

import io.github.swatchwright.argument.BadArgumentException;
import io.github.swatchwright.argument.Require;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.colour.WhitePoint;
import io.github.swatchwright.spectrum.Bands;
import io.github.swatchwright.spectrum.Reflectance;
import io.github.swatchwright.spectrum.ReflectanceRecovery;
import io.github.swatchwright.spectrum.SurfaceMap;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.Arrays;

/**
 * A colour sample, a target or a painted patch, in the form in which it was measured. As a paint's
 * masstone it is the colour at full hiding.
 */
public sealed interface Swatch {

  /** Its colour under D65, relative to D65. */
  Lab lab();

  /**
   * Its colour under another light, relative to that light's white. A swatch that is known by its
   * colour alone is given the smoothest reflectance that has the colour: right for most paints,
   * wrong for metamers, and nothing tells which.
   */
  default Lab labUnder(TristimulusWeights light) {
    return light.equals(TristimulusWeights.D65) ? lab() : light.xyz(reflectance()).toLab();
  }

  /** Its reflectance: as measured, or else the smoothest that has its colour. */
  default Reflectance reflectance() {
    return new ReflectanceRecovery(TristimulusWeights.D65, SurfaceMap.NONE).recover(lab()).seen();
  }

  /** The error that is taken for granted when none is stated, sd in units of L*, a* and b*. */
  double usualError();

  /**
   * A colour as sRGB, from a chart, a screen or a photo.
   *
   * @param srgb the colour, displayable
   */
  record OfSrgb(Srgb srgb) implements Swatch {
    /** Refuses a colour outside the sRGB range. */
    public OfSrgb {
      if (!srgb.isDisplayable()) {
        throw new BadArgumentException("srgb", "is " + srgb + ", must be within 0 to 1");
      }
    }

    @Override
    public Lab lab() {
      return srgb.toLab();
    }

    /** Two units: a printed or displayed swatch. */
    @Override
    public double usualError() {
      return 2;
    }
  }

  /**
   * A colour as CIELAB, relative to D65.
   *
   * @param lab the colour
   */
  record OfLab(Lab lab) implements Swatch {
    /** Refuses a lightness outside 0 to 100 and another white than D65. */
    public OfLab {
      Require.within("L*", lab.l(), 0, 100);
      if (!lab.white().equals(WhitePoint.D65)) {
        throw new BadArgumentException(
            "lab", "is relative to " + lab.white() + ", must be D65; Lab.adaptTo converts it");
      }
    }

    /** One unit: a hand-held colour meter, or a careful photo against a chart. */
    @Override
    public double usualError() {
      return 1;
    }
  }

  /** A measured reflectance on the instrument's own wavelengths. */
  final class OfReflectance implements Swatch {
    private final double fromNm;
    private final double stepNm;
    private final double[] values;
    private final Reflectance reflectance;

    /**
     * A measurement.
     *
     * @param fromNm the first wavelength, nanometres
     * @param stepNm the distance of samples, nanometres
     * @param values reflectance factors, above 0 to 1
     * @throws IllegalArgumentException for what {@link Reflectance#ofMeasured} refuses, and zeros
     */
    public OfReflectance(double fromNm, double stepNm, double... values) {
      this.fromNm = fromNm;
      this.stepNm = stepNm;
      this.values = values.clone();
      this.reflectance = Reflectance.ofMeasured(fromNm, stepNm, values);
      for (int i = 0; i < values.length; i++) {
        Require.positive("values", i, values[i]);
      }
    }

    /** The first wavelength, nanometres. */
    public double fromNm() {
      return fromNm;
    }

    /** The distance of samples, nanometres. */
    public double stepNm() {
      return stepNm;
    }

    /** A copy of the reflectance factors. */
    public double[] values() {
      return values.clone();
    }

    @Override
    public Lab lab() {
      return TristimulusWeights.D65.xyz(reflectance).toLab();
    }

    /** The values on the library's own bands, ends held. */
    @Override
    public Reflectance reflectance() {
      return reflectance;
    }

    /** Whether the band lies within the measured range, and not in a held end. */
    public boolean covers(int band) {
      double nm = Bands.wavelengthNm(band);
      return nm >= fromNm && nm <= fromNm + stepNm * (values.length - 1);
    }

    /** A twentieth of a unit: a spectrophotometer. */
    @Override
    public double usualError() {
      return 0.05;
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof OfReflectance that
          && Double.compare(fromNm, that.fromNm) == 0
          && Double.compare(stepNm, that.stepNm) == 0
          && Arrays.equals(values, that.values);
    }

    @Override
    public int hashCode() {
      return 31 * (31 * Double.hashCode(fromNm) + Double.hashCode(stepNm))
          + Arrays.hashCode(values);
    }

    @Override
    public String toString() {
      return "OfReflectance[fromNm="
          + fromNm
          + ", stepNm="
          + stepNm
          + ", values="
          + Arrays.toString(values)
          + "]";
    }
  }
}
