package io.github.swatchwright.mix;

import io.github.swatchwright.argument.Require;

/**
 * How paint gets onto a model: the dry film it is to leave, what share of it is left when it dries,
 * and what share of it lands.
 *
 * @param dryMicrometres dry film of one coat that isn't thinned, µm: above 0 to 1000
 * @param volumeSolids share of the paint's volume that stays when it dries: above 0 to 1
 * @param transfer share of the paint that lands on the model: above 0 to 1
 */
public record Application(double dryMicrometres, double volumeSolids, double transfer) {

  /**
   * An airbrush on a model: 10 µm a coat (5 to 15 are usual), 30 % solids (25 to 40), 35 % landing
   * (20 to 50). Common practice, without a source, and weak: measure your own.
   */
  public static final Application USUAL = new Application(10, 0.30, 0.35);

  /** Refuses numbers out of range. */
  public Application {
    Require.positive("dryMicrometres", dryMicrometres);
    Require.within("dryMicrometres", dryMicrometres, 0, 1000);
    Require.positive("volumeSolids", volumeSolids);
    Require.within("volumeSolids", volumeSolids, 0, 1);
    Require.positive("transfer", transfer);
    Require.within("transfer", transfer, 0, 1);
  }

  /**
   * Area that one litre of paint covers when all of it lands, m²: 10 · (volume solids in %) ÷ (dry
   * film in µm), from coatings handbooks.
   */
  public double squareMetresPerLitre() {
    return 1000 * volumeSolids / dryMicrometres;
  }
}
