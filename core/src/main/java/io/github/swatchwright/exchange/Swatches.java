package io.github.swatchwright.exchange;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.paint.Swatch;
import java.util.SortedMap;

/** Colours of a file as swatches. */
final class Swatches {
  private Swatches() {}

  /** A colour relative to D65, within the range of real surfaces. */
  static Swatch lab(Lab lab) {
    double limit = Lab.LARGEST_PARSED_AB;
    Require.within("L*", lab.l(), 0, 100);
    Require.within("a*", lab.a(), -limit, limit);
    Require.within("b*", lab.b(), -limit, limit);
    return new Swatch.OfLab(lab);
  }

  /**
   * A reflectance.
   *
   * @param values by wavelength in nm; the wavelengths must be equally far apart
   * @param full the value that stands for the perfect diffuser: 1, or 100 for percent
   */
  static Swatch reflectance(SortedMap<Double, Double> values, double full) {
    double from = values.firstKey();
    double step = values.size() == 1 ? 1 : (values.lastKey() - from) / (values.size() - 1);
    double[] reflectance = new double[values.size()];
    int i = 0;
    for (var entry : values.entrySet()) {
      double expected = from + i * step;
      if (Math.abs(entry.getKey() - expected) > 1e-6 * step) {
        throw new IllegalArgumentException(
            "has wavelengths that aren't equally far apart: "
                + ShelfColumn.plain(entry.getKey())
                + " nm instead of "
                + ShelfColumn.plain(expected));
      }
      reflectance[i++] = entry.getValue() / full;
    }
    return new Swatch.OfReflectance(from, step, reflectance);
  }
}
