package io.github.swatchwright.match;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.optics.OpticalConstants;
import io.github.swatchwright.optics.Viewing;
import io.github.swatchwright.paint.PaintOptics;
import io.github.swatchwright.spectrum.Bands;
import java.util.List;

/**
 * All recipes that a search may find: paints of one medium, how many of them and how many drops.
 *
 * @param paints the paints to choose from, all of one medium
 * @param viewing the light and surface that colours are computed for
 * @param mostPaints the most paints in a recipe, 1 to 4
 * @param mostDrops the most drops in a recipe, at least 1
 */
public record SearchSpace(
    List<PaintOptics> paints, Viewing viewing, int mostPaints, int mostDrops) {

  /** Copies the list; refuses an empty one and numbers below 1. */
  public SearchSpace {
    paints = List.copyOf(paints);
    Require.within("number of paints", paints.size(), 1, Integer.MAX_VALUE);
    Require.within("mostPaints", mostPaints, 1, 4);
    Require.within("mostDrops", mostDrops, 1, MatchRequest.LARGEST_DROPS);
  }

  /** Absorption that one drop of each paint brings, per paint and band: K times its volume. */
  double[][] absorptionPerDrop() {
    double[][] k = new double[paints.size()][Bands.COUNT];
    for (int paint = 0; paint < k.length; paint++) {
      OpticalConstants constants = paints.get(paint).constants();
      for (int band = 0; band < Bands.COUNT; band++) {
        k[paint][band] = constants.k(band) * paints.get(paint).paint().dropMillilitres();
      }
    }
    return k;
  }

  /** Scattering that one drop of each paint brings, per paint and band: S times its volume. */
  double[][] scatteringPerDrop() {
    double[][] s = new double[paints.size()][Bands.COUNT];
    for (int paint = 0; paint < s.length; paint++) {
      OpticalConstants constants = paints.get(paint).constants();
      for (int band = 0; band < Bands.COUNT; band++) {
        s[paint][band] = constants.s(band) * paints.get(paint).paint().dropMillilitres();
      }
    }
    return s;
  }
}
