package io.github.swatchwright.optics;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.colour.CielabCurve;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.WhitePoint;
import io.github.swatchwright.colour.Xyz;
import io.github.swatchwright.spectrum.Bands;
import io.github.swatchwright.spectrum.Reflectance;
import io.github.swatchwright.spectrum.TristimulusWeights;

/**
 * How a paint is looked at: the light and observer, and the surface between paint and air.
 *
 * @param weights the light and observer
 * @param surface the surface
 */
public record Viewing(TristimulusWeights weights, Saunderson surface) {

  /** What is seen of an internal reflectance, all bands. */
  public Reflectance seen(double[] internal) {
    return Reflectance.of(seenBands(internal));
  }

  /** Its tristimulus values. */
  public Xyz xyz(double[] internal) {
    return weights.xyz(seenBands(internal));
  }

  /** Its Y alone. */
  double y(double[] internal) {
    double sum = 0;
    for (int band = 0; band < Bands.COUNT; band++) {
      sum += weights.y(band) * surface.seen(internal[band]);
    }
    return sum;
  }

  /** Its colour, relative to the light's white. */
  public Lab lab(double[] internal) {
    return xyz(internal).toLab();
  }

  private double[] seenBands(double[] internal) {
    Require.within("number of bands", internal.length, Bands.COUNT, Bands.COUNT);
    double[] seen = new double[Bands.COUNT];
    for (int i = 0; i < seen.length; i++) {
      seen[i] = surface.seen(internal[i]);
    }
    return seen;
  }

  /**
   * Derivatives of L*, a* and b* with respect to the internal reflectance of each band.
   *
   * @return 3 rows of {@value Bands#COUNT}
   */
  public double[][] labSlope(double[] internal) {
    Xyz xyz = xyz(internal);
    WhitePoint white = xyz.white();
    double fx = CielabCurve.slope(xyz.x() / white.xn()) / white.xn();
    double fy = CielabCurve.slope(xyz.y() / white.yn()) / white.yn();
    double fz = CielabCurve.slope(xyz.z() / white.zn()) / white.zn();
    double[][] slope = new double[3][Bands.COUNT];
    for (int i = 0; i < Bands.COUNT; i++) {
      double surfaceSlope = surface.slope(internal[i]);
      double dx = fx * weights.x(i) * surfaceSlope;
      double dy = fy * weights.y(i) * surfaceSlope;
      double dz = fz * weights.z(i) * surfaceSlope;
      slope[0][i] = 116 * dy;
      slope[1][i] = 500 * (dx - dy);
      slope[2][i] = 200 * (dy - dz);
    }
    return slope;
  }
}
